import { cornerOf } from "../corner.ts";
import type { RoofCorner } from "../corner.ts";
import { frameOf } from "../frame.ts";
import { beyond, depthIn, opposite } from "../half.ts";
import type { Half } from "../half.ts";
import { hip } from "../hip.ts";
import { member } from "../member.ts";
import type { Section } from "../member.ts";
import { ON } from "../measure.ts";
import { tail } from "../rafter.ts";
import type { Shop } from "../shop.ts";
import { add, dot, scale, sub, unit } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { faceTo, finished, lineAt } from "./bearer.ts";
import type { Bearer, Placed } from "./bearer.ts";
import { heightOf, meet } from "./layout.ts";
import type { Layout, Plane, Wing } from "./layout.ts";
import { letterOf } from "./plan.ts";
import type { Side } from "./plan.ts";
import { sheathingUnder, valleyBoard as layBoard } from "./laid.ts";
import { valley, valleyBoard } from "./valley.ts";

/** Ridges, hips and valleys, cut and in their places. */
export interface Bearers {
  readonly ridge: Bearer;
  readonly wingRidges: ReadonlyMap<Wing, Bearer>;
  readonly all: readonly Bearer[];
}

/** A ridge's place: level along a line, its top flush with the rafters of a plane at its face. */
function ridgeBoard(plane: Plane, [x, y]: Vec, along: Vec, section: Section): Placed {
  const atFace = add([x, y, 0], scale(plane.inward, -section.thickness / 2));
  return { frame: frameOf([x, y, heightOf(plane, atFace)], along), thickness: section.thickness };
}

/** The valley that runs on: the plan's, else the one whose head is farther from the nearer end of the main ridge line, else the left. */
function supportingSide({ plan, apex }: Layout, wing: Wing, ridgeFace: Half): Side {
  if (wing.plan.longValley) return wing.plan.longValley;
  const clear = (side: Side): number => {
    const board = valleyBoard(plan, wing, side);
    const head = lineAt(board.frame, ridgeFace);
    // A head that lies past an end of the ridge counts below nothing.
    const inFrom = (end: Vec, other: Vec): number => dot(unit(sub(other, end)), sub(head, end));
    return Math.min(inFrom(apex.left, apex.right), inFrom(apex.right, apex.left));
  };
  return clear("right") > clear("left") + 1e-9 ? "right" : "left";
}

/** Two plumb faces of the king commons that meet an apex, as a hip from a corner meets them. */
const kingFaces = (corner: RoofCorner, apex: Vec, thickness: number): Half[] =>
  corner.sides.map(({ plate }) => beyond(scale(plate, -1), add(apex, scale(plate, -thickness / 2))));

export function bearersOf(shop: Shop, layout: Layout): Bearers {
  const { plan, front, back, ends, apex } = layout;
  const t = plan.rafter.thickness;
  const kings = plan.hipHead === "king commons";
  const ridgePlace = ridgeBoard(front, apex.left, front.plate, plan.ridge);

  /** A whole or broken hip: the planes in the order of its corner's sides. */
  const hipOf = (
    corner: RoofCorner,
    sides: readonly Plane[],
    top: { apex: Vec; ridge: Placed; side: Plane; wing?: string },
    broken?: { feet: readonly Half[]; from: Vec },
  ): Bearer => {
    const heads = kings ? kingFaces(corner, top.apex, t) : [faceTo(top.ridge, scale(top.side.inward, -1))];
    const feet = broken
      ? { ends: broken.feet }
      : tail(
          corner,
          corner.sides,
          sides.map(({ overhang }) => overhang),
        );
    const piece = hip(shop, corner, plan.hip, plan.hipTop, { ...feet, ends: [...feet.ends, ...heads] });
    return finished(shop, piece, {
      kind: broken ? "broken hip" : "hip",
      name: `${broken ? "broken hip" : "hip"} of (${corner.at.join(", ")})`,
      ...(top.wing ? { wing: top.wing } : {}),
      planes: sides,
      from: broken?.from ?? corner.meeting.at,
      to: top.apex,
      heads,
      feet: broken?.feet ?? [],
    });
  };

  /** The end of a ridge at a hipped apex, everything it has in front: flush with the king commons, or as far as the hips' cheeks reach. */
  const ridgeEnd = (ridge: Placed, at: Vec, out: Vec, hips: readonly Bearer[], more: readonly Vec[] = []): Half => {
    if (kings) return opposite(beyond(out, add(at, scale(out, t / 2))));
    const faces = [faceTo(ridge, ridge.frame.left), faceTo(ridge, scale(ridge.frame.left, -1))];
    const on = hips
      .flatMap((piece) => shop.corners(piece.solid))
      .filter((c) => faces.some((face) => Math.abs(depthIn(face, c)) < ON));
    return { normal: scale(out, -1), offset: -Math.max(...[...on, ...more].map((c) => dot(out, c))) };
  };

  const wingRidges = new Map<Wing, Bearer>();
  const valleys: Bearer[] = [];
  const hips: Bearer[] = [];
  const cornerHips = new Map<Side, Bearer[]>([
    ["left", []],
    ["right", []],
  ]);

  // The main roof's corners; where a flush wing takes one away there is no hip, or a broken one.
  for (const which of ["left", "right"] as const) {
    const end = ends[which];
    if (!end) continue;
    for (const main of [front, back]) {
      const first = (which === "left") === (main === front);
      const at: Vec = [which === "left" ? 0 : plan.length, main === front ? 0 : plan.span, 0];
      const way = scale(main.plate, first ? 1 : -1);
      const corner = first
        ? cornerOf(at, way, main.inward, [main.pitch, end.pitch], plan.heel)
        : cornerOf(at, main.inward, way, [end.pitch, main.pitch], plan.heel);
      const sides = first ? [main, end] : [end, main];
      const wing = layout.wings.find((w) => w.wall === main && w.flush && w[w.flush] === end);
      const top = { apex: apex[which], ridge: ridgePlace, side: main };
      if (!wing) cornerHips.get(which)!.push(hipOf(corner, sides, top));
      else if (!wing.level) {
        const wingRidge = ridgeBoard(wing.left, wing.crossing, wing.wall.inward, wing.plan.ridge ?? plan.ridge);
        const inner = faceTo(wingRidge, way);
        const square = beyond(wing.wall.inward, wing.crossing);
        const piece = hipOf(
          corner,
          sides,
          { ...top, wing: wing.letter },
          { feet: [inner, square], from: wing.crossing },
        );
        cornerHips.get(which)!.push(piece);
      }
    }
    hips.push(...cornerHips.get(which)!);
  }

  for (const [i, wing] of layout.wings.entries()) {
    const section = wing.plan.ridge ?? plan.ridge;
    const into = wing.wall.inward;
    const place = ridgeBoard(wing.left, wing.crossing, into, section);
    const mainFace = faceTo(ridgePlace, scale(into, -1));
    const wingHips = (["left", "right"] as const).flatMap((side): Bearer[] => {
      if (!wing.end) return [];
      const at = wing.outer[side];
      const along = wing.wall.plate;
      const corner =
        side === "left"
          ? cornerOf(at, along, into, [wing.end.pitch, wing.left.pitch], plan.heel)
          : cornerOf(at, into, scale(along, -1), [wing.right.pitch, wing.end.pitch], plan.heel);
      const sides = side === "left" ? [wing.end, wing.left] : [wing.right, wing.end];
      return [hipOf(corner, sides, { apex: wing.apex, ridge: place, side: wing[side], wing: letterOf(i) })];
    });
    hips.push(...wingHips);

    const present = (["left", "right"] as const).filter((side) => wing.inner[side]);
    const towardsWing = (side: Side): Half => faceTo(valleyBoard(plan, wing, side), wing[side].inward);
    const mainRidgeLine = (side: Side): Vec => meet(wing.wall.above, wing[side].above, beyond(into, apex.left));
    let inner: Half[];
    if (wing.plan.framing === "laid over") {
      inner = [sheathingUnder(wing)];
      for (const side of present) valleys.push(layBoard(shop, layout, wing, side, place));
    } else if (wing.level) {
      inner = [mainFace];
      for (const side of present)
        valleys.push(
          valley(shop, plan, wing, side, {
            role: "level",
            heads: [mainFace, faceTo(place, scale(wing[side].inward, -1))],
            to: wing.crossing,
          }),
        );
    } else if (wing.flush) {
      const [side] = present as [Side];
      const hipPiece = hips.find((piece) => piece.kind === "broken hip" && piece.wing === wing.letter)!;
      const ridgeFace = faceTo(place, scale(wing[side].inward, -1));
      valleys.push(
        valley(shop, plan, wing, side, {
          role: "flush",
          heads: [ridgeFace, opposite(beyond(into, wing.crossing))],
          to: wing.crossing,
        }),
      );
      // On past the crossing to where the broken hip's far face comes out of the ridge's.
      const far = faceTo(hipPiece, scale(wing[wing.flush].inward, -1));
      const stop = meet(far, ridgeFace, beyond([0, 0, 1], [0, 0, 0]));
      inner = [opposite(beyond(into, stop))];
    } else {
      const supporting = supportingSide(layout, wing, mainFace);
      const other: Side = supporting === "left" ? "right" : "left";
      const towards = towardsWing(supporting);
      valleys.push(
        valley(shop, plan, wing, supporting, { role: "supporting", heads: [mainFace], to: mainRidgeLine(supporting) }),
        valley(shop, plan, wing, other, { role: "shortened", heads: [towards], to: wing.crossing }),
      );
      inner = [towards, towardsWing(other)];
    }
    const outer = wing.end ? ridgeEnd(place, wing.apex, scale(into, -1), wingHips) : beyond(into, wing.outer.left);
    const piece = member(shop, place.frame, section, { ends: [outer, ...inner] });
    wingRidges.set(
      wing,
      finished(shop, piece, {
        kind: "ridge",
        name: `ridge of wing ${wing.letter}`,
        wing: wing.letter,
        planes: [wing.left, wing.right],
        from: wing.apex,
        to: wing.crossing,
        heads: inner,
        feet: [outer],
      }),
    );
  }

  const endOf = (which: Side): Half => {
    const out = scale(front.plate, which === "left" ? -1 : 1);
    if (!ends[which]) return opposite(beyond(out, apex[which]));
    // A level flush wing's ridge stands where the front king common would, and needs the main ridge behind it.
    const flush = layout.wings.filter((w) => w.flush && w.level && w[w.flush] === ends[which]);
    const behind = flush.map((w) => add(apex[which], scale(out, (w.plan.ridge ?? plan.ridge).thickness / 2)));
    return ridgeEnd(ridgePlace, apex[which], out, cornerHips.get(which)!, behind);
  };
  const ridgeEnds = [endOf("left"), endOf("right")];
  const piece = member(shop, ridgePlace.frame, plan.ridge, { ends: ridgeEnds });
  const ridge = finished(shop, piece, {
    kind: "ridge",
    name: "main ridge",
    planes: [front, back],
    from: apex.left,
    to: apex.right,
    heads: [ridgeEnds[1]!],
    feet: [ridgeEnds[0]!],
  });
  return { ridge, wingRidges, all: [ridge, ...wingRidges.values(), ...hips, ...valleys] };
}

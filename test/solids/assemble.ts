import { beyond, depthIn, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { hip } from "./hip.ts";
import { frameOf } from "./frame.ts";
import { towards } from "./jackCheck.ts";
import { member } from "./member.ts";
import type { Member } from "./member.ts";
import { ON } from "./measure.ts";
import type { Hand } from "./measure.ts";
import { faceTowards, rafterFrame, tail } from "./rafter.ts";
import { sawn } from "./sawn.ts";
import type { HeadCut } from "./sawn.ts";
import { apexOffset, cornersOf, jackPlaces, place, seatOn, sideOf } from "./settingOut.ts";
import type { Corners, Place, SideName } from "./settingOut.ts";
import { add, dot, scale } from "./vector.ts";
import type { Side } from "./corner.ts";
import type { RoofPlan } from "./roofPlan.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

export type Kind = "ridge" | "common" | "king common" | "hip" | "jack";

/** A piece of a roof in its place. */
export interface Framed extends Member {
  readonly kind: Kind;
  readonly name: string;
  readonly side: SideName | "";
  readonly hand: Hand | "plain";
  /** Where a rafter stands; a hip's corner is its place's. */
  readonly at: Place | null;
  /** The planes that a hip's head is cut to. */
  readonly heads?: readonly Half[];
  /** The plane of what its head is cut to, and what it bears on there. */
  readonly bears?: { readonly face: Half; readonly on: readonly Member[] };
}

export interface Roof {
  readonly plan: RoofPlan;
  readonly corners: Corners;
  readonly apex: number;
  readonly members: readonly Framed[];
}

/** The numbers a rafter is cut to before it is lifted; null leaves it to be cut in place against what it bears on. */
export type Cutter = (piece: {
  readonly kind: Kind;
  readonly side: SideName;
  readonly hand: Hand | "plain";
  readonly offset: number;
}) => HeadCut | null;

const inPlace: Cutter = () => null;

/** The height of a roof plane over a point of the plan. */
const heightAt = (above: Half, x: number, y: number): number => -depthIn(above, [x, y, 0]);

/** Frames a whole roof from its plan: sets it out, cuts every piece and puts it where it stands. */
export function assemble(shop: Shop, plan: RoofPlan, cutter: Cutter = inPlace): Roof {
  const corners = cornersOf(plan);
  const [a, b, , d] = corners.all;
  const apex = apexOffset(shop, corners, plan.span);
  const gable = plan.ends === "hip and gable";
  const ridgeEnd = gable ? plan.length : plan.length - apex;
  const pyramid = !gable && Math.abs(plan.length - 2 * apex) < ON;
  const { thickness: t } = plan.rafter;
  // A level fascia: the tails of both sides end at one height.
  const endOverhang = plan.endOverhang ?? (plan.overhang * plan.pitch.slope) / plan.endPitch.slope;
  const overhangs: Record<SideName, number> = { Main: plan.overhang, End: endOverhang };
  const kings = plan.hipHead === "king commons";
  const middle = plan.span / 2;

  const ridgeBoard = (from: number, to: number): Member | null => {
    if (pyramid || !plan.ridge) return null;
    const top = heightAt(a.sides[0].above, 0, middle - plan.ridge.thickness / 2);
    const frame = frameOf([0, middle, top], [1, 0, 0]);
    return { ...plan.ridge, frame, solid: shop.board(frame, plan.ridge.thickness, plan.ridge.depth, from, to) };
  };
  const faceOf = (piece: Member, way: Vec): Half => faceTowards(way, shop.corners(piece.solid));

  /** A rafter at a place: cut to its numbers, or in place against a face. */
  const rafter = (kind: Kind, at: Place, hand: Hand | "plain", face: Half, on: readonly Member[]): Framed => {
    const side = sideOf(at);
    const frame = rafterFrame(at.corner, side, at.offset);
    const foot = tail(at.corner, [side], [overhangs[at.side]]);
    const cut = cutter({ kind, side: at.side, hand, offset: at.offset });
    const piece = cut
      ? sawn(shop, frame, plan.rafter, foot, cut)
      : member(shop, frame, plan.rafter, { ...foot, ends: [...foot.ends, face] });
    return {
      ...piece,
      kind,
      side: at.side,
      hand,
      at,
      name: `${kind} ${at.side} ${Number(at.offset.toFixed(6))} of (${at.corner.at.join(", ")})`,
      ...(on.length ? { bears: { face, on } } : {}),
    };
  };

  // A ridge long enough for everything gives the faces; its own ends come last when the hips decide them.
  const ridgeFaces = ridgeBoard(0, plan.length);
  const towardsRidge = (at: Place): Half => {
    const { inward } = sideOf(at);
    return ridgeFaces ? faceOf(ridgeFaces, scale(inward, -1)) : opposite(beyond(inward, [0, middle, 0]));
  };
  const onMain = (kind: Kind, x: number, ridge: Member | null): Framed[] =>
    [place(a, "Main", x), place(d, "Main", x)].map((at) =>
      rafter(kind, at, "plain", towardsRidge(at), ridge ? [ridge] : []),
    );

  const squareRidge = kings ? ridgeBoard(apex - t / 2, gable ? ridgeEnd : ridgeEnd + t / 2) : null;
  const mainKings = kings
    ? (gable || pyramid ? [apex] : [apex, ridgeEnd]).flatMap((x) => onMain("king common", x, squareRidge))
    : [];
  const endKings = kings
    ? (gable ? [a] : [a, b]).map((corner): Framed => {
        const at = place(corner, "End", middle);
        // The ridge ends flush with the outer faces of the main king commons: all of them bear it.
        const butts = squareRidge ? [squareRidge, ...mainKings] : mainKings;
        return rafter("king common", at, "plain", nearestFace(shop, butts, scale(sideOf(at).inward, -1)), butts);
      })
    : [];

  const hips = corners.hips.map((corner): Framed => {
    const heads = kings
      ? corner.sides.map((side) => kingFace(shop, [...mainKings, ...endKings], side))
      : [towardsRidge(place(corner, "Main", 0))];
    const main = place(corner, "Main", 0);
    const feet = tail(
      corner,
      corner.sides,
      main.which === 0 ? [plan.overhang, endOverhang] : [endOverhang, plan.overhang],
    );
    const piece = hip(shop, corner, plan.hip, plan.hipTop, { ...feet, ends: [...feet.ends, ...heads] });
    return {
      ...piece,
      heads,
      kind: "hip",
      side: "",
      hand: main.which === 0 ? "right" : "left",
      at: main,
      name: `hip of (${corner.at.join(", ")})`,
    };
  });

  const ridge = kings ? squareRidge : ridgeToHips(shop, hips, ridgeBoard, ridgeEnd, gable, towardsRidge);
  const clear = kings ? apex + t / 2 : Math.max(...shop.corners(hips[0]!.solid).map(([x]) => x));
  const last = gable ? plan.length - t / 2 : null;
  const upTo = last !== null ? last - t / 2 : plan.length - clear;
  const stations = Array.from(
    { length: Math.ceil(plan.length / plan.spacing) },
    (_, i) => apex + (i + 1) * plan.spacing,
  ).filter((x) => x - t / 2 >= clear - ON && x + t / 2 <= upTo + ON);
  const commons = [...stations, ...(last === null ? [] : [last])].flatMap((x) => onMain("common", x, ridge));

  const jacks = hips.flatMap((on) =>
    (["Main", "End"] as const).flatMap((name) =>
      jacksOf(shop, plan, on, name, name === "Main" ? apex : middle, rafter),
    ),
  );
  const ridgePiece: Framed[] = ridge
    ? [{ ...ridge, kind: "ridge", name: "ridge", side: "", hand: "plain", at: null }]
    : [];
  return { plan, corners, apex, members: [...ridgePiece, ...commons, ...mainKings, ...endKings, ...hips, ...jacks] };
}

/** The jacks of one side of a hip: those whose short side runs, level, at least as far as the seat is wide. */
function jacksOf(
  shop: Shop,
  plan: RoofPlan,
  on: Framed,
  name: SideName,
  king: number,
  rafter: (kind: Kind, at: Place, hand: Hand, face: Half, on: readonly Member[]) => Framed,
): Framed[] {
  const { corner } = on.at!;
  const { which } = place(corner, name, 0);
  const side = corner.sides[which];
  const face = faceTowards(towards(corner, which), shop.corners(on.solid));
  const seat = seatOn(shop, place(corner, name, 0), plan);
  const shortRun = (offset: number): number => {
    const { at, left } = rafterFrame(corner, side, offset);
    const run = [-1, 1].map(
      (s) => depthIn(face, add(at, scale(left, (s * plan.rafter.thickness) / 2))) / -dot(face.normal, side.inward),
    );
    return Math.min(...run);
  };
  return jackPlaces(plan, king)
    .filter((offset) => shortRun(offset) >= seat)
    .map((offset) => rafter("jack", place(corner, name, offset), which === 0 ? "right" : "left", face, [on]));
}

/** The face towards a corner of the king common that stands on one of its plates: the nearest one. */
function kingFace(shop: Shop, kings: readonly Framed[], side: Side): Half {
  const standing = kings.filter((king) => dot(sideOf(king.at!).inward, side.inward) > 0.5);
  return nearestFace(shop, standing, scale(side.plate, -1));
}

/** Of the faces of some pieces in one direction the one that is reached first from there. */
function nearestFace(shop: Shop, pieces: readonly Member[], way: Vec): Half {
  return pieces
    .map(({ solid }) => faceTowards(way, shop.corners(solid)))
    .reduce((a, b) => (b.offset > a.offset ? b : a));
}

/** A ridge that reaches as far as the cheeks of the hips on its faces. */
function ridgeToHips(
  shop: Shop,
  hips: readonly Framed[],
  board: (from: number, to: number) => Member | null,
  end: number,
  gable: boolean,
  towardsRidge: (at: Place) => Half,
): Member | null {
  const on = hips
    .flatMap((piece) => shop.corners(piece.solid).filter((c) => Math.abs(depthIn(towardsRidge(piece.at!), c)) < ON))
    .map(([x]) => x);
  return board(Math.min(...on), gable ? end : Math.max(...on));
}

import { rise, slopeDegrees } from "../cases.ts";
import { chance, seed } from "../chance.ts";
import { dot, sub } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { meetingLine, lineAt } from "./bearer.ts";
import { beyond } from "../half.ts";
import { layoutOf } from "./layout.ts";
import type { Layout, Wing } from "./layout.ts";
import type { Side, WingedPlan, WingPlan } from "./plan.ts";

type Flat = readonly [Vec, Vec];

/** How near two stretches of line come to each other, seen from above. */
function apart([a, b]: Flat, [c, d]: Flat): number {
  const cross = (p: Vec, q: Vec): number => p[0] * q[1] - p[1] * q[0];
  const side = (p: Vec, q: Vec, r: Vec): number => Math.sign(cross(sub(q, p), sub(r, p)));
  if (side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)) return 0;
  const to = (p: Vec, [q, r]: Flat): number => {
    const way = sub(r, q);
    const k = Math.max(0, Math.min(1, ((p[0] - q[0]) * way[0] + (p[1] - q[1]) * way[1]) / (way[0] ** 2 + way[1] ** 2)));
    return Math.hypot(p[0] - q[0] - k * way[0], p[1] - q[1] - k * way[1]);
  };
  return Math.min(to(a, [c, d]), to(b, [c, d]), to(c, [a, b]), to(d, [a, b]));
}

/** The valleys of a wing, seen from above: the given one to the main ridge line, the other to the crossing. */
function valleysOf({ apex }: Layout, wing: Wing, long: Side | null): Flat[] {
  return (["left", "right"] as const).flatMap((side): Flat[] => {
    const corner = wing.inner[side];
    if (!corner) return [];
    const line = meetingLine(wing.wall, wing[side], corner);
    return [[corner, side === long ? lineAt(line, beyond(wing.wall.inward, apex.left)) : wing.crossing]];
  });
}

/** Inches that boards of different wings, hips and ridge ends keep from each other, so that every piece between them has room. */
const CLEAR = 12;

/** Whether a roof can be framed: wings that keep clear of each other, of the hips and of the ends of the ridge. */
export function canStand(plan: WingedPlan): boolean {
  let layout: Layout;
  try {
    layout = layoutOf(plan);
  } catch {
    return false;
  }
  const { front, ends, apex, wings } = layout;
  const x = (p: Vec): number => dot(front.plate, p);
  const hips: Flat[] = (["left", "right"] as const).flatMap((side) => {
    const end = ends[side];
    if (!end) return [];
    const at = side === "left" ? 0 : plan.length;
    return [0, plan.span].map((y): Flat => [[at, y, 0], apex[side]]);
  });
  const lines = wings.map((wing) => {
    const long: Side | null = wing.level || wing.flush ? null : (wing.plan.longValley ?? null);
    return { wing, long, flat: valleysOf(layout, wing, long) };
  });
  return lines.every(({ wing, long, flat }, i) => {
    const { wall, plan: own, outer, crossing, flush, level } = wing;
    const reach = dot(wall.inward, sub(crossing, wall.at));
    if (!level && reach > plan.span / 2 - plan.ridge.thickness) return false;
    const inset = Math.abs(dot(wall.inward, sub(wing.apex, outer.left)));
    if (own.end === "hip" && own.out + reach - inset < 12) return false;
    // The apex of a laid-over wing stands outside of the wall; its ridge clear of the sheathing.
    if (own.framing === "laid over") {
      if (own.end === "hip" && own.out < inset + plan.rafter.thickness) return false;
      const rise = own.span * 0.5 * wing.left.pitch;
      if (rise < plan.ridge.depth + 2 * (own.sheathing ?? 0) + 2 * plan.valley.thickness + 2) return false;
    }
    if (own.out < plan.overhang + 6) return false;
    const [from, to] = [outer.left, outer.right].map(x).sort((a, b) => a - b) as [number, number];
    if (from < 0 || to > plan.length) return false;
    // At a gable the valley's foot must stand inside of its plate line.
    if (
      (!ends.left && from < plan.valley.thickness * 2) ||
      (!ends.right && plan.length - to < plan.valley.thickness * 2)
    )
      return false;
    // The hips next to a flush wing are its own.
    if (hips.some((one) => flat.some((two) => apart(one, two) < CLEAR) && !(flush && touches(one, wing)))) return false;
    if (long) {
      const head = flat.find(([corner]) => corner === wing.inner[long])![1];
      if (x(head) < x(apex.left) + CLEAR || x(head) > x(apex.right) - CLEAR) return false;
    }
    if (level && !flush && (x(crossing) < x(apex.left) + CLEAR || x(crossing) > x(apex.right) - CLEAR)) return false;
    const side = lines.slice(i + 1).filter((other) => other.wing.wall === wall);
    if (side.some((other) => flush && other.wing.flush === flush)) return false;
    return side.every(
      (other) =>
        // Nor do they along their sides, however far each stands out.
        gap(wing, other.wing) >=
          Math.max(wing.left.overhang, wing.right.overhang) +
            Math.max(other.wing.left.overhang, other.wing.right.overhang) &&
        flat.every((one) => other.flat.every((two) => apart(one, two) >= CLEAR)) &&
        apart([outer.left, outer.right], [other.wing.outer.left, other.wing.outer.right]) >=
          // Fascias of neighbors do not meet.
          Math.max(wing.left.overhang, wing.right.overhang) +
            Math.max(other.wing.left.overhang, other.wing.right.overhang) +
            CLEAR,
    );
  });
}

/** How far apart the walls of two wings stand along theirs. */
function gap(one: Wing, other: Wing): number {
  const [a, b, c, d] = [one.outer.left, one.outer.right, other.outer.left, other.outer.right].map((p) =>
    dot(one.wall.plate, p),
  ) as [number, number, number, number];
  return Math.max(Math.min(c, d) - Math.max(a, b), Math.min(a, b) - Math.max(c, d));
}

/** A hip that starts at the corner which the wing took away, or that meets it. */
const touches = ([corner]: Flat, wing: Wing): boolean =>
  Math.abs(dot(wing.wall.inward, sub(corner, wing.wall.at))) < 1e-6;

/** Roofs with wings by chance, the same for the same seed and stream. */
export function chanceRoofs(count: number, stream: number, laidOver = false): WingedPlan[] {
  process.stdout.write(`${count} roofs with wings by chance, LONGPOINT_SEED=${seed}, stream ${stream}\n`);
  const next = chance(seed + stream);
  const between = (low: number, high: number): number => low + (high - low) * next();
  const oneOf = <T>(...all: readonly T[]): T => all[Math.floor(next() * all.length)]!;
  const plans: WingedPlan[] = [];
  while (plans.length < count) {
    const depth = between(5.5, 9.25);
    const thickness = oneOf(1.5, 1.25, between(1, 2));
    const pitch = oneOf(rise(between(4, 12)), slopeDegrees(between(18, 42)), rise(6));
    const endPitch = oneOf(pitch, pitch, rise(between(5, 12)));
    const span = between(200, 360);
    const length = between(420, 720);
    const wing = (): WingPlan => {
      const laid = laidOver && next() < 0.7;
      const flush = !laid && next() < 0.3;
      const slope = flush ? endPitch : oneOf(pitch, pitch, rise(between(4, 12)));
      const level = next() < 0.2;
      const wide = level ? (span * pitch.slope) / slope.slope : between(96, 280);
      const end = oneOf("hip", "gable");
      return {
        wall: oneOf("front", "back"),
        from: flush ? oneOf("flush left", "flush right") : between(0, length - wide),
        out: between(40, 200),
        span: wide,
        end,
        ...(slope === pitch ? {} : { pitch: slope }),
        // Not level with the main fascia, at times.
        ...(flush || next() < 0.85 ? {} : { overhang: between(3, 24) }),
        ...(end === "hip" && next() < 0.3 ? { endPitch: rise(between(5, 12)) } : {}),
        ...(next() < 0.2 ? { ridge: { thickness: oneOf(1.5, between(1, 2.5)), depth: 7.25 } } : {}),
        ...(level || flush || laid ? {} : { longValley: oneOf("left", "right") }),
        ...(laid ? { framing: "laid over" as const, sheathing: oneOf(0.5, between(0.4, 1)) } : {}),
      };
    };
    const draft: WingedPlan = {
      span,
      length,
      pitch,
      endPitch,
      ends: oneOf(["hip", "hip"], ["hip", "hip"], ["hip", "gable"], ["gable", "hip"]),
      spacing: oneOf(16, 19.2, 24, between(14, 28)),
      overhang: oneOf(between(4, 24), between(4, 24), 16, 0),
      rafter: { thickness, depth },
      hip: { thickness: oneOf(1.5, between(1, 3)), depth: depth + between(0, 4) },
      ridge: { thickness: oneOf(1.5, between(thickness, 3)), depth: 11.25 },
      valley: { thickness: oneOf(1.5, between(1, 3)), depth: depth + between(0, 4) },
      heel: depth * between(0.55, 0.95),
      setOutFrom: oneOf("king common", "king common", "corner"),
      hipTop: oneOf("dropped", "backed", "shifted"),
      hipHead: oneOf("king commons", "king commons", "ridge"),
      wings: Array.from({ length: oneOf(1, 1, 2, 2, 3) }, wing),
    };
    // Tails on one side of a valley only are framed by nobody.
    if (draft.overhang === 0 && draft.wings.some(({ overhang }) => overhang)) continue;
    if (laidOver && !draft.wings.some(({ framing }) => framing)) continue;
    if (canStand(draft)) plans.push(draft);
  }
  return plans;
}

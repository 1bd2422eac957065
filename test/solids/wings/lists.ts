import { dot, scale, sub } from "../vector.ts";
import type { Vec } from "../vector.ts";
import type { Shop } from "../shop.ts";
import type { Bearer } from "./bearer.ts";
import type { MarkList } from "./figures.ts";
import type { Wing } from "./layout.ts";
import type { Rafter } from "./rafters.ts";
import type { WingedRoof } from "./winged.ts";

/** A plate's or ridge's list: where the tape is hooked, which way it runs, how far, and the pieces on it. */
interface Taped {
  readonly name: string;
  readonly hook: Vec;
  readonly run: Vec;
  readonly length: number;
  readonly pieces: readonly Rafter[];
  readonly last?: { readonly at: number; readonly piece: string };
}

function listOf(shop: Shop, { name, hook, run, length, pieces, last }: Taped): MarkList {
  const marks = pieces.map((rafter) => ({
    at: Math.min(...shop.corners(rafter.solid).map((c) => dot(run, sub(c, hook)))),
    piece: rafter.name,
  }));
  return { name, length, marks: [...marks, ...(last ? [last] : [])].sort((a, b) => a.at - b.at) };
}

/** Marks of every plate that is there, as the test sets them out. */
export function plateLists(shop: Shop, roof: WingedRoof): MarkList[] {
  const { layout, plan } = roof;
  const { front, back, ends, wings } = layout;
  const onPlate = roof.rafters.filter(({ foot, overCorner }) => !foot || overCorner);
  const all: Taped[] = [];

  for (const wall of [front, back]) {
    const at = (point: Vec): number => dot(wall.plate, sub(point, wall.at));
    const word = wall === front ? "Front" : "Back";
    const own = wings
      .filter((wing) => wing.wall === wall && wing.plan.framing !== "laid over")
      .map((wing) => {
        const [from, to] = [at(wing.outer.left), at(wing.outer.right)];
        return { wing, from, to };
      })
      .sort((a, b) => a.from - b.from);
    const stops = [{ to: 0, wing: null as Wing | null }, ...own];
    stops.forEach((before, i) => {
      const after = own[i];
      const [from, to] = [before.to, after ? after.from : plan.length];
      if (to - from < 1e-6) return;
      const pieces = onPlate.filter(
        ({ station }) => station.plane === wall && at(station.at) > from - 24 && at(station.at) < to + 24,
      );
      const inside = pieces.filter(
        ({ station, overCorner }) => overCorner || (at(station.at) > from && at(station.at) < to),
      );
      // A stub hooks at its main corner, a plate between two wings at its left inner corner.
      // A whole plate hooks at its left corner, but at a hipped end's where the left one is a gable's.
      const seen = wall === front ? [ends.left, ends.right] : [ends.right, ends.left];
      const whole = !before.wing && !after;
      const fromRight = whole ? !seen[0] && seen[1] !== null : before.wing !== null && !after;
      const name =
        !before.wing && !after
          ? word
          : before.wing && after
            ? `${word}, ${before.wing.letter} to ${after.wing.letter}`
            : after
              ? `${word}, left of wing ${after.wing.letter}`
              : `${word}, right of wing ${before.wing!.letter}`;
      all.push({
        name,
        hook: add(wall.at, wall.plate, fromRight ? to : from),
        run: scale(wall.plate, fromRight ? -1 : 1),
        length: to - from,
        pieces: inside,
      });
    });
  }
  for (const side of ["left", "right"] as const) {
    const plane = ends[side];
    if (!plane) continue;
    // A flush wing's side plate and the end's are one line, but each has its own hook.
    const mine = onPlate.filter(({ station }) => station.plane === plane && station.of === "");
    all.push({
      name: side === "left" ? "Left" : "Right",
      hook: plane.at,
      run: plane.plate,
      length: plane.length,
      pieces: mine,
    });
  }
  for (const wing of wings) {
    for (const side of ["left", "right"] as const)
      all.push({
        name: `Wing ${wing.letter}, ${side}`,
        hook: wing.outer[side],
        run: wing.wall.inward,
        length: wing.plan.out,
        pieces: onPlate.filter(({ station }) => station.plane === wing[side] && station.of === wing.letter),
      });
    if (wing.end)
      all.push({
        name: `Wing ${wing.letter}, end`,
        hook: wing.outer.left,
        run: wing.wall.plate,
        length: wing.plan.span,
        pieces: onPlate.filter(({ station }) => station.plane === wing.end),
      });
  }
  return all.map((taped) => listOf(shop, taped));
}

const add = (at: Vec, way: Vec, length: number): Vec => [
  at[0] + way[0] * length,
  at[1] + way[1] * length,
  at[2] + way[2] * length,
];

/** Marks of every ridge: the main ridge from its left end, a wing's from its outer end. */
export function ridgeLists(shop: Shop, { bearers, rafters }: WingedRoof): MarkList[] {
  const list = (name: string, ridge: Bearer): MarkList => {
    const run = ridge.frame.along;
    const reach = [...ridge.reach.left, ...ridge.reach.right];
    const start = Math.min(...reach);
    const pieces = rafters.filter(({ head }) => head.bearer === ridge && Math.abs(dot(head.face.normal, run)) < 0.5);
    return listOf(shop, { name, hook: scale(run, start), run, length: Math.max(...reach) - start, pieces });
  };
  return [
    list("Main ridge", bearers.ridge),
    ...[...bearers.wingRidges].map(([{ letter }, ridge]) => list(`Wing ${letter} ridge`, ridge)),
  ];
}

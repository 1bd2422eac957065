import type { Plane } from "../../geometry/plane.ts";
import type { Point } from "../../geometry/point.ts";
import { plumbDepthOf } from "../members/commonRafter.ts";
import type { RoofSpec, WingSpec } from "./roofSpec.ts";

/** One plane of a roof, over one plate line. */
export interface RoofPlane extends Plane {
  /** Its place in the roof's list of planes. */
  readonly index: number;
  /** The block it belongs to. */
  readonly block: number;
  /** The letter of the wing that it belongs to; "" for the main roof's, and so for one that a wing shares with its end. */
  readonly wing: string;
  /** A hipped end of its block, not one of its two sides. */
  readonly end: boolean;
  /** The left end of its plate line for someone outside, and the level directions along that line and up the slope. */
  readonly corner: Point;
  readonly right: Point;
  readonly inward: Point;
  /** Length of its plate line. */
  readonly width: number;
  readonly pitch: number;
  /** Level, from plate line to ridge or apex. */
  readonly run: number;
  readonly overhang: number;
  readonly seat: number;
  /** Added to the long point of its jacks. */
  readonly correction: number;
}

/** Left and right as seen from outside, facing a wall. */
export type Side = "left" | "right";

/** A rectangle of plate lines with a roof of its own. The main roof is block 0; a wing runs in to its host's ridge line. */
export interface Block {
  readonly index: number;
  /** Where it is set out from: its first end's corner on the right of its ridge, the level directions along and across (to the left). */
  readonly corner: Point;
  readonly along: Point;
  readonly across: Point;
  readonly length: number;
  readonly span: number;
  /** Right and left of the ridge, looking along it. */
  readonly sides: readonly [RoofPlane, RoofPlane];
  /** First and last end; null for a gable, and for the end that a wing has inside. The main roof's first is hipped. */
  readonly ends: readonly [RoofPlane | null, RoofPlane | null];
  /** How far the roof reaches past a gable's plate line. */
  readonly gableOverhang: number;
  /** What a wing is besides; null for the main roof. */
  readonly wing: WingPlace | null;
}

/** Where a wing stands and how it meets its host. Level distances along and up from its wall's plate line. */
export interface WingPlace {
  readonly spec: WingSpec;
  readonly letter: string;
  /** The main plane that it runs into. */
  readonly wall: RoofPlane;
  /** Along the wall, from its left end to the wing's two plate lines. */
  readonly from: number;
  readonly to: number;
  /** How far in its ridge line meets the wall's plane. */
  readonly reach: number;
  /** Its ridge is level with the main roof's. */
  readonly level: boolean;
  /** It is laid over the main roof, which is framed and sheathed whole under it. */
  readonly laid: boolean;
  /** The side on which its plane is that of a hipped end. */
  readonly flush: Side | null;
}

/** A wing as a block. */
export type Wing = Block & { readonly wing: WingPlace };

/** What the checks of a block have settled: its heel, and for sides and ends the run, overhang, seat and correction. */
export interface Settled {
  readonly heel: number;
  readonly side: SideFigures;
  readonly end: SideFigures;
}

type SideFigures = Pick<RoofPlane, "pitch" | "run" | "overhang" | "seat" | "correction">;

/** What is settled of a side or an end: its seat is what the common heel leaves, on a wing perhaps none. */
export const sideFigures = (
  { rafter }: RoofSpec,
  heel: number,
  { pitch, run, overhang, correction }: Omit<SideFigures, "seat">,
): SideFigures => ({ pitch, run, overhang, seat: (plumbDepthOf(pitch, rafter.depth) - heel) / pitch, correction });

/** What differs from another value by a last bit only, as 45° from 12 in 12, is that: planes alike have the same pieces. */
export const settled = (value: number, other: number): number =>
  Math.abs(value - other) <= 1e-12 * Math.abs(other) ? other : value;

/** The main roof as a block. In plan x runs along the front plate from its left end, and y from it to the back; heights are above the plates' top. */
export function mainBlock(spec: RoofSpec, settled: Settled): Block {
  const { length, span, ends } = spec;
  // Set out from a hipped end: the left one, unless that is the gable.
  const turned = ends === "gable and hip";
  const along = turned ? { x: -1, y: 0 } : { x: 1, y: 0 };
  const corner = turned ? { x: length, y: span } : { x: 0, y: 0 };
  const across = { x: -along.y, y: along.x };
  const gable = ends !== "hip and hip";
  const at = (s: number, w: number) => inBlock({ corner, along, across }, s, w);
  const plane = (index: number, left: Point, inward: Point, width: number): RoofPlane =>
    planeOf(
      index > 1 ? settled.end : settled.side,
      settled.heel,
      { index, block: 0, wing: "", end: index > 1 },
      left,
      inward,
      width,
    );
  const [backAlong, backAcross] = [opposite(along), opposite(across)];
  return {
    index: 0,
    corner,
    along,
    across,
    length,
    span,
    sides: [plane(0, at(0, 0), across, length), plane(1, at(length, span), backAcross, length)],
    ends: [plane(2, at(0, span), along, span), gable ? null : plane(3, at(length, 0), backAlong, span)],
    gableOverhang: gable ? (spec.endOverhang ?? spec.overhang) : 0,
    wing: null,
  };
}

/** A wing as a block, its planes numbered on from those that are there. Set out from its outer end; a flush side is the plane of the end beside it. */
export function wingBlock(place: WingPlace, settled: Settled, main: Block, index: number, planes: number): Wing {
  const { spec, letter, wall, from, to, flush } = place;
  const along = wall.inward;
  const across = opposite(wall.right);
  const corner = onPlane(wall, to, -spec.out);
  const at = (s: number, w: number) => inBlock({ corner, along, across }, s, w);
  let next = planes;
  const plane = (end: boolean, left: Point, inward: Point, width: number): RoofPlane =>
    planeOf(
      end ? settled.end : settled.side,
      settled.heel,
      { index: next++, block: index, wing: letter, end },
      left,
      inward,
      width,
    );
  const side = (which: Side, left: Point, inward: Point) =>
    flush === which ? endBeside(main, wall, which)! : plane(false, left, inward, spec.out);
  return {
    index,
    corner,
    along,
    across,
    length: spec.out + wall.run,
    span: spec.span,
    sides: [side("right", at(0, 0), across), side("left", at(spec.out, spec.span), opposite(across))],
    ends: [spec.end === "hip" ? plane(true, at(0, spec.span), along, to - from) : null, null],
    gableOverhang: spec.end === "hip" ? 0 : (spec.endOverhang ?? settled.side.overhang),
    wing: place,
  };
}

/** The main roof's plane over its front wall or its back one: the front's rises to the back. */
export const planeOver = ({ sides }: Block, wall: "front" | "back"): RoofPlane =>
  sides.find(({ inward }) => inward.y > 0 === (wall === "front"))!;

/** The hipped end at the left or right of a side of the main roof, for someone who faces that wall; null for a gable. */
export function endBeside({ ends }: Block, wall: RoofPlane, side: Side): RoofPlane | null {
  // Seen so, the end at the left rises to the right.
  const towards = (end: RoofPlane) => end.inward.x * wall.right.x + end.inward.y * wall.right.y;
  return ends.find((end) => end !== null && towards(end) > 0 === (side === "left")) ?? null;
}

function planeOf(
  figures: SideFigures,
  heel: number,
  { index, block, wing, end }: Pick<RoofPlane, "index" | "block" | "wing" | "end">,
  corner: Point,
  inward: Point,
  width: number,
): RoofPlane {
  const [x, y] = [inward.x * figures.pitch, inward.y * figures.pitch];
  return {
    // One by one: a spread into an object of this size is slow.
    pitch: figures.pitch,
    run: figures.run,
    overhang: figures.overhang,
    seat: figures.seat,
    correction: figures.correction,
    x,
    y,
    z: heel - x * corner.x - y * corner.y,
    index,
    block,
    wing,
    end,
    corner,
    right: { x: inward.y, y: 0 - inward.x },
    inward,
    width,
  };
}

// Taken from 0, for a plain 0 in place of the negative one.
const opposite = ({ x, y }: Point): Point => ({ x: 0 - x, y: 0 - y });

/** The planes that a block's roof is made of: its sides, then its hipped ends. */
export function planesOf({ sides, ends }: Block): readonly RoofPlane[] {
  return [...sides, ...ends.filter((end) => end !== null)];
}

/** A point of a block's plan: so far along it, and so far across. */
export function inBlock(
  { corner, along, across }: Pick<Block, "corner" | "along" | "across">,
  s: number,
  w: number,
): Point {
  return { x: corner.x + s * along.x + w * across.x, y: corner.y + s * along.y + w * across.y };
}

/** How far along a block a point of the plan is: {@link inBlock} turned round. */
export function alongBlock({ corner, along }: Pick<Block, "corner" | "along">, { x, y }: Point): number {
  return (x - corner.x) * along.x + (y - corner.y) * along.y;
}

/** A point of a plane's plan: so far along its plate line from the left end, and so far level up from that line. */
export function onPlane({ corner, right, inward }: RoofPlane, along: number, up: number): Point {
  return { x: corner.x + along * right.x + up * inward.x, y: corner.y + along * right.y + up * inward.y };
}

/** {@link onPlane} turned round: x along the plate line, y up from it. */
export function fromPlane({ corner, right, inward }: RoofPlane, { x, y }: Point): Point {
  const dx = x - corner.x;
  const dy = y - corner.y;
  return { x: dx * right.x + dy * right.y, y: dx * inward.x + dy * inward.y };
}

/** What a block's roof covers in plan, overhangs included, counterclockwise. A wing ends over its host's ridge line. */
export function outlineOf(block: Block): Point[] {
  const { length, span, sides, ends, gableOverhang, wing } = block;
  const at = (s: number, w: number) => inBlock(block, s, w);
  const first = 0 - (ends[0]?.overhang ?? gableOverhang);
  const last = length + (wing ? 0 : (ends[1]?.overhang ?? gableOverhang));
  const [right, left] = [-sides[0].overhang, span + sides[1].overhang];
  return [at(first, right), at(last, right), at(last, left), at(first, left)];
}

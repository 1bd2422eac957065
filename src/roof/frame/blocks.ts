import type { Plane } from "../../geometry/plane.ts";
import type { Point } from "../../geometry/point.ts";
import type { RoofSpec } from "./roofSpec.ts";

/** One plane of a roof, over one plate line. */
export interface RoofPlane extends Plane {
  /** Its place in the roof's list of planes. */
  readonly index: number;
  /** The block it belongs to. */
  readonly block: number;
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

/** A rectangle of plate lines with a roof of its own. The main roof is block 0. */
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
  /** First and last end; null for a gable. The first is hipped. */
  readonly ends: readonly [RoofPlane, RoofPlane | null];
  /** How far the roof reaches past a gable's plate line. */
  readonly gableOverhang: number;
}

/** What the checks of a block have settled: its heel, and for sides and ends the run, overhang, seat and correction. */
export interface Settled {
  readonly heel: number;
  readonly side: SideFigures;
  readonly end: SideFigures;
}

type SideFigures = Pick<RoofPlane, "pitch" | "run" | "overhang" | "seat" | "correction">;

/** The main roof as a block. In plan x runs along the front plate from its left end, and y from it to the back; heights are above the plates' top. */
export function mainBlock(spec: RoofSpec, settled: Settled): Block {
  const { length, span, ends } = spec;
  // Set out from a hipped end: the left one, unless that is the gable.
  const turned = ends === "gable and hip";
  const along = turned ? { x: -1, y: 0 } : { x: 1, y: 0 };
  return block(0, [], {
    corner: turned ? { x: length, y: span } : { x: 0, y: 0 },
    along,
    length,
    span,
    gable: ends !== "hip and hip",
    gableOverhang: spec.endOverhang ?? spec.overhang,
    settled,
  });
}

function block(
  index: number,
  before: readonly Block[],
  given: Pick<Block, "corner" | "along" | "length" | "span" | "gableOverhang"> & { gable: boolean; settled: Settled },
): Block {
  const { corner, along, length, span, gable, settled } = given;
  const across = { x: -along.y, y: along.x };
  const at = (s: number, w: number) => inBlock({ corner, along, across }, s, w);
  let count = before.flatMap(planesOf).length;
  const plane = (end: boolean, left: Point, inward: Point, width: number): RoofPlane => {
    const figures = end ? settled.end : settled.side;
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
      z: settled.heel - x * left.x - y * left.y,
      index: count++,
      block: index,
      end,
      corner: left,
      right: { x: inward.y, y: -inward.x },
      inward,
      width,
    };
  };
  const [backAlong, backAcross] = [opposite(along), opposite(across)];
  return {
    index,
    corner,
    along,
    across,
    length,
    span,
    sides: [plane(false, at(0, 0), across, length), plane(false, at(length, span), backAcross, length)],
    ends: [plane(true, at(0, span), along, span), gable ? null : plane(true, at(length, 0), backAlong, span)],
    gableOverhang: gable ? given.gableOverhang : 0,
  };
}

// Adding 0 makes a plain 0 of the negative one.
const opposite = ({ x, y }: Point): Point => ({ x: 0 - x, y: 0 - y });

/** The planes of a block: its sides, then its hipped ends. */
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

/** A point of a plane's plan: so far along its plate line from the left end, and so far level up from that line. */
export function onPlane({ corner, right, inward }: RoofPlane, along: number, up: number): Point {
  return { x: corner.x + along * right.x + up * inward.x, y: corner.y + along * right.y + up * inward.y };
}

/** {@link onPlane} turned round: x along the plate line, y up from it. */
export function fromPlane({ corner, right, inward }: RoofPlane, { x, y }: Point): Point {
  const [dx, dy] = [x - corner.x, y - corner.y];
  return { x: dx * right.x + dy * right.y, y: dx * inward.x + dy * inward.y };
}

/** What a block's roof covers in plan, overhangs included, counterclockwise. */
export function outlineOf(block: Block): Point[] {
  const { length, span, sides, ends, gableOverhang } = block;
  const at = (s: number, w: number) => inBlock(block, s, w);
  const [first, last] = [-ends[0].overhang, length + (ends[1]?.overhang ?? gableOverhang)];
  const [right, left] = [-sides[0].overhang, span + sides[1].overhang];
  return [at(first, right), at(last, right), at(last, left), at(first, left)];
}

import { Failure } from "../../measure/result.ts";
import { endBeside, type Block, type Side } from "./blocks.ts";
import type { FrameProblem } from "./frameProblem.ts";
import type { RoofSpec } from "./roofSpec.ts";
import { innerSides } from "./valleys.ts";
import type { WingFrame } from "./wingFrame.ts";

/** Of a length: the least that a refusal names is taken, whatever the last bit of a double. */
const NONE = 1e-9;

const wrong = (problem: FrameProblem) => new Failure<FrameProblem>(problem);

/** A stretch of a valley's line on its wall: along and in from the plate line. */
type Line = readonly [readonly [number, number], readonly [number, number]];

function valleyLines({ block, at, meeting }: WingFrame, long: Side | null): Line[] {
  const { from, to, reach, wall } = block.wing;
  return innerSides(block).map((side): Line => {
    const [corner, way] = side === "left" ? [from, 1] : [to, -1];
    const point = (up: number) => [corner + (way * up) / at.near.tan, up] as const;
    return [point(-wall.overhang), point(side === long ? meeting.toRidge : reach)];
  });
}

/** It beside the wings that stand on the same wall. */
export function neighborProblem(
  frame: WingFrame,
  others: readonly WingFrame[],
  main: Block,
  spec: RoofSpec,
): Failure<FrameProblem> | null {
  const { letter, wall, from, to, flush, level, laid } = frame.block.wing;
  for (const other of others) {
    const its = other.block.wing;
    if (its.wall !== wall) {
      // Two level wings, one on each wall, that take both hips of an end away.
      const end = flush && endBeside(main, wall, flush);
      if (level && its.level && end && its.flush && endBeside(main, its.wall, its.flush) === end)
        return wrong({ kind: "no hip left", at: "wingFrom", wing: letter, other: its.letter });
      continue;
    }
    if (from < its.to - NONE * spec.length && its.from < to - NONE * spec.length)
      return wrong({
        kind: "wings overlap",
        at: "wingFrom",
        wing: letter,
        other: its.letter,
        right: its.to,
        left: its.from - (to - from),
      });
    const toTheRight = from >= its.to - NONE * spec.length;
    const [left, right] = toTheRight ? [other.block, frame.block] : [frame.block, other.block];
    const eaves = left.sides[0].overhang + right.sides[1].overhang;
    const eavesAt = toTheRight ? its.to + eaves : its.from - eaves - (to - from);
    const clear = frame.meeting.valley + spec.rafter.thickness;
    const apart = (long: Side | null, itsLong: Side | null, shift = 0) =>
      Math.min(
        ...valleyLines(frame, long).flatMap(([[a, b], [c, d]]) =>
          valleyLines(other, itsLong).map((line) =>
            distance(
              [
                [a + shift, b],
                [c + shift, d],
              ],
              line,
            ),
          ),
        ),
      );
    const way = toTheRight ? 1 : -1;
    // What runs on under a laid-over wing is in nobody's way.
    const [own, theirs] = laid || its.laid ? [null, null] : [frame.long, other.long];
    if (apart(own, theirs) >= clear - NONE * spec.length) {
      if (way * (from - eavesAt) >= -NONE * spec.length) continue;
      return wrong({
        kind: "wings' eaves meet",
        at: "wingFrom",
        wing: letter,
        other: its.letter,
        bound: toTheRight ? "least" : "most",
        limit: eavesAt,
      });
    }
    if (
      own !== null &&
      theirs !== null &&
      own !== theirs &&
      (apart(own, own) >= clear || apart(theirs, theirs) >= clear)
    )
      return wrong({ kind: "long valleys cross", at: "longValley", wing: letter, other: its.letter });
    // Farther off by how much they would clear each other.
    let [low, high] = [0, spec.length];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (apart(own, theirs, way * middle) >= clear) high = middle;
      else low = middle;
    }
    return wrong({
      kind: "valleys meet",
      at: "wingFrom",
      wing: letter,
      other: its.letter,
      bound: way > 0 ? "least" : "most",
      limit: toTheRight ? Math.max(from + high, eavesAt) : Math.min(from - high, eavesAt),
    });
  }
  return null;
}

/** How near two stretches of line come to each other. */
function distance(one: Line, other: Line): number {
  const cross = (p: readonly number[], q: readonly number[], r: readonly number[]) =>
    (q[0]! - p[0]!) * (r[1]! - p[1]!) - (q[1]! - p[1]!) * (r[0]! - p[0]!);
  const [[a, b], [c, d]] = [one, other];
  if (cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0) return 0;
  const to = (p: readonly number[], [q, r]: Line) => {
    const [x, y] = [r[0] - q[0], r[1] - q[1]];
    const part = Math.max(0, Math.min(1, ((p[0]! - q[0]) * x + (p[1]! - q[1]) * y) / (x * x + y * y)));
    return Math.hypot(p[0]! - q[0] - part * x, p[1]! - q[1] - part * y);
  };
  return Math.min(to(a, other), to(b, other), to(c, one), to(d, one));
}

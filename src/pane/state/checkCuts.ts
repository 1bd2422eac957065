import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import { alongSlope } from "../../geometry/alongSlope.ts";
import { Failure } from "../../measure/result.ts";
import { readLengthCell } from "../../registry/readLengthCell.ts";
import { newReading } from "../../registry/reading.ts";
import { Refusal } from "../../registry/refusal.ts";
import type { Unit } from "../../measure/unit.ts";
import type { RoofPlane } from "../../roof/frame/blocks.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { jackRunFromTape } from "../../roof/members/jack.ts";

/** A jack whose tape was measured: what that means for its long point, and how far it is from the computed one. */
export interface Cut {
  readonly piece: Piece;
  readonly tape: number;
  readonly longPoint: number;
  /** Measured less computed: above 0 the building wants a longer jack. */
  readonly off: number;
}

/** The jacks of a roof, each with what was measured, or why that cannot be read. */
export function checkCuts(
  { frame, pieces }: RoofModel,
  measured: Readonly<Record<string, string>>,
): { cuts: Cut[]; wrong: Readonly<Record<string, string>> } {
  const { unit } = frame.spec;
  const cuts: Cut[] = [];
  const wrong: Record<string, string> = {};
  for (const piece of pieces) {
    const text = measured[piece.mark]?.trim() ?? "";
    if (piece.member !== "jack" || text === "") continue;
    const read = cutOf(piece, text, unit);
    if (typeof read === "string") wrong[piece.mark] = read;
    else cuts.push(read);
  }
  return { cuts, wrong };
}

function cutOf(piece: Piece, text: string, unit: Unit): Cut | string {
  const tape = readLengthCell(text, newReading(piece.mark, unit), { example: "55 7/16" });
  if (tape instanceof Failure) return fieldText(tape, true);
  const run = jackRunFromTape(piece.slope, tape, piece.heel);
  if (run instanceof Failure) return fieldText(new Refusal(run.problem, { argument: piece.mark }, unit), true);
  const longPoint = run * alongSlope(piece.slope);
  return { piece, tape, longPoint, off: longPoint - piece.longPoint };
}

/** What the differences of one side come to, as arithmetic. Lengths in the roof's unit. */
export interface Differences {
  readonly planes: readonly RoofPlane[];
  readonly count: number;
  readonly median: number;
  readonly mean: number;
  readonly least: number;
  readonly most: number;
  /** They all grow, or all shrink, from the corner up the hip: by how much from the first measured to the last, and over what. */
  readonly grows: { readonly by: number; readonly over: number } | null;
  /** One that is far from the others: how far from their median, and within what the others lie. */
  readonly standsOut: { readonly mark: string; readonly by: number; readonly others: number } | null;
}

/** Less than these is what a tape and a hand leave open (common practice, no source). In the unit. */
const SEEN = { in: { step: 1 / 32, range: 1 / 8, apart: 1 / 4 }, mm: { step: 0.5, range: 3, apart: 6 } } as const;

/** The differences of each side of the main roof that has any: those of jacks for sides and ends alike, or the sides' before the ends'. A wing's take no correction. */
export function differences(cuts: readonly Cut[], unit: Unit): Differences[] {
  return [false, true].flatMap((end) => {
    const here = cuts
      .filter(({ piece: { planes } }) => planes[0]!.block === 0 && planes[0]!.end === end)
      .sort((a, b) => a.piece.offset! - b.piece.offset!);
    if (here.length === 0) return [];
    const offs = here.map(({ off }) => off);
    return [
      {
        planes: here.flatMap(({ piece }) => piece.planes),
        count: here.length,
        median: median(offs),
        mean: offs.reduce((sum, off) => sum + off, 0) / offs.length,
        least: Math.min(...offs),
        most: Math.max(...offs),
        grows: growth(here, unit),
        standsOut: standingOut(here, unit),
      },
    ];
  });
}

/** The middle of the differences: one slip of the tape does not move it, which it would the mean. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

function growth(cuts: readonly Cut[], unit: Unit): Differences["grows"] {
  const { step, range } = SEEN[unit];
  const steps = cuts.slice(1).map(({ off }, i) => off - cuts[i]!.off);
  const by = cuts.at(-1)!.off - cuts[0]!.off;
  const alike = steps.every((one) => Math.abs(one) >= step && Math.sign(one) === Math.sign(by));
  return cuts.length >= 3 && alike && Math.abs(by) >= range
    ? { by, over: cuts.at(-1)!.piece.offset! - cuts[0]!.piece.offset! }
    : null;
}

function standingOut(cuts: readonly Cut[], unit: Unit): Differences["standsOut"] {
  if (cuts.length < 3) return null;
  const found = cuts
    .map(({ piece, off }) => {
      const rest = cuts.filter((cut) => cut.piece !== piece).map((cut) => cut.off);
      return { mark: piece.mark, by: off - median(rest), others: Math.max(...rest) - Math.min(...rest) };
    })
    .sort((a, b) => Math.abs(b.by) - Math.abs(a.by))[0]!;
  return Math.abs(found.by) >= SEEN[unit].apart && Math.abs(found.by) > 2 * found.others ? found : null;
}

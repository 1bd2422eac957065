import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import { Failure } from "../../measure/result.ts";
import { jacksAlike, type Hand, type Piece } from "../../roof/frame/piece.ts";
import { salvage, type Rescue } from "../../roof/tables/salvage.ts";
import { doneOf, type SawJob } from "./sawJob.ts";

/** What a wrongly cut piece can become, and how many of that are still to be cut. */
export interface Way extends Rescue {
  readonly open: number;
}

/** Whether it can be said what becomes of a piece that is cut wrong: of jacks, and of commons, out of which any jack can be cut. */
export const canBecome = ({ member, tailCut, foot }: Piece): boolean =>
  (member === "jack" || member === "common" || member === "king common") && tailCut === null && foot.bearer === null;

/** The jacks still to be cut that a wrongly cut piece can become, least lost first. It keeps its plumb cuts, its seat and its tail. */
export function waysOut(
  { frame, pieces }: RoofModel,
  job: SawJob,
  piece: Piece,
  cut: { readonly hand: Hand; readonly longPoint: number },
): Way[] {
  const end = jacksAlike(pieces) ? null : piece.planes[0]!.end;
  // A common's head is square across: either hand comes out of it, with nothing lost by turning.
  const hands = cut.hand === "plain" ? (["left", "right"] as const) : [cut.hand];
  return hands
    .flatMap((hand) => {
      const found = salvage(frame, pieces, { end, hand, longPoint: cut.longPoint });
      return found instanceof Failure ? [] : found.filter((way) => cut.hand !== "plain" || way.turn === 0);
    })
    .filter((way) => serves(piece, way.piece))
    .map((way) => ({ ...way, open: way.piece[way.hand] - doneOf(job, way.piece.mark, way.hand) }))
    .filter(({ open }) => open > 0)
    .sort((a, b) => a.lost - b.lost || a.short - b.short || a.turn - b.turn);
}

/** On a roof with wings jacks of several slopes and tails have one side's name. */
function serves(cut: Piece, jack: Piece): boolean {
  const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  const tilts = cut.head.tilts.length === 0 || same(cut.head.tilts[0]!, jack.head.tilts[0]!);
  return (
    tilts &&
    cut.section.name === jack.section.name &&
    same(cut.slope, jack.slope) &&
    same(cut.tail, jack.tail) &&
    same(cut.heel, jack.heel)
  );
}

import type { Unit } from "../../measure/unit.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { figure } from "../canvas/figure.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import { boardStep } from "./boardStep.ts";
import type { CardOptions } from "./cardOptions.ts";
import { sawDanger } from "./sawDanger.ts";

/** What to do for a common, king common or jack, in order; pieces that are one board have one list. */
export function rafterSteps(unit: Unit, own: readonly Piece[], options: CardOptions): string[] {
  const { length, words = WORDS } = options;
  const { card } = words;
  const [piece] = own as [Piece, ...Piece[]];
  const { slope, headCut, head, section, longPoint, heel, seat, foot } = piece;
  const [tilt] = head.tilts;
  const square = [figure(slope * 12), "12", angleText(headCut)] as const;
  const headJack = (at: number) => {
    const danger = sawDanger([at], section.thickness, unit, words);
    return `${card.headJack(...square)} ${danger === "" ? card.sawJack(angleText(at)) : danger} ${head.edge === null ? "" : card.sideCut([angleText(head.edge)])}`.trim();
  };
  return [
    boardStep(own, options),
    tilt === undefined ? card.head(...square) : headJack(tilt),
    tilt === undefined ? card.hookHead(length(longPoint)) : card.hook(length(longPoint)),
    `${tilt === undefined ? "" : `${card.tiltBack} `}${card.seat(length(heel), length(seat))}`,
    tailStep(piece, options),
    ...(foot.mark === null || head.mark === null ? [] : [card.setJack(length(foot.mark), length(head.mark))]),
  ];
}

/** Where the tail is cut, and how. */
export function tailStep({ tail, overhang, tailEnd }: Piece, { length, words: { card } = WORDS }: CardOptions): string {
  if (tail === 0) return card.noTail;
  const { cut, plumb, soffit } = tailEnd;
  if (plumb !== null) return card.tailLevel(length(tail), length(overhang), length(plumb), length(soffit ?? 0));
  return (cut === "square" ? card.tailSquare : card.tail)(length(tail), length(overhang));
}

import { hipsIn, type Frame } from "../../roof/frame/frame.ts";
import { sideName, type Piece, type SideName } from "../../roof/frame/piece.ts";
import type { CardOptions } from "./cardOptions.ts";
import { boardStep } from "../canvas/boardStep.ts";
import { drawHip } from "../views/drawHip.ts";
import { drawJack } from "../views/drawJack.ts";
import { drawPair } from "../views/drawPair.ts";
import { drawRidge } from "../views/drawRidge.ts";
import { figure } from "../canvas/figure.ts";
import { hipSteps } from "../views/hipSteps.ts";
import { sawText } from "./sawText.ts";
import type { DrawingOptions } from "../canvas/canvas.ts";
import { WORDS, type Words } from "../canvas/words.ts";

/** What goes on one card, nailed up beside the saw. */
export interface CutCard {
  readonly mark: string;
  readonly title: string;
  /** How many of which hand: "4 left, 4 right". */
  readonly counts: string;
  /** The figures that are read from a step away. */
  readonly figures: readonly { readonly name: string; readonly value: string }[];
  /** What to do, in order. */
  readonly steps: readonly string[];
  /** What else to know of the piece, each a sentence of its own. */
  readonly notes: readonly string[];
  readonly cautions: string;
  /** Black and white, for a width in pixels; brief where the card is small. */
  drawing(width: number, brief: boolean): string;
}

/** One card for each distinct piece, and a second for a hip with the marks of its jacks. */
export function cutCards(frame: Frame, pieces: readonly Piece[], options: CardOptions): readonly CutCard[] {
  const { words = WORDS, length } = options;
  const { near, far } = hipsIn(frame)[0]!;
  // Cards of two roofs may hang at one saw.
  const cautions = `${words.card.roof(length(frame.spec.span), length(frame.spec.length), figure(near.pitch * 12), figure(far.pitch * 12))} ${words.card.cautions}`;
  return pieces.flatMap((piece) => {
    const draw = (width: number, brief: boolean): DrawingOptions => ({ width, length, words, theme: "print", brief });
    const card = (drawing: CutCard["drawing"], steps: readonly string[]): CutCard => ({
      mark: piece.mark,
      title: [
        words.card.members[piece.member],
        ...(piece.planes.length === 0 ? [] : [sideText(sideName(piece.planes), words)]),
      ].join(", "),
      counts: countsText(piece, words),
      figures: figuresOf(piece, options),
      steps,
      notes: options.notes?.(piece) ?? [],
      cautions,
      drawing,
    });
    switch (piece.member) {
      case "ridge":
        return [
          card(
            (...size) => drawRidge(frame, piece, draw(...size)),
            [
              boardStep(frame, piece, options),
              words.card.ridge(length(piece.longPoint)),
              words.card.ridgeSides,
              ...(frame.spec.hipHead === "king commons" ? [] : [words.card.ridgeHips]),
            ],
          ),
        ];
      case "hip": {
        const cuts = card(
          (...size) => drawHip(frame, pieces, { ...draw(...size), part: "cuts" }),
          hipSteps(frame, piece, options),
        );
        const marks = card(
          (...size) => drawHip(frame, pieces, { ...draw(...size), part: "marks" }),
          [words.card.marks, ...(piece.plain > 0 ? [] : [words.card.mirror])],
        );
        return [cuts, { ...marks, title: `${marks.title}: ${words.card.marksTitle}`, notes: [], figures: [] }];
      }
      default:
        return [
          card(
            (...size) => (piece.plain > 0 ? drawJack(piece, "plain", draw(...size)) : drawPair(piece, draw(...size))),
            rafterSteps(frame, piece, options),
          ),
        ];
    }
  });
}

function countsText({ left, right, plain }: Piece, words: Words): string {
  const { counts } = words.card;
  return plain > 0 ? `${plain} ${counts.plain}` : `${left} ${counts.left}, ${right} ${counts.right}`;
}

function figuresOf(piece: Piece, { length, words = WORDS }: CardOptions): CutCard["figures"] {
  if (piece.member === "ridge") return [{ name: words.card.boardLength, value: length(piece.longPoint) }];
  if (piece.tape === null) return [{ name: words.card.toHead, value: length(piece.longPoint) }];
  const [name, check] =
    piece.head.tilts.length > 0
      ? [words.longPoint, words.card.checkTape]
      : [words.card.toHead, words.card.checkTapeHead];
  return [
    { name, value: length(piece.longPoint) },
    { name: check, value: length(piece.tape) },
  ];
}

function rafterSteps(frame: Frame, piece: Piece, options: CardOptions): string[] {
  const { length, words = WORDS } = options;
  const { card } = words;
  const handed = piece.head.tilts.length > 0;
  const rise = figure(piece.slope * 12);
  return [
    boardStep(frame, piece, options),
    handed ? card.headJack(rise, "12", sawText(piece.head.tilts[0]!, words)) : card.head(rise, "12"),
    handed ? card.hook(length(piece.longPoint)) : card.hookHead(length(piece.longPoint)),
    `${handed ? `${card.tiltBack} ` : ""}${card.seat(length(piece.heel), length(piece.seat))}`,
    piece.tail > 0 ? card.tail(length(piece.tail), length(piece.overhang)) : card.noTail,
  ];
}

/** The planes that a piece stands on, in words; a wing's by its name. */
function sideText(side: SideName, { card: { sides } }: Words): string {
  return side === "Main" || side === "End" || side === "Both" ? sides[side] : side;
}

import { hipsIn, type Frame } from "../../roof/frame/frame.ts";
import { outlineMarks } from "../../roof/frame/outlineMarks.ts";
import { placedBoards } from "../../roof/frame/placedBoards.ts";
import { sideName, type Piece, type SideName } from "../../roof/frame/piece.ts";
import { jackTape } from "../../roof/members/jack.ts";
import type { DrawingOptions } from "../canvas/canvas.ts";
import { figure } from "../canvas/figure.ts";
import { WORDS, type Words } from "../canvas/words.ts";
import { drawEnds } from "../views/drawEnds.ts";
import { drawHip } from "../views/drawHip.ts";
import { drawJack } from "../views/drawJack.ts";
import { drawPair } from "../views/drawPair.ts";
import { drawRidge } from "../views/drawRidge.ts";
import { boardStep } from "./boardStep.ts";
import { brokenHipSteps } from "./brokenHipSteps.ts";
import type { CardOptions } from "./cardOptions.ts";
import { drawKeyPlan } from "./drawKeyPlan.ts";
import { hipSteps } from "./hipSteps.ts";
import { rafterSteps } from "./rafterSteps.ts";
import { isSlanted, slantedSteps } from "./slantedSteps.ts";
import { valleyBoardSteps } from "./valleyBoardSteps.ts";
import { valleySteps } from "./valleySteps.ts";
import { wingRidgeSteps } from "./wingRidgeSteps.ts";

/** What goes on one card, nailed up beside the saw. */
export interface CutCard {
  /** The marks of all pieces that are this board: "C, K, KE". */
  readonly mark: string;
  readonly title: string;
  /** How many to cut of which hand, each a box to tick. */
  readonly counts: readonly { readonly name: string; readonly count: number }[];
  /** The figures that are read from a step away. */
  readonly figures: readonly { readonly name: string; readonly value: string }[];
  /** What to do, in order. */
  readonly steps: readonly string[];
  /** What else to know of the piece, each a sentence of its own. */
  readonly notes: readonly string[];
  /** The job and its roof, the day and the stamp, and which card of how many this is. */
  readonly job: string;
  readonly cautions: string;
  /** Black and white, for a width in pixels; brief where the card is small. */
  drawing(width: number, brief: boolean): string;
  /** The whole roof, very small, with these pieces in black. */
  keyPlan(width: number): string;
}

/** One card for each distinct board, and a second for a hip with the marks of its jacks. */
export function cutCards(frame: Frame, pieces: readonly Piece[], given: CardOptions): readonly CutCard[] {
  const { boards: lengths, endTrim: trim, unit } = frame.spec;
  const options = { ...given, onHand: { boards: lengths, trim, step: unit === "mm" ? 1 : 1 / 16 } };
  const { words = WORDS, length, packet, theme = "print" } = options;
  const { card: said } = words;
  const { near, far } = hipsIn(frame)[0]!;
  const { spec } = frame;
  // Cards of two roofs may hang at one saw.
  const roof = said.roof(length(spec.span), length(spec.length), figure(near.pitch * 12), figure(far.pitch * 12));
  const boards = placedBoards(frame, pieces);
  const cards = boardsAlike(pieces).flatMap((own) => {
    const [piece] = own as [Piece, ...Piece[]];
    const draw = (width: number, brief = false): DrawingOptions => ({ width, length, words, theme, brief });
    const marks = new Set(own.map(({ mark }) => mark));
    const members = [...new Set(own.map(({ member }) => said.members[member]))];
    const planes = own.flatMap((one) => one.planes);
    const card = (drawing: CutCard["drawing"], steps: readonly string[]): Omit<CutCard, "job"> => ({
      mark: [...marks].join(", "),
      title: [...members, ...(planes.length === 0 || own.length > 1 ? [] : [sideText(sideName(planes), words)])].join(
        ", ",
      ),
      counts: countsOf(own, words),
      figures: figuresOf(piece, options),
      steps,
      notes: own.flatMap((one) =>
        (options.notes?.(one) ?? []).map((note) => (own.length === 1 ? note : said.noteOf(one.mark, note))),
      ),
      cautions: said.cautions,
      drawing,
      keyPlan: (width) => drawKeyPlan(boards, marks, draw(width)),
    });
    const ends = (steps: typeof valleySteps) =>
      card(
        (...size) => drawEnds(frame, piece, draw(...size)),
        [
          boardStep(own, options),
          ...steps(spec.unit, piece, options),
          ...(piece.left > 0 && piece.right > 0 ? [said.mirror] : []),
        ],
      );
    switch (piece.member) {
      case "ridge":
        return [
          card(
            // A point at its inner end is not to be seen from the side.
            (...size) =>
              piece.head.tilts.length > 0
                ? drawEnds(frame, piece, draw(...size))
                : drawRidge(frame, piece, draw(...size)),
            [
              boardStep(own, options),
              ...wingRidgeSteps(spec.unit, piece, options),
              said.ridgeSides,
              ...(spec.hipHead === "king commons" ? [] : [said.ridgeHips]),
            ],
          ),
        ];
      case "hip": {
        const cuts = card(
          (...size) => drawHip(frame, pieces, { ...draw(...size), part: "cuts", piece }),
          hipSteps(frame, piece, options),
        );
        const jacks = card(
          (...size) => drawHip(frame, pieces, { ...draw(...size), part: "marks", piece }),
          [
            said.marks,
            ...(piece.plain > 0 ? [] : [said.mirror]),
            ...(carryAlike(frame, piece) ? [] : [said.othersCarry]),
          ],
        );
        return [cuts, { ...jacks, title: `${jacks.title}, ${said.marksTitle}`, notes: [], figures: [] }];
      }
      case "valley":
        return [
          ends(valleySteps),
          ...(["left", "right"] as const)
            .filter((hand) => piece[hand] > 0)
            .map((hand) => {
              const marked = card(
                (...size) => drawHip(frame, pieces, { ...draw(...size), part: "marks", hand, piece }),
                [said.wings.marks],
              );
              const counts = [{ name: said.counts[hand], count: piece[hand] }];
              return { ...marked, title: `${marked.title}, ${said.marksTitle}`, counts, notes: [], figures: [] };
            }),
        ];
      case "valley board":
        return [ends((...given) => valleyBoardSteps(frame, ...given))];
      case "broken hip":
        return [ends(brokenHipSteps)];
      default:
        if (isSlanted(piece)) return [ends(slantedSteps)];
        return [
          card(
            (...size) => (piece.plain > 0 ? drawJack(piece, "plain", draw(...size)) : drawPair(piece, draw(...size))),
            rafterSteps(spec.unit, own, options),
          ),
        ];
    }
  });
  return cards.map((card, i) => ({
    ...card,
    job: [...(packet ? [said.packet(packet)] : []), roof, said.number(i + 1, cards.length)].join(" "),
  }));
}

/** Pieces that are one board, as commons and king commons often are, together: a crew cuts them in one go. */
function boardsAlike(pieces: readonly Piece[]): Piece[][] {
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const { member, plain, section, slope, overhang, heel, headCut, longPoint } = piece;
    const figures = [slope, overhang, heel, headCut, longPoint].map((value) => value.toFixed(6));
    const rafter = plain > 0 && member !== "hip" && member !== "ridge";
    const key = rafter ? [section.name, ...figures].join(" ") : piece.mark;
    groups.set(key, [...(groups.get(key) ?? []), piece]);
  }
  return [...groups.values()];
}

function countsOf(own: readonly Piece[], words: Words): CutCard["counts"] {
  const { counts } = words.card;
  const [{ left, right, plain }] = own as [Piece, ...Piece[]];
  if (own.length > 1) return own.map((piece) => ({ name: piece.mark, count: piece.plain }));
  if (plain > 0) return [{ name: counts.plain, count: plain }];
  return [
    { name: counts.left, count: left },
    { name: counts.right, count: right },
  ];
}

function figuresOf(piece: Piece, { length, words = WORDS }: CardOptions): CutCard["figures"] {
  const { card } = words;
  const { member, longPoint, slope, longRun, heel, head } = piece;
  if (member === "ridge") return [{ name: card.boardLength, value: length(longPoint) }];
  if (isSlanted(piece) || member === "valley board")
    return [
      { name: words.longPoint, value: length(longPoint) },
      ...(longPoint - piece.shortPoint > 1e-9 ? [{ name: words.shortPoint, value: length(piece.shortPoint) }] : []),
    ];
  if (member === "valley" || member === "broken hip") return [{ name: card.toHead, value: length(longPoint) }];
  if (piece.tape === null)
    return [
      { name: card.toHead, value: length(longPoint) },
      { name: card.checkTapeHip, value: length(jackTape(slope, longRun, heel)) },
    ];
  const [name, check] = head.tilts.length > 0 ? [words.longPoint, card.checkTape] : [card.toHead, card.checkTapeHead];
  return [
    { name, value: length(longPoint) },
    { name: check, value: length(piece.tape) },
  ];
}

/** The planes that a piece stands on, in words; a wing's by its name. */
function sideText(side: SideName, { card: { sides } }: Words): string {
  return side === "Main" || side === "End" || side === "Both" ? sides[side] : side;
}

/** Whether all hips that this piece stands for carry the same jacks at the same marks; beside a wing one may carry cripples in their place. */
function carryAlike(frame: Frame, { planes, stands }: Piece): boolean {
  const carried = stands.map((stand) =>
    outlineMarks(frame, { planes, stands: [stand] }, "right")
      .map(({ mark, at }) => `${mark} ${at.toFixed(6)}`)
      .sort()
      .join(),
  );
  return new Set(carried).size <= 1;
}

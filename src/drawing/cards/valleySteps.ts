import type { Unit } from "../../measure/unit.ts";
import { tailReach, tailTilts, type Valley } from "../../roof/frame/bearers.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { alongHip } from "../../roof/members/hip.ts";
import { cutAt, endReach, tiltOf, type PlumbCut } from "../../roof/members/plumbEnd.ts";
import { figure } from "../canvas/figure.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import type { CardOptions } from "./cardOptions.ts";
import { isTailInPlace } from "./hipSteps.ts";
import { dangerAfter } from "./sawDanger.ts";

/** What to do for a valley, in order: its heel is a point turned uphill, its tail a notch, the other way round than a hip's. */
export function valleySteps(unit: Unit, piece: Piece, options: CardOptions): string[] {
  const { length, words = WORDS } = options;
  const { card } = words;
  const { wings: said } = card;
  const valley = piece.stands[0] as Valley;
  const { near, far, slope, height } = valley;
  const along = (level: number) => length(alongHip(valley, level));
  const [mainOut, wingOut] = [near.face / near.tan, far.face / far.tan];
  const plate = tiltsOfPlates(valley).map(angleText) as [string, string];
  const tail = (across: number) => along(tailReach(valley, across));
  const [main, wing] = [tail(-near.face), tail(far.face)];
  const fascia = tailTilts(valley);
  const proud = piece.notes.find((note) => note.kind === "proud past crossing");
  const run = 12 / near.sin;
  const risk = (tilts: readonly number[]) => dangerAfter(tilts, piece.section.thickness, unit, words);
  return [
    `${said.valleyHead(figure(near.pitch * 12), figure(run), figure(slope * 12))} ${headText(valley, options)} ${said.mainFace}${risk(piece.head.tilts)}`,
    said.hookValley(length(valley.farthest)),
    `${card.tiltBack} ${said.heel({
      main: along(mainOut),
      wing: along(wingOut),
      mainDown: length(height - slope * mainOut),
      wingDown: length(height - slope * wingOut),
      mainTilt: plate[0],
      wingTilt: plate[1],
    })}${risk(tiltsOfPlates(valley))}`,
    said.seat(length(piece.seat)),
    piece.overhang <= Math.max(mainOut, wingOut) * (1 + 1e-9)
      ? said.noTail
      : isTailInPlace(piece)
        ? card.tailLong(length(piece.tail))
        : valley.notched
          ? said.tailNotch({ middle: tail(0), main, wing, mainTilt: plate[0], wingTilt: plate[1] })
          : said.tailOne({
              fascia: fascia.near === null ? said.wingSide : words.mainSide,
              main,
              wing,
              tilt: angleText((fascia.near ?? fascia.far)!),
            }),
    ...(proud && "by" in proud ? [said.crossing(along(crossingOf(valley)), length(proud.by))] : []),
  ];
}

/** Saw tilts of cuts along the main plate line and along the wing's. */
const tiltsOfPlates = ({ near, far }: Valley): number[] => [
  tiltOf({ at: 0, per: 1 / near.tan }),
  tiltOf({ at: 0, per: 1 / far.tan }),
];

/** Level, from the inner corner to the crossing: the ridge line of the wing stands half its span from the inner corner. */
const crossingOf = ({ far }: Valley): number => far.plane.run / far.sin;

/** Its cheeks: one, from the face that it leaves longer, or one from each face. */
function headText(valley: Valley, { length, words = WORDS }: CardOptions): string {
  const { wings: said } = words.card;
  const { head, near, far, farthest } = valley;
  const [mainEnd, wingEnd] = [-near.face, far.face].map((across) => alongHip(valley, endReach(head, across))) as [
    number,
    number,
  ];
  const tilt = (cut: PlumbCut) => angleText(tiltOf(cut));
  const [main, wing] = [cutAt(head, -near.face), cutAt(head, far.face)];
  if (main !== wing)
    return said.cheeksTwo(tilt(main), length(farthest - mainEnd), tilt(wing), length(farthest - wingEnd));
  if (Math.abs(main.per) < 1e-9) return said.square;
  const side = mainEnd > wingEnd ? words.mainSide : said.wingSide;
  return said.cheekOne(side, tilt(main), length(Math.abs(mainEnd - wingEnd)));
}

import { alongSlope } from "../../geometry/alongSlope.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { footReach, handOf, lowReach, type Rafter } from "../../roof/frame/rafterLines.ts";
import { endReach } from "../../roof/members/plumbEnd.ts";
import { figure } from "../canvas/figure.ts";
import { isBearer } from "../canvas/labelOf.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import type { CardOptions } from "./cardOptions.ts";
import { tailStep } from "./rafterSteps.ts";
import { dangerAfter } from "./sawDanger.ts";

type Face = "left" | "right";

/** Whether a rafter stands on a valley, or meets one, or has its tail cut on one: its steps are not a jack's. */
export const isSlanted = ({ member, foot, head, tailCut }: Piece): boolean =>
  !isBearer(member) &&
  ([foot, head].some(({ bearer }) => bearer === "valley" || bearer === "valley board") || tailCut !== null);

/** What to do for a rafter that a valley cuts, in order, from the head down: both tilts, and on which face each end is longer. */
export function slantedSteps(unit: Unit, piece: Piece, options: CardOptions): string[] {
  const { length, words = WORDS } = options;
  const { card } = words;
  const { wings: said } = card;
  const rafter = piece.stands[0] as Rafter;
  const { slope, section, foot, head, tailCut, over } = piece;
  const along = alongSlope(slope);
  const half = section.thickness / 2;
  const reach = (face: Face, of: (across: number) => number) => of(face === "left" ? half : -half) * along;
  const headAt = (face: Face) => reach(face, (across) => endReach([rafter.head], across));
  const footAt = (face: Face) => reach(face, (across) => footReach(rafter, across));
  const lowAt = (face: Face) => reach(face, (across) => lowReach(rafter, across));
  const longer = (of: (face: Face) => number): Face => (of("left") > of("right") ? "left" : "right");
  const risk = (tilt: number | undefined) => dangerAfter([tilt ?? null], section.thickness, unit, words);
  const facing = (face: Face): string =>
    piece.left > 0 && piece.right > 0 ? said.facing[face === handOf(rafter) ? "own" : "other"] : said.facing[face];

  const [headTilt, footTilt] = [head.tilts[0], foot.tilts[0]];
  const headFace = longer(headAt);
  const steps = [
    headTilt === undefined
      ? card.head(figure(slope * 12), "12", angleText(piece.headCut))
      : `${said.head(figure(slope * 12), facing(headFace), angleText(headTilt))}${risk(headTilt)}`,
  ];
  if (foot.bearer === "valley board") {
    const face = longer((one) => -footAt(one));
    const [long, short] = [length(piece.longPoint), length(piece.shortPoint)];
    steps.push(
      said.seatMark(facing(face), length(headAt(face) - footAt(face)), figure(slope * 12), length(piece.seat)),
      `${said.seatSaw(angleText(footTilt!))}${risk(footTilt)}`,
      said.faces(long, short),
    );
  } else if (footTilt !== undefined && !over) {
    const face = longer((one) => -footAt(one));
    steps.push(`${said.foot(facing(face), length(headAt(face) - footAt(face)), angleText(footTilt))}${risk(footTilt)}`);
    const [long, short] = [length(piece.longPoint), length(piece.shortPoint)];
    steps.push(long === short ? said.facesAlike(long) : said.faces(long, short));
  } else {
    const back = headTilt === undefined ? "" : `${card.tiltBack} `;
    steps.push(
      headTilt === undefined
        ? card.hookHead(length(headAt(headFace)))
        : said.hook(facing(headFace), length(headAt(headFace))),
    );
    if (over) {
      const face = longer((one) => -footAt(one));
      const at = footAt(face);
      steps.push(
        `${back}${said.overSeat(length(piece.heel))}`,
        `${said.overFoot(
          facing(face),
          at < 0 ? said.past(length(-at)) : said.shortOf(length(at)),
          angleText(footTilt!),
        )}${risk(footTilt)}`,
      );
    } else {
      const face = longer((one) => -lowAt(one));
      const other = face === "left" ? "right" : "left";
      steps.push(
        `${back}${card.seat(length(piece.heel), length(piece.seat))}`,
        tailCut
          ? `${said.tail(facing(face), length(-lowAt(face)), length(-lowAt(other)), angleText(tailCut.tilts[0]!))}${risk(tailCut.tilts[0])}`
          : tailStep(piece, options),
      );
    }
  }
  return [...steps, ...places(piece, options)];
}

/** Where it is set on what it meets, if that is one place for all of them. */
function places({ foot, head, stands, offset }: Piece, { length, words = WORDS }: CardOptions): string[] {
  const { wings: said, members } = words.card;
  const one = stands.every((stand) => stand.kind === "rafter" && Math.abs((stand.offset ?? 0) - (offset ?? 0)) < 1e-6);
  if (!one) return [];
  return [
    ...(foot.bearer === "valley board" && foot.mark !== null ? [said.setToe(length(foot.mark))] : []),
    ...(foot.bearer === "valley" && foot.mark !== null ? [said.setFoot(length(foot.mark))] : []),
    ...(head.bearer && head.mark !== null
      ? [
          said.setHead(
            length(head.mark),
            head.bearer === "valley" ? said.longValley : members[head.bearer].toLowerCase(),
          ),
        ]
      : []),
  ];
}

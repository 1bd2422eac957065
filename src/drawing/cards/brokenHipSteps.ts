import type { Unit } from "../../measure/unit.ts";
import type { Hip } from "../../roof/frame/bearers.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { alongHip } from "../../roof/members/hip.ts";
import { cutAt, endReach, tiltOf } from "../../roof/members/plumbEnd.ts";
import { figure } from "../canvas/figure.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import type { CardOptions } from "./cardOptions.ts";
import { sawDanger } from "./sawDanger.ts";

/** What to do for a broken hip, in order: its foot lies on the wing's ridge and against the valley. */
export function brokenHipSteps(unit: Unit, piece: Piece, { length, words = WORDS }: CardOptions): string[] {
  const { card, mainSide, endSide } = words;
  const { wings: said } = card;
  const hip = piece.stands[0] as Hip;
  const { near, far, tail, start, head, slope } = hip;
  const reach = (across: number) => alongHip(hip, endReach(head, across));
  const [mainEnd, farEnd] = [reach(-near.face), reach(far.face)];
  const [mainBack, endBack] = [length(hip.farthest - mainEnd), length(hip.farthest - farEnd)];
  const [mainTilt, endTilt] = piece.head.tilts.map(angleText);
  const cheeks =
    endTilt === undefined
      ? card.cheekOne(mainEnd > farEnd ? mainSide : endSide, mainTilt ?? angleText(0))
      : mainTilt === endTilt && mainBack === endBack
        ? card.cheeks(mainTilt!, mainBack)
        : card.cheeksTwo(mainTilt!, mainBack, endTilt, endBack);
  const at = (across: number): string => {
    const up = alongHip(hip, -endReach(tail, across) - start);
    return up < 0 ? said.below(length(-up)) : said.above(length(up));
  };
  const [main, end] = [at(-near.face), at(far.face)];
  const [one, other] = piece.foot.tilts.map(angleText);
  return [
    `${said.valleyHead(figure(near.pitch * 12), figure(12 / near.sin), figure(slope * 12))} ${cheeks} ${card.mainFace}`,
    said.hookBroken(length(piece.longPoint)),
    other === undefined
      ? said.brokenFootOne({ main, end, tilt: one ?? angleText(0) })
      : said.brokenFoot({ main, end, ...footTilts(hip) }),
    ...[sawDanger([...piece.head.tilts, ...piece.foot.tilts], piece.section.thickness, unit, words)].filter(
      (danger) => danger !== "",
    ),
    said.brokenDanger,
  ];
}

/** The tilts of its two cheeks by the face from which each is sawn. */
function footTilts({ near, far, tail }: Hip) {
  const tilt = (across: number) => angleText(tiltOf(cutAt(tail, across)));
  return { mainTilt: tilt(-near.face), endTilt: tilt(far.face) };
}

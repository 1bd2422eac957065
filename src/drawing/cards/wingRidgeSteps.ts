import type { Unit } from "../../measure/unit.ts";
import type { Bearer } from "../../roof/frame/bearers.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { endReach } from "../../roof/members/plumbEnd.ts";
import { angleText } from "../canvas/shown.ts";
import { WORDS } from "../canvas/words.ts";
import type { CardOptions } from "./cardOptions.ts";
import { dangerAfter } from "./sawDanger.ts";

/** How the ends of a ridge are cut: both square, or of a lower wing's the inner one to a point between its valleys. */
export function wingRidgeSteps(unit: Unit, piece: Piece, { length, words = WORDS }: CardOptions): string[] {
  const { card } = words;
  const { head, near, headLean } = piece.stands[0] as Bearer;
  const [tilt] = piece.head.tilts;
  if (headLean > 0)
    return [
      card.wings.ridgeLaid(length(piece.longPoint), length(piece.longPoint - headLean), angleText(piece.headCut)),
      card.wings.ridgeSheathing,
    ];
  if (tilt === undefined) return [card.ridge(length(piece.longPoint))];
  const back = endReach(head, 0) - endReach(head, near.face);
  const danger = dangerAfter([tilt], piece.section.thickness, unit, words);
  const point = card.wings.ridgePoint(length(piece.longPoint), length(back), angleText(tilt));
  return [`${point}${danger}`, card.wings.ridgeValleys];
}

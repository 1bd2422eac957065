import { main } from "./cases.ts";
import type { WingedPlan } from "./plan.ts";

/** A roof counted by hand: pieces by the word for the member, left, right and without a hand. */
export interface HandCount {
  readonly plan: WingedPlan;
  readonly counts: Readonly<Record<string, readonly [left: number, right: number, plain: number]>>;
  readonly total: number;
}

/**
 * A T: a village hall of 24' by 40' at 6 in 12, hipped both ways, with a gabled porch on its front: 12' wide, 8' out, 14' 6" from the left corner. Rafters
 * at 24 in, overhang 16, all boards 1 1/2 in. In inches along the front from its left corner; the main ridge runs from 144 to 336.
 *
 *     jacks                  24 48 72 96 120
 *     king                   144
 *     common                 168                      6 from the inner corner at 174: less than 16 + 1.06 + 0.75, so the valley cuts its tail
 *     over the porch         192 216 240 264 288 312  between the inner corners at 174 and 318
 *     king                   336                      18 past the inner corner: its tail is whole, 17.81 would do
 *     jacks                  360 384 408 432 456
 *
 * The porch's ridge meets the roof at 246, 72 in from the plate. The right valley's head is at 318 - 143 1/4 = 174 3/4, 30 3/4 from the end of the
 * ridge; the left one's at 317 1/4, 18 3/4 from it: the right one supports.
 * Each of 192, 216, 240 crosses the left valley, then the long one: a valley cripple below it, a valley jack above it. 264, 288, 312 cross the long one
 * only: valley jacks. So 3 cripples, on the left valley's left; 6 valley jacks, on the right valley's right.
 * Front: 10 jacks, 2 kings, 1 common, 3 cripples, 6 valley jacks. Back: 10 jacks, 2 kings, 7 commons (168 to 312). An end: king, 10 jacks.
 * A side of the porch from its gable: the pair at 3/4, then 24 48 72; 96 is the inner corner, a valley jack over it; 120 and 144 stand on the valley;
 * 168 is the meeting point, where nothing is left. 4 commons, 3 valley jacks, those of the left side on the left valley's right.
 *
 * Commons 1 + 7 + 8 = 16, one of them handed by its tail. Kings 2 + 2 + 2. Jacks 10 + 10 + 20, half of each hand. 12 valley jacks: 3 + 6 right, 3 left.
 * Ridges 2, hips 4, valleys 2: 16 + 6 + 40 + 3 + 12 + 8 = 85.
 */
const hall: HandCount = {
  plan: { ...main, wings: [{ wall: "front", from: 174, out: 96, span: 144, end: "gable" }] },
  counts: {
    ridge: [0, 0, 2],
    hip: [0, 0, 4],
    valley: [0, 0, 2],
    common: [1, 0, 15],
    "king common": [0, 0, 6],
    jack: [20, 20, 0],
    "valley jack": [3, 9, 0],
    "valley cripple": [3, 0, 0],
  },
  total: 85,
};

/**
 * An L: a farmhouse of 24' by 40' at 6 in 12, hipped both ways, its front wing flush with the left end: 12' wide, 12' out, hipped. Rafters at 24 in.
 * The wing's ridge meets the roof at 72, 72 in from the front plate. The inner corner is at 144, just under the apex. The broken hip runs from the
 * meeting point up to the apex at 144, 144.
 *
 *     front    24 48 72     the wing's ridge and its outer side: no main roof there
 *              96 120       from the valley up to the broken hip: 2 hip-valley cripples, on the right valley's right
 *              144          the king's place, on the inner corner: a king valley jack over the corner, right
 *              168 ... 312  7 commons, the first 24 from the corner: whole tail
 *              336          king, then 5 jacks
 *     back     2 kings, 7 commons, 10 jacks            right end   king, 10 jacks
 *     left     one plane with the wing's outer side, 288 + 144 long. From the wing's outer corner: jacks 24 48, king 72, commons 96 120 144 168 192 216; 216 is
 *              the meeting point. On from there the end's own: 96 and 120 from the missing corner meet the broken hip, king at 144, 168 ... 264 the back hip:
 *              6 commons, 2 kings, 2 + 2 + 5 jacks
 *     wing     right side from the outer corner: jacks 24 48, king 72, commons 96 120; 144 is the inner corner, a valley jack over it; 168 192 stand on the
 *              valley; 216 is the meeting point. 2 jacks, king, 2 commons, 3 valley jacks, on the right valley's left
 *              end, 144 wide: king at 72, jacks 24 48 and 96 120
 *
 * Commons 7 + 7 + 6 + 2 = 22. Kings 1 + 2 + 1 + 2 + 1 + 1 = 8. Jacks 5 + 10 + 10 + 9 + 2 + 4 = 40: at every hip as many on its left as on its right, but the
 * broken one has 2 on its left only, and the front right, back and wing hips 5 + 5, 5 + 5, 5 + 5, 2 + 2, 2 + 2: 19 + 2 = 21 left, 19 right.
 * Ridges 2, hips 5, broken hip 1, valley 1: 22 + 8 + 1 + 40 + 2 + 3 + 9 = 85.
 */
const farmhouse: HandCount = {
  plan: { ...main, wings: [{ wall: "front", from: "flush left", out: 144, span: 144, end: "hip" }] },
  counts: {
    ridge: [0, 0, 2],
    hip: [0, 0, 5],
    "broken hip": [0, 0, 1],
    valley: [0, 0, 1],
    common: [0, 0, 22],
    "king common": [0, 0, 8],
    jack: [21, 19, 0],
    "valley jack": [3, 0, 0],
    "king valley jack": [0, 1, 0],
    "hip-valley cripple": [0, 2, 0],
  },
  total: 85,
};

export const handCounts: Readonly<Record<string, HandCount>> = { "a T": hall, "an L": farmhouse };

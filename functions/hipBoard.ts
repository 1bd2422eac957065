import { Failure, type Result } from "../src/measure/result.ts";
import type { MemberProblem } from "../src/roof/members/memberProblem.ts";
import { length } from "../src/registry/parameters.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { plumbDepthOf, shortestBoard } from "../src/roof/members/commonRafter.ts";
import { hipMember } from "../src/roof/members/hipMember.ts";
import type { RoofSpec } from "../src/roof/frame/roofSpec.ts";
import { atCorner, otherSide, type CornerGiven } from "./arguments/corners.ts";
import { heel, hipThickness, run, sidePitch } from "./hip.ts";
import { refused } from "./arguments/refused.ts";

const family = "hip";
const depth = length("depth", "Depth of the hip, square to its slope.", { example: "7.25" });
const overhang = length("overhang", "Overhang of this side's commons, level; the fascias meet level. 0 for none.", {
  zero: true,
  example: "16",
});

interface HipGiven extends CornerGiven {
  readonly run: number;
  readonly hipThickness: number;
  readonly depth: number;
  readonly heel: number;
  readonly overhang: number;
}

/** The board of a dropped hip: from its tail, or its seat's corner, to the farthest point of its head. */
function boardOf(given: HipGiven, hipHead: RoofSpec["hipHead"], meets: number): Result<number, MemberProblem> {
  const { run, hipThickness, depth, heel, overhang } = given;
  const section = (thickness: number) => ({ name: "", thickness, depth });
  return atCorner(given, (at): Result<number, MemberProblem> => {
    const parts = { hip: section(hipThickness), rafter: section(meets), ridge: section(meets) };
    const member = hipMember(at, { ...parts, hipHead, hipTop: "dropped" }, run);
    if (member instanceof Failure) return member;
    const height = heel - member.drop;
    if (!(height > 0)) return new Failure({ kind: "drop takes the heel", least: member.drop });
    const plumbDepth = plumbDepthOf(at.slope, depth);
    if (!(height < plumbDepth))
      return new Failure({ kind: "hip too shallow for the plate", least: (height * depth) / plumbDepth });
    const shape = { pitch: at.slope, run: 0, overhang: overhang / at.near.sin, depth, heel: height };
    return member.farthest + shortestBoard(shape);
  });
}

export const hipKingBoard = worksheetFunction({
  name: "HIPKINGBOARD",
  family,
  summary: "Shortest straight board that holds a dropped hip whose head stands between king commons.",
  parameters: [
    sidePitch,
    run,
    hipThickness,
    length("commonThickness", "Thickness of the king commons.", { example: "1.5" }),
    depth,
    heel,
    overhang,
    ...otherSide,
  ],
  result: "value",
  returns:
    "the length of the board, in the unit of run, to the farthest point of the head: at two pitches that is not on its center line.",
  examples: [
    {
      cells: [6, 144, 1.5, 1.5, 7.25, 4.4, 16],
      result: 241.4383,
      source:
        "Radford's Cyclopedia of Construction, vol. 3: 18 in of hip per foot, rise 6; NAVEDTRA 14044, ch. 2: half the 45-degree thickness of the common off: (144 - 0.75 + 16) x 18 / 12 + 7.25 x 6 / 16.97 (6 over 12 root 2)",
    },
    {
      cells: [9, 144, 1.5, 1.5, 9.25, 7, 16, 12],
      result: 237.5636,
      source:
        "3-4-5 triangles in plan and a hip of 7.2 in 12: (180 - 0.75 x (4/5 + 3/5) + 20) x root 1.36 + 9.25 x 0.6",
    },
  ],
  refuses: refused("no hip", "head past the corner", "drop takes the heel", "hip too shallow for the plate"),
  compute: (given) => boardOf(given, "king commons", given.commonThickness),
});

export const hipRidgeBoard = worksheetFunction({
  name: "HIPRIDGEBOARD",
  family,
  summary: "Shortest straight board that holds a dropped hip whose head stands on the ridge's face.",
  parameters: [
    sidePitch,
    run,
    hipThickness,
    length("ridgeThickness", "Thickness of the ridge, parallel to this side's plate; 0 for none.", {
      zero: true,
      example: "1.5",
    }),
    depth,
    heel,
    overhang,
    ...otherSide,
  ],
  result: "value",
  returns: "the length of the board, in the unit of run, to the long point of the head.",
  examples: [
    {
      cells: [9, 144, 1.5, 1.5, 9.25, 7, 16, 12],
      result: 238.3508,
      source:
        "3-4-5 triangles in plan and a hip of 7.2 in 12: ((144 - 0.75 + 0.75 x 3/5 + 16) x 5/4) x root 1.36 + 9.25 x 0.6",
    },
    { cells: [6, 144, 1.5, 1.5, 7.25, 4.4, 16], result: 242.2338 },
  ],
  refuses: refused("no hip", "ridge fills the run", "drop takes the heel", "hip too shallow for the plate"),
  compute: (given) => boardOf(given, "ridge", given.ridgeThickness),
});

export const hipBoards = [hipKingBoard, hipRidgeBoard];

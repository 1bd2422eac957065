import { describe, expect, it } from "vitest";
import { jointsIn, ridgeJoints } from "../../../src/roof/members/ridgeJoints.ts";

const at = (length: number, cost = length) => ({ length, cost });

// Joining a ridge at rafters, in as few parts as can be: common practice, no source. Worked by hand.
describe("ridgeJoints", () => {
  it.each<[string, number, number[], ReturnType<typeof at>[], number[] | null]>([
    ["one board holds the ridge: no joint", 240, [96, 120], [at(240)], []],
    ["its last bit does not refuse it", 240 + 1e-8, [96], [at(240)], []],
    ["a little more does", 240.001, [96], [at(240)], [96]],
    ["as few parts as can be, whatever they cost", 400, [100, 200, 300], [at(200, 900), at(100, 1)], [200]],
    ["of as many parts the cheapest", 400, [120, 200, 280], [at(280, 500), at(200, 190), at(120, 100)], [200]],
    ["of those that cost the same the farthest from the first end", 400, [160, 240], [at(240, 9)], [240]],
    ["rafters in any order, those off the ridge left out", 432, [500, 336, -4, 216, 96, 0, 432], [at(240)], [216]],
    ["three parts", 600, [120, 240, 360, 480], [at(240)], [240, 480]],
    ["no board reaches from one place to the next", 432, [96], [at(240)], null],
    ["no rafter, and no board long enough", 432, [], [at(240)], null],
    ["no board", 432, [216], [], null],
  ])("%s", (_, length, rafters, boards, joints) => {
    expect(ridgeJoints(length, rafters, boards)).toEqual(joints);
  });
});

describe("jointsIn", () => {
  it.each<[string, number, number[], ReturnType<typeof at>[], number, number[]]>([
    ["a board just as long is taken untrimmed", 240, [96], [at(240)], 0.5, []],
    ["to its last bit", 240 + 1e-8, [96], [at(192), at(240)], 0.5, []],
    ["a little shorter must be trimmed, and does not do", 239.9, [96, 120], [at(240), at(200)], 0.5, [120]],
    ["trimmed, a board does for what is shorter by the trim", 239.5, [96], [at(240)], 0.5, []],
    ["a trimmed board does not reach a joint that a whole one would", 399, [199.8], [at(200)], 0.5, []],
    ["so long as the trimmed board reaches", 398, [199, 210], [at(200)], 0.5, [199]],
    ["nowhere where no joint will do", 600, [96], [at(240)], 0.5, []],
  ])("%s", (_, length, places, boards, trim, joints) => {
    expect(jointsIn(length, places, boards, trim)).toEqual(joints);
  });
});

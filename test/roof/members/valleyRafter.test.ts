import { describe, expect, it } from "vitest";
import { alongSlope } from "../../../src/geometry/alongSlope.ts";
import { slopeAngle } from "../../../src/geometry/angle.ts";
import { degrees } from "../../../src/measure/degrees.ts";
import { Failure, type Result } from "../../../src/measure/result.ts";
import { corner, turned } from "../../../src/roof/members/corner.ts";
import { shortenedHead, supportingHead, valleyCrippleRuns } from "../../../src/roof/members/valleyRafter.ts";
import { number, refusal } from "../../functions/asked.ts";

function had<T>(value: Result<T>): T {
  if (value instanceof Failure) throw new Error(value.problem.kind);
  return value;
}

/** A roof worked out by hand and shown by solids in test/solids/wings/worked.test.ts: main 8, wing 6 in 12 and 18 feet wide, main span 25 feet, all 1 1/2. */
describe("the faces of a valley's head at 8 and 6 in 12", () => {
  const at = had(corner(8 / 12, 6 / 12, degrees(90)));
  const along = alongSlope(at.slope);
  const long = had(supportingHead(at, 150, 1.5));
  const short = had(shortenedHead(at, 81, 1.5));
  it.each([
    ["supporting, center", long.at * along, 267.9119],
    ["supporting, main face", (long.at + 0.75 * long.per) * along, 266.8349],
    ["supporting, wing face", (long.at - 0.75 * long.per) * along, 268.989],
    ["supporting, tilt", slopeAngle(Math.abs(long.per)), 53.1301],
    ["shortened, center", short.at * along, 144.558],
    ["shortened, main face", (short.at + 0.75 * short.per) * along, 144.3224],
    ["shortened, wing face", (short.at - 0.75 * short.per) * along, 144.7936],
    ["shortened, tilt", slopeAngle(Math.abs(short.per)), 16.2602],
  ])("%s", (_, figure, worked) => expect(figure).toBeCloseTo(worked, 4));

  it("a shortened valley is as long worked from the wing's side, over half its span", () => {
    expect(had(shortenedHead(turned(at), 108, 1.5)).at).toBeCloseTo(short.at, 10);
  });
});

describe("what is refused", () => {
  it.each([
    ["VALLEYTORIDGE", (run: number) => [6, run, 1.5]],
    ["VALLEYTOVALLEY", (run: number) => [6, run, 1.5, 9]],
    ["VALLEYCRIPPLE", (distance: number) => [6, distance, 1.5, 1.5, 9]],
  ] as const)("%s names the least that works", (name, cells) => {
    const named = Number(/more than ([\d.]*\d)/.exec(refusal(name, ...cells(0.3)))![1]);
    expect(number(name, ...cells(named + 1e-3))).toBeGreaterThan(0);
    expect(refusal(name, ...cells(named - 2e-4))).toMatch(/^(run|distance): /);
  });

  it("a cripple of which only the long side is left", () => {
    const at = had(corner(0.5, 0.5, degrees(90)));
    expect(valleyCrippleRuns(at.near, 3.6, 1.5, 1.5)).toMatchObject({ problem: { kind: "valley cripple vanishes" } });
  });
});

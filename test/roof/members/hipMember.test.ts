import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MemberProblem } from "../../../src/roof/members/memberProblem.ts";
import { Failure, type Result } from "../../../src/measure/result.ts";
import { degrees } from "../../../src/measure/degrees.ts";
import { corner } from "../../../src/roof/members/corner.ts";
import { hipMember, type HipMember } from "../../../src/roof/members/hipMember.ts";
import type { RoofSpec } from "../../../src/roof/frame/roofSpec.ts";
import { number, refusal } from "../../functions/asked.ts";
import { between, corners, cornerOf } from "../arbitraries.ts";
import { atY, cross, dot, falls, meet, space, type Plane, type Space, type Vec } from "../inSpace.ts";

interface Given {
  readonly one: number;
  readonly two: number;
  readonly angle: number;
  readonly run: number;
  readonly hip: number;
  readonly meets: number;
  readonly top: RoofSpec["hipTop"];
  readonly head: RoofSpec["hipHead"];
}

/** How far up the slope of the meeting line a point lies. */
const upSlope = ({ along, rise }: Space, [x, y, z]: Vec): number =>
  (x * along[0] + y * along[1] + z * rise) / Math.hypot(1, rise);

/** The plane through the meeting line's direction and square across it, moved down by a plumb drop: a square top. */
const squareTop = (at: Space, drop: number): Plane => ({
  normal: [-at.rise * at.along[0], -at.rise * at.along[1], 1],
  offset: -drop,
});

/** Where the head's planes stand: the near faces of both king commons, or the ridge's face; the hip is on the corner's side of each. */
function headPlanes({ angle, run, meets, head }: Given, apex: Vec): Plane[] {
  if (head === "ridge") return [atY(run - meets / 2)];
  const turn = (angle * Math.PI) / 180;
  return [
    [1, 0],
    [Math.cos(turn), Math.sin(turn)],
  ].map(([x, y]): Plane => ({ normal: [x!, y!, 0], offset: x! * apex[0] + y! * apex[1] - meets / 2 }));
}

/**
 * Every corner of the head's upper end, found as a point of three planes: top, and any two of the hip's faces and the planes it meets.
 *
 * Corners that another plane has cut away are left out; what is left is the wood.
 */
function headCorners(given: Given, at: Space, nearFace: number, farFace: number, drop: number): Vec[] {
  const apex = meet(at.near, at.far, atY(given.run));
  const cheeks = headPlanes(given, apex);
  const faces = [at.face(nearFace), at.face(-farFace)];
  const middle = at.face(0);
  const tops = given.top === "backed" ? [at.near, at.far] : [squareTop(at, drop)];
  const upright = given.top === "backed" ? [...faces, middle] : faces;
  const pairs = cheeks.flatMap((cheek, i) => [
    ...upright.map((face) => [cheek, face] as const),
    ...cheeks.slice(i + 1).map((other) => [cheek, other] as const),
  ]);
  const slack = 1e-7;
  return tops
    .flatMap((top) => pairs.map(([a, b]) => meet(top, a, b)))
    .filter(
      (point) =>
        cheeks.every(({ normal, offset }) => dot(normal, point) <= offset + slack) &&
        dot(faces[0]!.normal, point) <= nearFace + slack &&
        dot(faces[1]!.normal, point) >= -farFace - slack &&
        (given.top !== "backed" ||
          [at.near, at.far].every(({ normal, offset }) => dot(normal, point) <= offset + slack)),
    );
}

const section = (thickness: number) => ({ name: "", thickness, depth: 7.25 });
const member = ({ one, two, angle, run, hip, meets, top, head }: Given): Result<HipMember, MemberProblem> =>
  hipMember(
    cornerOf({ one, two, angle }),
    { hip: section(hip), rafter: section(meets), ridge: section(meets), hipTop: top, hipHead: head },
    run,
  );

const given: fc.Arbitrary<Given> = fc
  .record({
    at: corners,
    run: between(80, 300),
    hip: between(0.75, 3.5),
    meets: between(0.75, 3.5),
    top: fc.constantFrom("dropped" as const, "backed" as const, "shifted" as const),
    head: fc.constantFrom("king commons" as const, "ridge" as const),
  })
  .map(({ at, ...rest }) => ({ ...at, ...rest }));

describe("hipMember", () => {
  it("reaches as far as the farthest corner of its head", () => {
    fc.assert(
      fc.property(given, (one) => {
        const hip = member(one);
        if (hip instanceof Failure) return;
        const at = space(one.one, one.two, one.angle);
        const seen = headCorners(one, at, hip.near.face, hip.far.face, hip.drop).map((point) => upSlope(at, point));
        expect(seen.length).toBeGreaterThan(1);
        // Lengths along a dropped top start at the corner's plumb line on that top.
        const start = one.top === "backed" ? 0 : upSlope(at, [0, 0, -hip.drop]);
        expect(hip.farthest).toBeCloseTo(Math.max(...seen) - start, 5);
      }),
      { seed: 1, numRuns: 400 },
    );
  });

  it("drops until its top touches the planes and stands above neither", () => {
    fc.assert(
      fc.property(given, (one) => {
        const hip = member(one);
        if (hip instanceof Failure) return;
        const under = falls(space(one.one, one.two, one.angle), 2);
        const [near, far] = [under.near * hip.near.face, under.far * hip.far.face];
        expect([hip.near.fall, hip.far.fall]).toEqual([expect.closeTo(near, 8), expect.closeTo(far, 8)]);
        if (one.top === "backed") expect([hip.drop, hip.near.proud, hip.far.proud]).toEqual([0, 0, 0]);
        else expect(hip.drop).toBeCloseTo(Math.max(near, far), 8);
        if (one.top === "shifted") expect(near).toBeCloseTo(far, 8);
        if (one.top === "dropped")
          expect([hip.near.proud, hip.far.proud]).toEqual([
            expect.closeTo(Math.max(0, far - near), 8),
            expect.closeTo(Math.max(0, near - far), 8),
          ]);
      }),
      { seed: 2 },
    );
  });

  it("has two cheeks between king commons, but one where the edge between them would lie outside its thickness", () => {
    const tilts = (one: number, two: number, meets: number) =>
      (member({ one, two, angle: 90, run: 144, hip: 1.5, meets, top: "dropped", head: "king commons" }) as HipMember)
        .tilts;
    expect(tilts(6, 6, 1.5)).toEqual([45, 45].map((tilt) => expect.closeTo(tilt, 10)));
    expect(tilts(9, 12, 1.5)).toEqual([53.1301, 36.8699].map((tilt) => expect.closeTo(tilt, 4)));
    expect(tilts(6, 15, 3)).toHaveLength(1);
    expect(tilts(15, 6, 3)).toEqual([expect.closeTo(tilts(6, 15, 3)[0]!, 10)]);
  });

  // A corner of equal pitches: the common's half thickness square to its plate is the least run.
  it("is refused where its head would lie past the corner, with the least run", () => {
    expect(
      member({ one: 6, two: 6, angle: 90, run: 0.7, hip: 1.5, meets: 1.5, top: "dropped", head: "king commons" }),
    ).toEqual(new Failure({ kind: "head past the corner", least: expect.closeTo(0.75, 9) }));
    expect(corner(0.5, 0.5, degrees(90))).not.toBeInstanceOf(Failure);
  });
});

describe("the hip's shortest board", () => {
  const depth = 9.25;
  const heel = 5;
  const board = between(0, 1);

  it.each([
    ["HIPKINGBOARD", "king commons"],
    ["HIPRIDGEBOARD", "ridge"],
  ] as const)("%s holds head and tail, from corners found as points of planes", (name, head) => {
    fc.assert(
      fc.property(given, board, between(2, 30), (drawn, none, reach) => {
        const one: Given = { ...drawn, top: "dropped", head };
        const overhang = none < 0.3 ? 0 : reach;
        const hip = member(one);
        const at = space(one.one, one.two, one.angle);
        if (
          hip instanceof Failure ||
          heel - hip.drop <= 0.01 ||
          heel - hip.drop >= depth * Math.hypot(1, at.rise) - 0.01
        )
          return;
        const high = Math.max(
          ...headCorners(one, at, one.hip / 2, one.hip / 2, hip.drop).map((point) => upSlope(at, point)),
        );
        // The tail's tip is under the corner of the two fascias, level with each other: plumb under the top there by the hip's plumb depth.
        const out = { normal: [0, 1, 0] as const, offset: -overhang };
        const tip = meet(squareTop(at, hip.drop), at.face(0), out);
        const low =
          overhang > 0
            ? upSlope(at, [tip[0], tip[1], tip[2] - depth * Math.hypot(1, at.rise)])
            : upSlope(at, [0, 0, -heel]);
        expect(
          number(name, `${one.one}/12`, one.run, one.hip, one.meets, depth, heel, overhang, `${one.two}/12`, one.angle),
        ).toBeCloseTo(high - low, 5);
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it.each(["HIPKINGBOARD", "HIPRIDGEBOARD"])(
    "%s refuses a heel under the drop and a hip that does not reach the plate, with the limit",
    (name) => {
      const ask = (deep: number, height: number) => [12, 144, 1.5, 1.5, deep, height, 16] as const;
      const least = Number(/^heel: .*more than ([\d.]+)\./.exec(refusal(name, ...ask(7.25, 0.5)))![1]);
      expect(number(name, ...ask(7.25, least + 1e-6))).toBeGreaterThan(144);
      const deeper = Number(/^depth: .*more than ([\d.]+)\./.exec(refusal(name, ...ask(3, 6)))![1]);
      expect(number(name, ...ask(deeper + 1e-6, 6))).toBeGreaterThan(144);
      expect(refusal(name, ...ask(deeper - 2e-4, 6))).toMatch(/^depth: /);
    },
  );

  it.each(["HIPKINGBOARD", "HIPRIDGEBOARD"])("%s refuses a run that leaves no room for the head", (name) =>
    expect(refusal(name, 6, 0.5, 1.5, 1.5, 7.25, 4.4, 0)).toMatch(/^run: .*Type a run of more than 0\.75/),
  );
});

it("the planes of the check are what they say", () => {
  const at = space(6, 9, 110);
  const line = cross(at.near.normal, at.far.normal);
  expect(dot(squareTop(at, 0).normal, line)).toBeCloseTo(0, 12);
  expect(upSlope(at, meet(at.near, at.far, atY(100)))).toBeCloseTo(Math.hypot(...meet(at.near, at.far, atY(100))), 9);
});

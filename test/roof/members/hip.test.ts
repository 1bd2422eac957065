import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  alongHip,
  backing,
  dropOn,
  hipDrop,
  hipMarkRun,
  hipRun,
  hipRunToKing,
  hipRunToRidge,
  shiftedHip,
} from "../../../src/roof/members/hip.ts";
import { turned } from "../../../src/roof/members/corner.ts";
import { number, refusal } from "../../functions/asked.ts";
import { between, cornerOf, corners } from "../arbitraries.ts";
import { atX, atY, falls, far, jackInSpace, meet, space } from "../inSpace.ts";

const thickness = between(0.5, 4);
const run = between(60, 300);

describe("a hip", () => {
  it("has one length from either side when the runs meet at one point", () => {
    fc.assert(
      fc.property(corners, run, (given, level) => {
        const at = cornerOf(given);
        // The apex is one height above both plates: the other side's run is this side's times the pitches.
        const other = (level * given.one) / given.two;
        expect(alongHip(turned(at), hipRun(turned(at), other))).toBeCloseTo(alongHip(at, hipRun(at, level)), 7);
        expect(number("HIPLEN", `${given.one}/12`, level, `${given.two}/12`, given.angle)).toBeCloseTo(
          number("HIPLEN", `${given.two}/12`, other, `${given.one}/12`, given.angle),
          7,
        );
      }),
      { seed: 1 },
    );
  });

  it("is as long as from the corner to where both planes stand at the apex", () => {
    fc.assert(
      fc.property(corners, run, (given, level) => {
        const at = space(given.one, given.two, given.angle);
        const apex = meet(at.near, at.far, atY(level));
        expect(alongHip(cornerOf(given), hipRun(cornerOf(given), level))).toBeCloseTo(far(apex, [0, 0, 0]), 7);
      }),
      { seed: 2 },
    );
  });

  it("drops by how far the planes lie under the meeting line at its faces, the deeper side's", () => {
    fc.assert(
      fc.property(corners, thickness, (given, thick) => {
        const at = cornerOf(given);
        const under = falls(space(given.one, given.two, given.angle), thick);
        expect(dropOn(at.near, at.slope, thick / 2)).toBeCloseTo(under.near, 9);
        expect(dropOn(at.far, at.slope, thick / 2)).toBeCloseTo(under.far, 9);
        expect(hipDrop(at, thick)).toBeCloseTo(Math.max(under.near, under.far), 9);
      }),
      { seed: 3 },
    );
  });

  it("is backed by the angle between its square top and the plane, read across it", () => {
    fc.assert(
      fc.property(corners, (given) => {
        const at = space(given.one, given.two, given.angle);
        // Both normals are square to the meeting line, so the angle between them is the bevel's.
        const top = [-at.rise * at.along[0], -at.rise * at.along[1], 1] as const;
        const [n, m] = [at.near.normal, top];
        const cosine = (n[0] * m[0] + n[1] * m[1] + n[2] * m[2]) / (Math.hypot(...n) * Math.hypot(...m));
        expect(Math.cos(Math.atan(backing(cornerOf(given).near, cornerOf(given).slope)))).toBeCloseTo(cosine, 10);
      }),
      { seed: 4 },
    );
  });

  it("shifted, has both top corners in their planes, and as thick as it was", () => {
    fc.assert(
      fc.property(corners, thickness, (given, thick) => {
        const at = cornerOf(given);
        const { nearFace, farFace, drop } = shiftedHip(at, thick);
        expect(nearFace + farFace).toBeCloseTo(thick, 10);
        expect(dropOn(at.near, at.slope, nearFace)).toBeCloseTo(drop, 10);
        expect(dropOn(at.far, at.slope, farFace)).toBeCloseTo(drop, 10);
      }),
      { seed: 5 },
    );
  });

  it("is marked where a jack's center meets its near face, squared across", () => {
    fc.assert(
      fc.property(corners, between(30, 200), thickness, (given, offset, thick) => {
        const at = space(given.one, given.two, given.angle);
        const point = meet(atX(offset), at.near, at.face(thick / 2));
        expect(hipMarkRun(cornerOf(given).near, offset, thick / 2)).toBeCloseTo(
          point[0] * at.along[0] + point[1] * at.along[1],
          7,
        );
      }),
      { seed: 6 },
    );
  });

  // Careless: the mark measured on the center line, T tan f / 2 further up.
  it("is not marked where the jack's center line meets its own", () =>
    expect(number("HIPMARK", 6, 48, 3)).toBeLessThan(number("HIPLEN", 6, 48) - 1));

  it("has its head where its center line meets the nearer king common's face", () => {
    fc.assert(
      fc.property(corners, run, thickness, (given, level, thick) => {
        const at = space(given.one, given.two, given.angle);
        const apex = meet(at.near, at.far, atY(level));
        const turn = (given.angle * Math.PI) / 180;
        // King commons run square to their plates through the apex, their near faces half a thickness nearer the corner.
        const kings = [
          [1, 0],
          [Math.cos(turn), Math.sin(turn)],
        ].map(([x, y]) => ({ normal: [x!, y!, 0] as const, offset: x! * apex[0] + y! * apex[1] - thick / 2 }));
        const heads = kings.map((king) => far(meet(at.near, at.far, king), [0, 0, 0]));
        const said = hipRunToKing(cornerOf(given), level, thick);
        if (typeof said === "number") expect(alongHip(cornerOf(given), said)).toBeCloseTo(Math.min(...heads), 6);
      }),
      { seed: 7 },
    );
  });

  it("has its head on the ridge's face half a ridge short of the apex, level", () => {
    fc.assert(
      fc.property(corners, run, thickness, (given, level, ridge) => {
        const at = space(given.one, given.two, given.angle);
        expect(alongHip(cornerOf(given), hipRunToRidge(cornerOf(given), level, ridge) as number)).toBeCloseTo(
          far(meet(at.near, at.far, atY(level - ridge / 2)), [0, 0, 0]),
          6,
        );
      }),
      { seed: 8 },
    );
  });

  it("carries its jacks: at its mark a jack is as long as the hip says it is", () => {
    // The hip's rise to the mark is the jack's, less what the plane falls to the near face.
    const at = space(6, 9);
    const wood = jackInSpace(at, 60, 1.5, 1e-9);
    const mark = number("HIPMARK", 6, 60, 1.5, 9) / Math.hypot(1, at.rise);
    expect(mark * at.rise - falls(at, 1.5).near).toBeCloseTo(wood.longPoint[2], 8);
  });

  it("scales with all its lengths", () => {
    fc.assert(
      fc.property(corners, between(0.5, 25), ({ one, two, angle }, k) => {
        const ask = (name: string, ...lengths: number[]) => number(name, `${one}/12`, ...lengths, `${two}/12`, angle);
        for (const [name, lengths] of [
          ["HIPLEN", [144]],
          ["HIPRUN", [144]],
          ["HIPTORIDGE", [144, 1.5]],
          ["HIPDROP", [1.5]],
          ["HIPMARK", [60, 1.5]],
        ] as const)
          expect(ask(name, ...lengths.map((length) => length * k)) / k).toBeCloseTo(ask(name, ...lengths), 6);
      }),
      { seed: 9 },
    );
  });
});

describe("a hip that is none", () => {
  it("no room for its head between king commons, with the least run", () => {
    const message = refusal("HIPTOKING", 6, 0.5, 1.5);
    expect(message).toMatch(/^run: the king commons leave no room for the hip\. Type a run of more than 0\.75\./);
    expect(number("HIPTOKING", 6, 0.75 + 1e-6, 1.5)).toBeGreaterThan(0);
  });
  it("no room before the ridge's face", () => {
    expect(refusal("HIPTORIDGE", 6, 0.75, 1.5)).toMatch(/^run: .*more than 0\.75/);
    expect(number("HIPTORIDGE", 6, 0.75 + 1e-6, 1.5)).toBeGreaterThan(0);
  });
  it("dropped below the plate, with the least heel", () => {
    const message = refusal("HIPHEEL", 12, 0.5, 1.5);
    const named = Number(/more than ([\d.]+)\./.exec(message)![1]);
    expect(message).toMatch(/^heel: /);
    expect(number("HIPHEEL", 12, named, 1.5)).toBeGreaterThan(0);
    expect(refusal("HIPHEEL", 12, named - 2e-4, 1.5)).toMatch(/^heel: /);
  });
});

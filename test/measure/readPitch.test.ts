import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/measure/readPitch.ts";
import { Failure } from "../../src/measure/result.ts";
import { anyText } from "./anyText.ts";
import { refusesLongTexts } from "./refusesLongTexts.ts";

describe("readPitch", () => {
  it.each([
    ["6/12", 6 / 12],
    ["6:12", 6 / 12],
    ["6 in 12", 6 / 12],
    ["6in12", 6 / 12],
    ["6 / 12", 6 / 12],
    ["6 : 12", 6 / 12],
    ["7/12", 7 / 12],
    ["1/2", 1 / 2],
    ["0.5/12", 0.5 / 12],
    ["30/12", 30 / 12],
    ["6-1/2 in 12", 6.5 / 12],
    ["6 1/2 in 12", 6.5 / 12],
    ["6 1/2 / 12", 6.5 / 12],
    ["6 1/2/12", 6.5 / 12],
    ["6½:12", 6.5 / 12],
    ["6.5/12", 6.5 / 12],
    [`6" in 12"`, 6 / 12],
    [`6"/12"`, 6 / 12],
    [`6 " in 12 "`, 6 / 12],
    ["6 in 12 1/2", 6 / 12.5],
    ["50%", 0.5],
    ["50 %", 0.5],
    ["33.3 percent", 0.333],
    ["50 percent", 0.5],
    ["50 per cent", 0.5],
    ["200%", 2],
    ["6", 0.5],
    ["6.5", 6.5 / 12],
    ["6 1/2", 6.5 / 12],
    ["6½", 6.5 / 12],
    ["1", 1 / 12],
    ["24", 2],
    ["+6/12", 0.5],
    [" 6 IN 12 ", 0.5],
  ])("reads %s", (text, slope) => {
    expect(readPitch(text)).toBe(slope);
  });

  // Exact angles: tan 45 = 1, tan 60 = sqrt 3; 26.565 degrees is 6 in 12 to the last digit given.
  it.each([
    ["45 deg", 1],
    ["45°", 1],
    ["45 degrees", 1],
    ["45 degree", 1],
    ["45 deg.", 1],
    ["60º", Math.sqrt(3)],
    ["26.565051177°", 0.5],
    ["22½°", Math.SQRT2 - 1],
  ])("reads %s", (text, slope) => {
    expect(readPitch(text)).toBeCloseTo(slope, 10);
  });

  it.each([
    ["", "not a pitch"],
    ["in", "not a pitch"],
    ["/", "not a pitch"],
    ["6/", "not a pitch"],
    ["/12", "not a pitch"],
    ["6:12:1", "not a pitch"],
    ["6/12/26", "not a pitch"],
    ["6/12/2026", "not a pitch"],
    ["12/25/2026", "not a pitch"],
    ["5%0", "not a pitch"],
    ["6,5 or 7", "not a pitch"],
    ["6 12", "not a pitch"],
    ["6/0", "not a pitch"],
    ["0/0", "not a pitch"],
    ["6/-12", "not a pitch"],
    ["deg", "not a pitch"],
    ["%", "not a pitch"],
    ["steep", "not a pitch"],
    ["Infinity", "not a pitch"],
    ["24'", "not a pitch"],
    ["6 in", "not a pitch"],
    ["📐", "not a pitch"],
    ["0/12", "pitch not positive"],
    ["-6/12", "pitch not positive"],
    ["0%", "pitch not positive"],
    ["-5 deg", "pitch not positive"],
    ["0°", "pitch not positive"],
    ["26,57°", "decimal comma"],
    ["6,5/12", "decimal comma"],
  ])("refuses %j: %s", (text, tag) => {
    expect(readPitch(text)).toEqual(new Failure({ kind: tag }));
  });

  it.each(["85°", "89.9 deg", "90°", "135 deg", "1144%", "138/12", "12/1"])("refuses %s: too steep", (text) => {
    expect(readPitch(text)).toEqual(new Failure({ kind: "pitch too steep", most: 85 }));
  });

  it.each([["84.99°"], ["1143%"], ["137/12"]])("takes %s, just below 85 degrees", (text) => {
    expect(readPitch(text)).toBeLessThan(Math.tan((85 * Math.PI) / 180));
  });

  it("holds a lone number to the rule of bare numbers", () => {
    expect(readPitch("0.5")).toEqual(new Failure({ kind: "pitch below 1" }));
    expect(readPitch("-6")).toEqual(new Failure({ kind: "pitch below 1" }));
    expect(readPitch("30")).toEqual(new Failure({ kind: "pitch above 24" }));
    expect(readPitch("45292")).toEqual(new Failure({ kind: "pitch above 24" }));
  });

  it("reads every way of writing one pitch alike", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), fc.nat(15), (whole, sixteenths) => {
        const rise = sixteenths === 0 ? `${whole}` : `${whole} ${sixteenths}/16`;
        const slope = (whole + sixteenths / 16) / 12;
        for (const text of [`${rise}/12`, `${rise}:12`, `${rise} in 12`, `${rise.replace(" ", "-")} in 12`])
          expect(readPitch(text)).toBe(slope);
        const degrees = (Math.atan(slope) * 180) / Math.PI;
        expect(readPitch(`${degrees}°`)).toBeCloseTo(slope, 12);
      }),
      { seed: 1 },
    );
  });

  it("never throws, and gives a slope between level and 85 degrees or a reason", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const read = readPitch(text);
        expect(read instanceof Failure || (read > 0 && read < 11.4301)).toBe(true);
      }),
      { seed: 2, numRuns: 2_000 },
    );
  });

  refusesLongTexts(readPitch, "not a pitch");
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lengthText } from "../../src/measure/lengthText.ts";
import { readLength } from "../../src/measure/readLength.ts";
import { Failure } from "../../src/measure/result.ts";
import { anyText } from "./anyText.ts";
import { refusesLongTexts } from "./refusesLongTexts.ts";

// 12 in to the foot; 1,000 mm to the metre. The ways of writing are common practice, no source.
describe("readLength", () => {
  it.each([
    [`9' 4 5/8"`, 112.625],
    [`9'4-5/8"`, 112.625],
    [`9-4-5/8`, 112.625],
    [`9-4 5/8`, 112.625],
    [`9 ft 4 5/8 in`, 112.625],
    [`9 ' 4"`, 112],
    [`24-10/16`, 24.625],
    [`9ft4in`, 112],
    [`9 feet 4 inches`, 112],
    [`9 foot 4 inch`, 112],
    [`9 ft. 4 in.`, 112],
    [`9' - 4"`, 112],
    [`9'-4`, 112],
    [`24'`, 288],
    [`24' 6`, 294],
    [`24-6`, 294],
    [`24-6"`, 294],
    [`24 - 6`, 294],
    [`24–6`, 294],
    [`24.5'`, 294],
    [`24.1'`, 289.2],
    [`24 ft`, 288],
    [`24' 14"`, 302],
    [`112 5/8"`, 112.625],
    [`112 5/8`, 112.625],
    [`112.625"`, 112.625],
    [`112.625 in`, 112.625],
    [`7-5/8`, 7.625],
    [`7-5/8"`, 7.625],
    [`7 - 5 / 8`, 7.625],
    [`3/16`, 0.1875],
    [`10 1/2"`, 10.5],
    [`10''`, 10],
    [`6 in`, 6],
    [`48"`, 48],
    [`0"`, 0],
    [`0'`, 0],
    [`0' 0"`, 0],
    [`1/2'`, 6],
    [`1/3'`, 4],
    [`9′ 4 5⁄8″`, 112.625],
    [`9’ 4½”`, 112.5],
    [`7⅝`, 7.625],
    [`½`, 0.5],
    [`¾"`, 0.75],
    [`9'\u00a04\u2009"`, 112],
    [` 24' `, 288],
    [`24 FT`, 288],
    [`-1/4`, -0.25],
    [`−1/4"`, -0.25],
    [`- 1/4`, -0.25],
    [`+1/4`, 0.25],
    [`-9' 4"`, -112],
    [`-24-6`, -294],
  ])("reads %s in inches", (text, value) => {
    expect(readLength(text)).toEqual({ value, unit: "in" });
  });

  it.each([
    ["2.86 m", 2860],
    ["2.86m", 2860],
    ["1.005 m", 1005],
    ["2860 mm", 2860],
    ["2860mm", 2860],
    ["286 cm", 2860],
    ["28.6 cm", 286],
    [".5 m", 500],
    ["2. m", 2000],
    ["2860 MM", 2860],
    ["3 metres", 3000],
    ["3 meters", 3000],
    ["30 centimeters", 300],
    ["30 millimetres", 30],
    ["-6 mm", -6],
  ])("reads %s in millimetres", (text, value) => {
    expect(readLength(text)).toEqual({ value, unit: "mm" });
  });

  it.each([
    ["48", 48],
    ["48.5", 48.5],
    ["48.", 48],
    [".5", 0.5],
    ["1e3", 1000],
    ["2.5E-1", 0.25],
    ["-48", -48],
    ["0", 0],
    ["-0", 0],
    ["007", 7],
  ])("reads %s as a bare number", (text, value) => {
    expect(readLength(text)).toEqual({ value, unit: null });
  });

  it.each([
    ["", "not a length"],
    [" ", "not a length"],
    ["-", "not a length"],
    ["'", "not a length"],
    ['"', "not a length"],
    [`24'"`, "not a length"],
    ["abc", "not a length"],
    ["24 6", "not a length"],
    ["8 7 3/16", "not a length"],
    ["6 in 12", "not a length"],
    ["6:12", "not a length"],
    [`24" 6'`, "not a length"],
    ["24--6", "not a length"],
    ["--6", "not a length"],
    [`9' -- 4`, "not a length"],
    ["7.5 3/16", "not a length"],
    ["1.5/2", "not a length"],
    ["2 m 86 cm", "not a length"],
    ["1/2 m", "not a length"],
    ["0x10", "not a length"],
    ["1e999", "not a length"],
    ["Infinity", "not a length"],
    ["NaN", "not a length"],
    ["5²", "not a length"],
    ["1½/2", "not a length"],
    ["📐", "not a length"],
    ["46 yards", "not a length"],
    [`24', 6"`, "not a length"],
    ["a 1,5", "not a length"],
    ["2,62 m", "decimal comma"],
    ["48,5", "decimal comma"],
    ["1,000", "decimal comma"],
    [`24' 6,5"`, "decimal comma"],
    ["-1,5", "decimal comma"],
    ["3/0", "zero denominator"],
    [`9' 4 5/0"`, "zero denominator"],
    ["7-5/00", "zero denominator"],
    ["9 ft in", "not a length"],
    [`9'4'6"`, "not a length"],
    ["about 9-4", "not a length"],
    [`9' 4"5/8`, "not a length"],
    ["5/0 pieces", "not a length"],
    ["1,5 pieces", "not a length"],
  ])("refuses %j: %s", (text, tag) => {
    expect(readLength(text)).toEqual(new Failure({ kind: tag }));
  });

  it.each([
    [".25 m", 250],
    ["2 millimeters", 2],
    ["1 millimeter", 1],
    ["1 millimetre", 1],
    ["1 centimeter", 10],
    ["3 centimetres", 30],
    ["1 meter", 1000],
    ["2 metres", 2000],
  ])("reads %s as millimeters: %s", (text, value) => {
    expect(readLength(text)).toEqual({ value, unit: "mm" });
  });

  it("reads 64 characters and refuses 65", () => {
    expect(readLength("48".padStart(64, "0"))).toEqual({ value: 48, unit: null });
    expect(readLength("48".padStart(65, "0"))).toEqual(new Failure({ kind: "text too long" }));
  });

  it("reads feet, inches and a fraction however they are parted", () => {
    const dash = fc.constantFrom("-", " - ", "' ", "'", "'-", "′ ", " ft ", " feet ");
    const join = fc.constantFrom(" ", "-");
    const end = fc.constantFrom("", '"', " in", " inches", "″", "''");
    fc.assert(
      fc.property(
        fc.nat(200),
        fc.nat(30),
        fc.integer({ min: 1, max: 63 }),
        dash,
        join,
        end,
        (feet, inches, n, a, b, c) => {
          expect(readLength(`${feet}${a}${inches}${b}${n}/64${c}`)).toEqual({
            value: feet * 12 + inches + n / 64,
            unit: "in",
          });
        },
      ),
      { seed: 1 },
    );
  });

  it("reads every double back from its own text", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(readLength(String(value))).toEqual({ value: value + 0, unit: null });
      }),
      { seed: 2 },
    );
  });

  it("moves the decimal point exactly", () => {
    fc.assert(
      fc.property(fc.nat(100_000), (mm) => {
        expect(readLength(`${Math.floor(mm / 1000)}.${String(mm % 1000).padStart(3, "0")} m`)).toEqual({
          value: mm,
          unit: "mm",
        });
        expect(readLength(`${Math.floor(mm / 10)}.${mm % 10} cm`)).toEqual({ value: mm, unit: "mm" });
        expect(readLength(lengthText(mm, "mm"))).toEqual({ value: mm, unit: "mm" });
      }),
      { seed: 3 },
    );
  });

  it("never throws, and gives a finite length or a reason", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const read = readLength(text);
        expect(read instanceof Failure || Number.isFinite(read.value)).toBe(true);
      }),
      { seed: 4, numRuns: 2_000 },
    );
  });

  refusesLongTexts(readLength, "text too long");
});

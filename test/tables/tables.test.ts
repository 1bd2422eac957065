import { messageOf } from "../../functions/words/problemText.ts";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { call } from "../../src/registry/call.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import type { Answer } from "../../src/registry/call.ts";
import { armyEn0069 } from "./armyEn0069.ts";
import { buildersGuide } from "./buildersGuide.ts";
import { commonPractice } from "./commonPractice.ts";
import { framingSquare } from "./framingSquare.ts";
import { griffith } from "./griffith.ts";
import { hodgson } from "./hodgson.ts";
import { navedtra14044 } from "./navedtra14044.ts";
import type { Ask } from "./printed.ts";
import { radford } from "./radford.ts";

const tables = [navedtra14044, armyEn0069, buildersGuide, radford, griffith, hodgson, framingSquare, commonPractice];

function answer(name: string, ...cells: readonly unknown[]): Answer {
  const definition = functions.find((one) => one.name === name);
  if (definition === undefined) throw new Error(`There is no worksheet function ${name}.`);
  return call(definition, cells) as Answer;
}

const ask: Ask = (name, ...cells) => {
  const value = answer(name, ...cells);
  if (typeof value !== "number")
    throw new Error(
      `${name}: ${value instanceof Refusal ? messageOf(value) : value instanceof CellError ? value.error : "no number"}`,
    );
  return value;
};

/** A printed figure, and half of its last digit or of its fraction. */
function read(printed: string): { value: number; tolerance: number } {
  const [, whole = "0", decimals, over, under] = /^(\d+)(?:\.(\d+)| (\d+)\/(\d+))?$/.exec(printed) ?? [];
  if (under !== undefined)
    return { value: Number(whole) + Number(over) / Number(under), tolerance: 0.5 / Number(under) };
  return { value: Number(printed), tolerance: 0.5 * 10 ** -(decimals?.length ?? 0) };
}

describe.each(tables.map((table) => [table.source, table.rows] as const))("%s", (_, rows) => {
  it.each(rows.map((row) => [row.what, row] as const))("%s", (_what, { printed, value, within }) => {
    const { value: figure, tolerance } = read(printed);
    const answered = value(ask);
    expect(Math.abs(answered - figure), `${answered} where ${printed} is printed`).toBeLessThanOrEqual(
      within?.tolerance ?? tolerance,
    );
  });
});

describe("tables that spill", () => {
  // NAVEDTRA 14044, chapter 2: the ridge's line length is the building's length less twice the run of a common.
  it.each([
    [`24'`, `36'`, 144],
    [`30'`, `50'`, 240],
  ])("span %s, length %s: the ridge's line length is %s", (span, length, printed) => {
    const rows = answer("MEMBERS", [
      ["Span", span],
      ["Length", length],
      ["Pitch", 8],
    ]) as readonly (readonly unknown[])[];
    const ridge = rows.find((row) => row[1] === "ridge")!;
    expect(ridge[rows[0]!.indexOf("Line length")]).toBeCloseTo(printed, 9);
  });

  // Common practice, no source: mirror pairs, every length once left and once right at each of the four corners.
  it("jacks of a regular hip roof come in mirror pairs", () => {
    const [headings, ...jacks] = answer("JACKTABLE", [
      ["Span", `24'`],
      ["Length", `36'`],
      ["Pitch", 8],
    ]) as readonly (readonly unknown[])[];
    expect(jacks.length).toBeGreaterThan(3);
    for (const jack of jacks)
      expect([jack[headings!.indexOf("Left")], jack[headings!.indexOf("Right")]]).toEqual([4, 4]);
  });

  // Common practice, no source: a jack off by up to 1/4 in can often still be used.
  it.each([
    [53.25, 53, "agrees"],
    [53.3125, 53, `long by 5/16"`],
  ])("%s measured for %s: %s", (measured, computed, said) => {
    expect(answer("AGREE", measured, computed)).toBe(said);
  });
});

describe("the check itself", () => {
  it("takes its tolerance from the last printed digit", () => {
    expect(read("13.89")).toEqual({ value: 13.89, tolerance: 0.005 });
    expect(read("111 1/8")).toEqual({ value: 111.125, tolerance: 1 / 16 });
    expect(read("26")).toEqual({ value: 26, tolerance: 0.5 });
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Refusal } from "../../src/registry/refusal.ts";
import { pieces } from "../../src/roof/frame/pieces.ts";
import { changes } from "../../src/roof/tables/changes.ts";
import { sawSettings } from "../../src/roof/tables/sawSettings.ts";
import { anyFrame, framed } from "../roof/anySpec.ts";
import { asked, refusal, rows } from "./asked.ts";

const BLOCK = [
  ["Span", "16'"],
  ["Length", "24'"],
  ["Pitch", 6],
  ["Overhang", 16],
  ["Spares", 2],
];
const BOARDS = [[96], [144], [192], [240]];
const tableOf = async (name: string, ...cells: unknown[]) => (await asked(name, ...cells)) as unknown[][];

describe("PIECELIST", () => {
  it("gives the order that the roof itself gives, cuts shared alike", async () => {
    const whole = await tableOf("LUMBERORDER", BLOCK, BOARDS);
    const listed = await tableOf("LUMBERORDER", await tableOf("PIECELIST", BLOCK), BOARDS);
    const least = (table: unknown[][]) => table.at(-1)![3] as number;
    expect(least(listed)).toBeCloseTo(least(whole), 6);
    const bought = (table: unknown[][]) => table.slice(1, -1).map((row) => row.slice(0, 3));
    expect(bought(listed)).toEqual(bought(whole));
  });

  it("gives the order of a roof with wings too, whose feet on valleys share cuts", async () => {
    const winged = [
      ["", "Main roof", "Wing A"],
      ["Span", "24'", "24'"],
      ["Length", "40'"],
      ["Pitch", 6],
      ["Ends", "hip and hip", "gable"],
      ["Wall", "", "front"],
      ["From left corner", "", "8'"],
      ["Out from wall", "", "10'"],
    ];
    const boards = [[`8' to 24' by 2'`]];
    const list = await tableOf("PIECELIST", winged);
    const [whole, listed] = await Promise.all(
      [winged, list].map((source) => tableOf("LUMBERORDER", source, boards, 0.125, 0.5)),
    );
    expect(listed!.slice(1).map((row) => row.slice(0, 4))).toEqual(whole!.slice(1).map((row) => row.slice(0, 4)));
    // Between hip and valley that are parallel both ends of a cripple are: the saw tilts are of one size, the long points on two faces.
    const cripple = list.find((row) => row[1] === "HV1-A" && row[5] === "left")!;
    expect(cripple.slice(7)).toEqual([-45, "", 45]);
    const sticks = (await tableOf("STICKPLAN", winged, boards)).map((row) => String(row[3]));
    expect(sticks.some((text) => / \+ VJ/.test(text))).toBe(true);
    expect(sticks.some((text) => / \+ HV/.test(text))).toBe(true);
  });

  it("stacked, with its headings again, is one list of both roofs", async () => {
    const list = await tableOf("PIECELIST", BLOCK);
    const one = await tableOf("STICKPLAN", list, BOARDS);
    const two = await tableOf("STICKPLAN", [...list, ...list], BOARDS);
    const pieceCount = (table: unknown[][]) => table.slice(1).reduce((sum, row) => sum + String(row[3]).length, 0);
    expect(two.length).toBeGreaterThan(one.length);
    expect(pieceCount(two)).toBeGreaterThan(pieceCount(one));
  });

  it("says where long pieces may be joined, and the order joins them there", async () => {
    const long = [...BLOCK.filter(([label]) => label !== "Length"), ["Length", "60'"], ["Fascia", "1x6"]];
    const whole = await tableOf("LUMBERORDER", long, BOARDS);
    const listed = await tableOf("LUMBERORDER", await tableOf("PIECELIST", long), BOARDS, "", 0.5);
    const bought = (table: unknown[][]) => table.slice(1, -1).map((row) => row.slice(0, 3));
    expect(bought(listed)).toEqual(bought(whole));
    const notes = listed.map((row) => String(row[6])).join("; ");
    expect(notes).toContain("R longer than every board: in 3 parts, joined at ");
    expect(notes).toContain("F1 longer than every board: in 4 parts, joined at ");
    const parts = (await tableOf("STICKPLAN", await tableOf("PIECELIST", long), BOARDS)).map((row) => String(row[3]));
    for (const part of ["R 1 of 3", "R 2 of 3", "R 3 of 3", "F1 4 of 4"])
      expect(parts.some((text) => text.includes(part))).toBe(true);
  });

  it("leaves a long piece whole where it may not be joined", async () => {
    const list = (join: unknown) => [
      ["Piece", "Size", "Length", "Count", "Join"],
      ["beam", "2x8", 300, 1, join],
      ["stud", "2x4", 90, 1, ""],
    ];
    const notes = async (join: unknown) =>
      (await tableOf("LUMBERORDER", list(join), BOARDS)).map((row) => String(row[6]));
    expect((await notes("")).join()).toContain("none long enough: beam");
    expect((await notes(`1', 24'`)).join()).toContain("none long enough: beam");
    expect((await notes(`12' 6"`))[1]).toContain(`beam longer than every board: in 2 parts, joined at 12' 6"`);
    expect((await notes(150))[1]).toContain("joined at 150");
    expect(refusal("LUMBERORDER", list("half way"), BOARDS)).toContain(`row 2: Join: "half way"`);
  });

  it("names the job of any length on one line, cut off at 60 letters", () => {
    const job = (name: string) => rows("PIECELIST", [...BLOCK, ["Job name", name]])[0]!["Job"];
    expect(job("  Reading \n room ")).toBe("Reading room");
    expect(String(job("x".repeat(10_000)))).toBe(`${"x".repeat(59)}…`);
    expect(job("<b>&")).toBe("<b>&");
  });
});

describe("SAWSETTINGS", () => {
  it("has every head of every piece once for each of its tilts", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const all = pieces(frame);
        const settings = sawSettings(all);
        for (const { mark, head } of all) {
          const own = settings.filter((one) => one.pieces.head?.includes(mark)).map(({ tilt }) => tilt);
          const tilts = head.tilts.length === 0 ? [0] : head.tilts;
          expect([mark, own.length]).toEqual([mark, new Set(tilts.map((tilt) => tilt.toFixed(4))).size]);
          for (const tilt of tilts) expect(own.some((one) => Math.abs(one - tilt) < 1e-5)).toBe(true);
        }
        const keys = settings.map(({ plumb, tilt }) => `${plumb.toFixed(5)} ${tilt.toFixed(5)}`);
        expect(new Set(keys).size).toBe(keys.length);
      }),
      { seed: 31, numRuns: 60 },
    );
  });
});

describe("CHANGES", () => {
  it("says of a roof that did not change that every piece serves as it is", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const all = pieces(frame);
        const found = changes(all, all, frame.spec.unit);
        expect(found.unused).toEqual([]);
        for (const { piece, from, off } of found.changes)
          expect([piece.mark, from?.piece.mark, off]).toEqual([piece.mark, piece.mark, 0]);
      }),
      { seed: 32, numRuns: 60 },
    );
  });

  it("needs every new piece once, gives no old piece twice, and never a shorter one", () => {
    fc.assert(
      fc.property(anyFrame, anyFrame, (one, other) => {
        const [old, now] = [pieces(one), pieces(other)];
        const found = changes(old, now, "in");
        const count = (all: typeof old) => all.reduce((sum, { left, right, plain }) => sum + left + right + plain, 0);
        expect(found.changes.reduce((sum, { needed }) => sum + needed, 0)).toBe(count(now));
        const used = found.changes.reduce((sum, { from }) => sum + (from?.count ?? 0), 0);
        expect(used + found.unused.reduce((sum, { count: left }) => sum + left, 0)).toBe(count(old));
        for (const { piece, from } of found.changes)
          if (from) expect(from.piece.longPoint).toBeGreaterThanOrEqual(piece.longPoint - 1 / 32);
      }),
      { seed: 33, numRuns: 60 },
    );
  });

  it("shortens what is longer: jacks of a roof that is set out from the corner", () => {
    const old = framed({ spacing: 24 });
    const now = framed({ spacing: 24, correction: -0.5, endCorrection: -0.5 });
    const jacks = changes(pieces(old), pieces(now), "in").changes.filter(({ piece }) => piece.member === "jack");
    for (const { off } of jacks) expect(off).toBeCloseTo(0.5, 9);
  });

  it("shortens tails of a smaller overhang, and cuts those of a larger one anew", async () => {
    const block = (overhang: number, ...more: unknown[][]) => [...BLOCK.slice(0, 3), ["Overhang", overhang], ...more];
    const todo = async (old: unknown[][], now: unknown[][]) =>
      Object.fromEntries((await tableOf("CHANGES", old, now)).slice(1).map((row) => [row[0], row[5]]));
    // 4 in level is 4 x 1.1180 along a common at 6 in 12, and 4 x 1.5 along a hip.
    expect(await todo(block(16), block(12))).toMatchObject({
      C: `cut 4 1/2" off at the tail`,
      "J1 L": `cut 4 1/2" off at the tail`,
      H: `cut 6" off at the tail`,
      R: "serves as it is",
    });
    expect(await todo(block(12), block(16))).toMatchObject({ C: "cut anew", H: "cut anew" });
    expect(await todo(block(16), block(16, ["Tail cut", "square"]))).toMatchObject({ C: "cut its tail square" });
    expect(await todo(block(16, ["Tail cut", "square"]), block(16))).toMatchObject({ C: "cut anew" });
  });

  it("refuses blocks in two units, and names the argument", async () => {
    const metric = [
      ["Span", "5 m"],
      ["Length", "8 m"],
      ["Pitch", 6],
    ];
    const answer = await asked("CHANGES", BLOCK, metric);
    expect(answer).toBeInstanceOf(Refusal);
    expect(answer).toMatchObject({ problem: { kind: "blocks of two units" }, place: { argument: "new" } });
  });
});

import { describe, expect, it } from "vitest";
import { rows } from "../functions/asked.ts";

const counts = (block: readonly (readonly [string, unknown])[]) =>
  rows("MEMBERS", block).map((row) => [row["Piece"], row["Left"], row["Right"], row["Plain"]]);
const total = (block: readonly (readonly [string, unknown])[]) =>
  rows("MEMBERS", block).reduce(
    (sum, row) => sum + Number(row["Left"]) + Number(row["Right"]) + Number(row["Plain"]),
    0,
  );

/**
 * A market hall, 24' by 36', 6 in 12, rafters at 24 in, hipped at both ends. Counted on the plan, each | a rafter of the front half:
 *
 *     +----------------------------------------------------------+
 *     | \                                                      / |
 *     |   \                                                  /   |      back: the same
 *     |     \                                              /     |
 *     |      H\                                          /H      |
 *     |KE-------K===+===+===+===+===+===+ R ====+=======K------KE|      ridge from apex to apex: 36' - 2 x 12' = 12'
 *     |       / |   |   |   |   |   |                   | \      |
 *     |     / | |   |   |   |   |   |                   | | \    |      from a corner at 2' 4' 6' 8' 10' the five jacks,
 *     |   / | | |   C   C   C   C   C                   | | | \  |      at 12' the king common, at 14' 16' 18' 20' 22' five commons,
 *     | / | | | |                                       | | | | \|      at 24' the other king common, and five jacks to 34'
 *     +----------------------------------------------------------+
 *       2 4 6 8 10 12  14 16 18 20 22                  24 ...
 *
 * Front: 5 + 1 + 5 + 1 + 5; back the same: 10 commons, 4 kings, 20 jacks. An end: 5 jacks, KE at 12', 5 jacks; two ends: 2 KE, 20 jacks.
 * 40 jacks of five lengths: 8 of each, half of them left. Hips 4, ridge 1: 61 in all.
 */
describe("a hip roof counted by hand", () => {
  const hall = [
    ["Span", `24'`],
    ["Length", `36'`],
    ["Pitch", 6],
  ] as const;
  it("61 pieces", () => {
    expect(counts(hall)).toEqual([
      ["R", 0, 0, 1],
      ["C", 0, 0, 10],
      ["K", 0, 0, 4],
      ["KE", 0, 0, 2],
      ["H", 0, 0, 4],
      ...[1, 2, 3, 4, 5].map((n) => [`J${n}`, 4, 4, 0]),
    ]);
    expect(total(hall)).toBe(61);
  });
});

/**
 * A boat shed, 20' by 30', 8 in 12, rafters at 16 in, one end a gable. In inches along the front plate from the hip's corner:
 *
 *     +---------------------------------------------+
 *     | \                                           |
 *     |   \H                                        |
 *     |KE---K=====================================R=|   ridge from the apex at 120 to the gable at 360
 *     |   / |  |  |  |  |  |  |  |  |  |  |  |  | ||
 *     | / | |  |  |  |  |  |  |  |  |  |  |  |  | ||
 *     +---------------------------------------------+
 *      8 24 40 56 72 88 104 | 120 | 136 152 ... 344 | 359 1/4
 *
 * Jacks at 104 88 72 56 40 24 8: seven. The one at 8 has its short point at 8 - 0.75 sqrt 2 - 0.75 = 6.19, past its seat of 3.5: it stands.
 * Commons from 136 to 344: 136 + 16 x 13 = 344, fourteen; the next, 360, is the gable's line, where the last pair stands at 360 - 0.75: fifteen.
 * Front and back: 30 commons, 2 kings, 14 jacks; the hipped end: KE at 120 and 14 jacks. 28 jacks of seven lengths, 2 left and 2 right of each.
 * Hips 2, ridge 1: 64 in all; the last bay is 359 1/4 - 344 = 15 1/4.
 */
describe("a roof with a gable counted by hand", () => {
  const shed = [
    ["Span", `20'`],
    ["Length", `30'`],
    ["Pitch", 8],
    ["Spacing", 16],
    ["Ends", "hip and gable"],
  ] as const;
  it("64 pieces", () => {
    expect(counts(shed)).toEqual([
      ["R", 0, 0, 1],
      ["C", 0, 0, 30],
      ["K", 0, 0, 2],
      ["KE", 0, 0, 1],
      ["H", 0, 0, 2],
      ...[1, 2, 3, 4, 5, 6, 7].map((n) => [`J${n}`, 2, 2, 0]),
    ]);
    expect(total(shed)).toBe(64);
    expect(rows("MEMBERS", shed)[1]!["Note"]).toContain(`last bay 1' 3 1/4"`);
  });
});

/**
 * A ticket office, 16' by 20', main sides 6 in 12, ends 12 in 12, rafters at 16 in set out from the corners. In inches:
 *
 *     +---------------------------+      The ends rise twice as fast: their run is 96 x 6 / 12 = 48.
 *     |\                         /|
 *     | \                       / |      main plate: jacks at 16, 32; king common at 48; commons 64 ... 176 (eight);
 *     |  \H                   H/  |                  king common at 192; jacks at 208, 224 of 240
 *     |KE-K====================K-KE|     end plate:  jacks at 16 32 48 64 80; king common at 96; five jacks to 176 of 192
 *     |  /|  |  |  |  |  |  |  |\  |
 *     | / |  |  |  |  |  |  |  | \ |     The end's jack at 16: its short point runs 16/2 - 0.75/cos f - 0.375 = 6.8
 *     |/| |  |  |  |  |  |  |  | |\|     (f on the end plate, tan f = 1/2), past its seat of 3.38: it stands.
 *     +---------------------------+
 *
 * Main: 2 x 8 commons, 4 kings, 2 x 4 jacks; ends: 2 KE, 2 x 10 jacks. Of each jack there is one at every corner, two of them left:
 * main ones 2 left and 2 right of two lengths, end ones of five. Two cheeks that differ give hips a hand: 2 left, 2 right. Ridge 1: 55 in all.
 */
describe("a roof of two pitches counted by hand", () => {
  const office = [
    ["Span", `16'`],
    ["Length", `20'`],
    ["Pitch", 6],
    ["End pitch", 12],
    ["Spacing", 16],
    ["Set out from", "corner"],
  ] as const;
  it("55 pieces", () => {
    expect(counts(office).filter(([mark]) => !String(mark).startsWith("J"))).toEqual([
      ["R", 0, 0, 1],
      ["C", 0, 0, 16],
      ["K", 0, 0, 4],
      ["KE", 0, 0, 2],
      ["H", 2, 2, 0],
    ]);
    const jacks = counts(office).filter(([mark]) => String(mark).startsWith("J"));
    expect(jacks.map(([mark]) => mark).sort()).toEqual(["JE1", "JE2", "JE3", "JE4", "JE5", "JM1", "JM2"]);
    expect(jacks.every(([, left, right, plain]) => left === 2 && right === 2 && plain === 0)).toBe(true);
    expect(total(office)).toBe(55);
  });
});

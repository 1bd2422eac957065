import { expect, it } from "vitest";
import type { Problem } from "../../functions/problem.ts";
import { messageOf, WORDS } from "../../functions/words/problemText.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import { asked } from "./asked.ts";

const LONG = "x".repeat(100);
const roof = (...rows: readonly unknown[][]) => {
  const given = new Set(rows.map(([row]) => row));
  const usual = [
    ["Span", `24'`],
    ["Length", `40'`],
    ["Pitch", 6],
  ];
  return ["MEMBERS", [...usual.filter(([row]) => !given.has(row)), ...rows]];
};
const winged = (...given: readonly unknown[][]) => {
  const usual = [
    ["Span", `24'`, `12'`],
    ["Wall", "", "front"],
    ["From left corner", "", `8'`],
    ["Out from wall", "", `10'`],
    ["Ends", "", "hip"],
  ];
  return roof(...usual.filter(([row]) => !given.some(([other]) => other === row)), ...given);
};
/** Two wings of 12 or 8 feet, the first from 4 feet on. */
const two = (from: string, long: string, span = `12'`, overhang: number | "" = "") =>
  roof(
    ["Overhang", 12, overhang, overhang],
    ["Span", `24'`, span, span],
    ["Wall", "", "front", "front"],
    ["From left corner", "", `4'`, from],
    ["Out from wall", "", `10'`, `10'`],
    ["Ends", "", "gable", "gable"],
    ["Long valley", "", long && "left", long],
  );
const HEADS = ["Piece", "Size", "Length", "Count", "Hand", "Pitch", "Saw tilt"];
const order = (...pieces: readonly unknown[][]) => ["LUMBERORDER", [HEADS, ...pieces], [[96], [144]]];
const boards = (...rows: readonly unknown[][]) => [
  "LUMBERORDER",
  [HEADS, ["a", "2x4", 90, 40]],
  [["Size", "Length", "Price", "Count"], ...rows],
];
const rows = (count: number, row: (i: number) => unknown[]) => Array.from({ length: count }, (_, i) => row(i));

/** A call that comes to each problem, or who else does. A kind that nobody reaches should go. */
const CALLS: Readonly<Record<Problem["kind"], readonly unknown[] | string>> = {
  "text too long": ["INCHES", LONG],
  "decimal comma": ["INCHES", "6,5"],
  "zero denominator": ["INCHES", `9' 4 5/0`],
  "not a length": ["INCHES", true],
  "not a pitch": ["PITCHDEG", "steep"],
  "pitch below 1": ["PITCHDEG", 0.25],
  "pitch above 24": ["PITCHDEG", 30],
  "pitch not positive": ["PITCHDEG", "-6/12"],
  "pitch too steep": ["PITCHDEG", "89°"],
  "not a size": ["BOARDFEET", "oak", `16'`],
  "no such nominal size": ["BOARDFEET", "2x7", `16'`],
  "size turned round": ["BOARDFEET", "8x2", `16'`],

  "no length": ["INCHES", ""],
  "length too long": ["INCHES", 2_000_000],
  "date for a length": ["INCHES", 45_000],
  "length of 0": ["JACKLINE", 6, 0],
  "length below 0": ["JACKLINE", 6, -5],
  "length not a number": ["INCHES", NaN],
  "other unit": ["PITCHFROM", "2 m", `3'`],
  "size in other unit": order(["a", "2x4", "2 m", 4], ["b", "1.5 x 7.25", "2 m", 1]),
  "no pitch": ["PITCHDEG", null],
  "no size": ["BOARDFEET", null, `16'`],
  "corner out of range": ["HIPRUN", 6, 144, 6, 180],
  "no number": order(["a", "2x4", 30, null]),
  "number out of range": ["BOARDFEET", "2x6", 96, -5],
  "no word": ["SALVAGE", roof()[1], null, "left", 80],
  "no such word": ["TAPE", 112.6, 5],
  "range for one value": ["INCHES", [[1, 2]]],
  "no finite result": "call(), for a result that no cell can show: test/registry/call.test.ts",
  "too many arguments": ["INCHES", 1, 2],
  "cell error": ["INCHES", new CellError("#REF!")],
  fault: "a host, where a function throws: test/hosts/embedded/adapter.test.ts",
  "no block of labels": ["MEMBERS", 7],
  "value without label": roof([null, 5]),
  "unknown label": roof(["Spam", 5]),
  "label twice": roof(["Spacing", 24], ["Spacing", 24]),
  "heading twice": ["LUMBERORDER", [["Piece", "Piece", "Size", "Length", "Count"]], [[96]]],
  "heading missing": ["LUMBERORDER", [["Piece", "Size"]], [[96]]],
  "too many rows": order(...rows(2001, () => ["a", "2x4", 30, 1])),
  "no rows": order(),

  "row missing": ["MEMBERS", [["Span", 288]]],
  "row of 0": roof(["Spacing", 0]),
  "overhang of 0": roof(["End overhang", 0]),
  "unknown heading": ["MEMBERS", [["", "House"]]],
  "wing twice": ["MEMBERS", [["", "", "Wing A", "wing a"]]],
  "too many wings": roof(["Span", 288, ...rows(9, () => [96]).flat()]),
  "wing without": roof(["Span", 288, 96]),
  "row of the main roof": roof(["Length", 480, 96]),
  "row of a wing": roof(["Wall", "front"]),
  "wing on an end": winged(["Wall", "", "left"]),
  "no place on the wall": winged(["From left corner", "", "near"]),
  "wings need a ridge": roof(["Ridge", "none", "2x10"]),
  "level tail without fascia": roof(["Tail cut", "level"], ["Fascia", "none"]),
  "blocking without spacing": roof(["Blocking", "plate"]),
  "square tail in the seat": roof(["Tail cut", "square"], ["Overhang", 1]),
  "plumb part too deep": roof(["Tail cut", "level"], ["Fascia", "2x8"], ["Overhang", 16]),
  "soffit above the plate": roof(["Tail cut", "level"], ["Fascia", "1x3"], ["Overhang", 1]),
  "heel beside seat": roof(["Heel", 4], ["Seat", 3]),
  "part for percent": roof(["Waste", 0.07]),
  "too short in this unit": roof(["Span", 24]),
  "too long in this unit": roof(["Span", 4000]),
  "boards too short in this unit": roof(["Boards", "8, 12"]),
  "row in other unit": roof(["Spacing", "600 mm"]),
  "no length of board": ["BOARDPICK", 96, ","],
  "text too long for boards": ["BOARDPICK", 96, "8, ".repeat(1000)],
  "comma between meters": ["BOARDPICK", "2 m", "2,4 m"],
  "too many lengths of board": ["BOARDPICK", 96, "1 to 1000 by 1"],
  "range without ends or step": ["BOARDPICK", 96, `8' to 20'`],
  "range runs backwards": ["BOARDPICK", 96, `20' to 8' by 2'`],
  "0 in a range": ["BOARDPICK", 96, [[0]]],
  "too many kinds of board": boards(...rows(201, (i) => ["2x4", 96 + i, 4, 1])),
  "price missing": boards(["2x4", 96, 4, 1], ["2x4", 120, "", 1]),
  "no boards in a row": boards(["2x4", 96, 4, 1], ["2x4", 120, 5, 0]),
  "no values": ["COMPARE", roof()[1], null, 24],
  "too many values": ["COMPARE", roof()[1], [Array<number>(41).fill(6)], 24],
  "neither list nor roof": ["LUMBERORDER", "all", [[96]]],
  "piece without name": order(["", "2x4", 30, 1]),
  "name too long": order([LONG, "2x4", 30, 1]),
  "tilt out of range": order(["J", "2x6", 50, 2, "left", 9, 86]),
  "tilt without hand": order(["J", "2x6", 50, 2, "", 9, 45]),
  "slant of unknown size": order(["J", "oak", 50, 2, "left", 9, 45]),
  "too many joints": [
    "LUMBERORDER",
    [
      [...HEADS, "Join"],
      ["R", "2x8", 300, 1, "", "", "", "9, ".repeat(1001)],
    ],
    [[96]],
  ],
  "kerf too wide": ["LUMBERORDER", [HEADS, ["a", "2x4", `8'`, 1]], [[`10'`]], `2"`],
  "trim takes the board": roof(["End trim", `8'`]),

  "planes meet in no hip": roof(["Pitch", "0.00000000000001 in 12"], ["End pitch", 24]),
  "nothing left to notch": roof(["Heel", 30]),
  "seat too wide": roof(["Seat", 13], ["Hip top", "backed"]),
  "no seat on the flatter side": roof(["Pitch", 3], ["End pitch", 12], ["Seat", 1], ["Hip", "2x12"]),
  "length too short": roof(["Length", `20'`]),
  "ridge too short": roof(["Length", `24' 1"`]),
  "spacing too narrow": roof(["Spacing", 2]),
  "too many rafters": roof(["Length", 30_000]),
  "spacing wider than run": roof(["Spacing", `12'`]),
  "no ridge for the hips": roof(["Ridge", "none"], ["Hip head", "ridge"]),
  "roof too narrow": roof(["Span", `5'`], ["Spacing", 20], ["Ridge", "31.0 in x 40.0 in"], ["Hip head", "ridge"]),
  "no jack fits": roof(["Spacing", `11' 11"`]),
  "hip drops below plate": roof(["Seat", 12]),
  "heel under the drop": roof(["Heel", 0.2]),
  "hip does not reach the plate": roof(["Hip", "1.5 x 3"]),
  "correction below plate": roof(["Correction", -100]),
  "correction over a step": roof(["Correction", 133.8]),

  "wing ridge too high": winged(["Pitch", 6, 14]),
  "wing ridge nearly level": winged(["Span", `24'`, `23' 11`]),
  "wing past the wall": winged(["From left corner", "", `30'`]),
  "wing wider than wall": winged(["Length", `26'`], ["Span", `24'`, `27'`], ["Pitch", 6, 3]),
  "wings overlap": two(`10'`, ""),
  "valleys meet": two(`16' 1"`, ""),
  "long valleys cross": two(`20'`, "right", `8'`),
  "wings' eaves meet": two(`20'`, "", `12'`, 36),
  "no hip left": roof(
    ["Span", `24'`, `24'`, `24'`],
    ["Wall", "", "front", "back"],
    ["From left corner", "", "flush left", "flush right"],
    ["Out from wall", "", `10'`, `10'`],
    ["Ends", "", "hip", "hip"],
  ),
  "flush at a gable": winged(["Ends", "gable and hip", "hip"], ["From left corner", "", "flush left"]),
  "flush at another pitch": winged(["End pitch", 8], ["From left corner", "", "flush left"]),
  "wing too near a corner": winged(["From left corner", "", `1"`]),
  "wing too short": winged(["Out from wall", "", `1"`]),
  "no valley to the ridge": winged(["Length", `27'`], ["From left corner", "", `7' 6"`]),
  "no room on the ridge": winged(["Span", `24'`, `24'`], ["From left corner", "", `2 1/4"`]),
  "long valley off the ridge": winged(["Long valley", "", "right"], ["From left corner", "", `4'`]),
  "no long valley": winged(["Long valley", "", "right"], ["From left corner", "", "flush left"]),
  "wing without seat": winged(["Heel", 5.6], ["Pitch", 6, 1]),
  "wing too narrow": winged(["Span", `24'`, `10"`], ["Ends", "", "gable"]),
  "wing spacing": winged(["Span", `24'`, `3'`]),
  "wing hip below plate": winged(["Heel", 0.5], ["Spacing", 12], ["End pitch", "", 24]),
  "valley does not reach the plate": winged(["Valley", "1.5 x 3"]),
  "no ridge for wings": winged(["Length", `24'`]),
  "flush laid over": winged(["Wing framing", "", "laid over"], ["From left corner", "", "flush left"]),
  "sheathing framed in": winged(["Sheathing", "", 0.5]),
  "wing too low to lay over": winged(["Wing framing", "", "laid over"], ["Span", `24'`, `2'`], ["Ends", "", "gable"]),

  "no hip": ["HIPRUN", 1, 144, 24, 170],
  "ridge fills the run": ["COMMONLEN", 6, 1, 3],
  "head past the corner": ["HIPTOKING", 6, 0.25, 1.5],
  "seat takes the heel": ["HEEL", 9, 0.25, 4],
  "heel above depth": ["SEATWIDTH", 9, 0.25, 7],
  "jack wider than offset": ["JACKLEN", 6, 1, 1.5, 1.5],
  "short point below plate": ["JACKLEN", 6, 1.6, 1.5, 1.5],
  "tape not above heel": ["JACKFROMTAPE", 9, 0.25, 4],
  "square tail cuts the seat": ["TAILBOARD", 9, 1, 8, 7, "square"],
  "fascia missing": ["TAILBOARD", 9, 16, 8, 7, "level"],
  "fascia not used": ["TAILBOARD", 9, 16, 8, 7, "plumb", 5],
  "fascia too deep": ["SOFFITCUT", 9, 16, 0.25, 5.5],
  "fascia above the plate": ["TAILBOARD", 9, 2, 8, 7, "level", 5],
  "valley jack vanishes": ["VALLEYJACK", 9, 200, 144, 1.5, 1.5, 1.5],
  "no valley jack fits": ["VALLEYJACK", 9, 48, 0.25, 1.5, 1.5, 1.5],
  "cripple vanishes": ["CRIPPLELEN", 9, 0.25, 1.5, 1.5],
  "valley vanishes": ["VALLEYTOVALLEY", 6, 0.25, 1.5],
  "valley cripple vanishes": ["VALLEYCRIPPLE", 6, 3, 1.5, 1.5],
  "drop takes the heel": ["HIPHEEL", 12, 0.25, 1.5],
  "hip too shallow for the plate": ["HIPKINGBOARD", 6, 144, 1.5, 1.5, 0.25, 4.4, 16],

  "no triangle": ["CORNERDEG", 3, 4, 8],
  "blocks of two units": [
    "CHANGES",
    [
      ["Span", "24'"],
      ["Length", "40'"],
      ["Pitch", 6],
    ],
    [
      ["Span", "7.2 m"],
      ["Length", "12 m"],
      ["Pitch", 6],
    ],
  ],
  "no such piece": ["SALVAGE", roof()[1], "Both", "left", 80, "VJ9"],
  "sides differ": ["SALVAGE", roof(["End pitch", 8])[1], "Both", "left", 80],

  "no pieces": order(["a", "2x4", 30, 0]),
  "no board of that size": boards(["2x8", 96, 4, 1]),
  "piece too long": order(["a", "2x4", 200, 1]),
  "head longer than piece": order(["J", "2x6", 5, 2, "left", 9, 80]),
  "too few boards": boards(["2x4", 96, 4, 3]),
  "no way found": "planCuts, where its budget ends before it has cut all pieces out of limited boards",
  "no board long enough": ["BOARDPICK", `24'`],
};

it("every kind is listed", () => expect(Object.keys(CALLS).sort()).toEqual(Object.keys(WORDS).sort()));

it.each(Object.entries(CALLS).filter(([, given]) => typeof given !== "string"))(
  "%s is reached",
  async (kind, given) => {
    const [name, ...cells] = given as readonly [string, ...unknown[]];
    const answer = await asked(name, ...cells);
    expect(answer).toMatchObject({ problem: { kind } });
    // It has words, and a value for each of their figures.
    if (answer instanceof Refusal) expect(messageOf(answer)).not.toMatch(/undefined|: \.$/);
    // Of what comes in wrong only an error passes without a place.
    if (kind !== "cell error" && kind !== "too many arguments")
      expect((answer as Refusal).place?.argument).toBeTruthy();
  },
);

import { describe, expect, it } from "vitest";
import { readRoof } from "../../../functions/arguments/roofModel.ts";
import { Failure } from "../../../src/measure/result.ts";
import { cardsOf } from "../../../src/pane/writing/cards.ts";
import { asked } from "../../functions/asked.ts";

/** The words of a card, as the crew reads them: figures, then steps. */
function cardOf(block: readonly (readonly unknown[])[], mark: string): string {
  const model = readRoof("roof", block);
  if (model instanceof Failure) throw new Error(JSON.stringify(model.problem));
  const all = cardsOf(model, { packet: { job: "", date: "", stamp: "" } });
  const card = all.find((one) => one.mark === mark)!;
  return [...card.figures.map(({ name, value }) => `${name} ${value}`), ...card.steps].join("\n");
}

/**
 * Ten cards worked by hand, from no formula of the program's: right triangles, and what stands in the way. Lengths to the nearest sixteenth, boards up to the next.
 *
 * The hall: 24' x 36', 6 in 12 (along / run = root 5 / 2 = 1.118034), overhang 18, rafters 2x6 at 24, hips and ridge 2x8, seat 3 1/2, all 1 1/2 thick.
 * - R: 432 - 2 x 144 = 144 between apexes, and 3/4 past each: 145 1/2.
 * - C: (144 - 3/4) x 1.118034 = 160.158. Heel 5.5 x 1.118034 - 3.5 / 2 = 4.399. Tail 18 x 1.118034 = 20.125. Tape: root of 143.25 squared and (4.399 + 71.625)
 *   squared = 162.174. Board (143.25 + 18) x 1.118034 + 5.5 / 2 = 183.033.
 * - H: its plan is 144 x 1.414214 = 203.647, less 3/4 x 1.414214 for the kings' corner: 202.586; it rises .353553 a unit, so it is 1.060660 as long: 214.875. It drops
 *   3/4 x .353553 = .265: heel 4.134; seat (7.25 x 1.060660 - 4.134) / .353553 = 10.057. Tail 18 x 1.414214 x 1.060660 = 27. Tape: root of 202.586 squared and
 *   (4.134 + 71.625) squared = 216.288.
 * - J1 at 120: run 120 - 3/4 x 1.414214 + 3/4 = 119.689, so 133.817; tape root of 119.689 squared and (4.399 + 59.845) squared = 135.841; on the plate 120 - 3/4; on
 *   the hip (120 x 1.414214 - 3/4) x 1.060660 = 179.205.
 * - J5 at 24: run 23.689, so 26.486; tape root of 23.689 squared and (4.399 + 11.845) squared = 28.724; on the hip (33.941 - .75) x 1.060660 = 35.205.
 *
 * The shed: 16' x 24', 9 in 12 (3-4-5: 1.25), overhang 16, the same lumber.
 * - C: (96 - 3/4) x 1.25 = 119.0625; heel 5.5 x 1.25 - 3.5 x .75 = 4.25; tail 20; tape root of 95.25 squared and 75.6875 squared = 121.660; board 111.25 x 1.25 +
 *   5.5 x .75 = 143.1875.
 * - J1 at 72: run 71.689, so 89.612; tape root of 71.689 squared and (4.25 + 53.767) squared = 92.224; the hip rises .530330 and is 1.131923 as long: (72 x 1.414214
 *   - 3/4) x 1.131923 = 114.407.
 * - H: (96 - 3/4) x 1.414214 x 1.131923 = 152.474; heel 4.25 - 3/4 x .530330 = 3.852; tail 16 x 1.414214 x 1.131923 = 25.612.
 *
 * The office: 16' x 20', main sides 6 in 12, ends 12 in 12, set out from the corners at 16. The ends rise twice as fast: seen from above the hip goes in 2 for each 1
 * along the main plate, 63.43 degrees, and 1/2 along the end plate, 26.57.
 * - JM1 at 32: 32 x 2 - 3/4 x 2.236068 + 3/4 x 2 = 63.823, x 1.118034 = 71.356; the saw does not reach 63.43.
 * - JE1 at 80: 40 - 3/4 x 1.118034 + 3/8 = 39.536, x 1.414214 = 55.913.
 */
describe("ten cards worked by hand", () => {
  const hall = [
    ["Span", "24'"],
    ["Length", "36'"],
    ["Pitch", 6],
    ["Overhang", 18],
  ];
  const shed = [
    ["Span", "16'"],
    ["Length", "24'"],
    ["Pitch", 9],
    ["Overhang", 16],
  ];
  const office = [
    ["Span", "16'"],
    ["Length", "20'"],
    ["Pitch", 6],
    ["End pitch", 12],
    ["Spacing", 16],
    ["Set out from", "corner"],
    ["Rafter", "2x8"],
    ["Hip", "2x12"],
  ];
  it.each([
    ["the hall's ridge", hall, "R", [`12' 1 1/2"`, "Cut both ends square"]],
    [
      "its commons",
      hall,
      "C, K, KE",
      [
        `13' 4 3/16"`,
        `13' 6 3/16"`,
        "square on 6 and 12 (26.57°)",
        `4 3/8"`,
        `3 1/2"`,
        `1' 8 1/8"`,
        `at least 15' 3 1/16" long with its ends trimmed`,
      ],
    ],
    ["its hips", hall, "H", [`17' 10 7/8"`, `18' 0 5/16"`, "6 and 17", "45°", "46.69°", `4 1/8"`, `10 1/16"`, `2' 3"`]],
    [
      "its longest jacks",
      hall,
      "J1",
      [`11' 1 13/16"`, `11' 3 13/16"`, "45°", "48.19°", `9' 11 1/4"`, `14' 11 3/16"`, `1' 8 1/8"`],
    ],
    ["its shortest jacks", hall, "J5", [`2' 2 1/2"`, `2' 4 3/4"`, `1' 11 1/4"`, `2' 11 3/16"`]],
    [
      "the shed's commons",
      shed,
      "C, K, KE",
      [
        `9' 11 1/16"`,
        `10' 1 11/16"`,
        "9 and 12 (36.87°)",
        `4 1/4"`,
        `1' 8"`,
        `at least 11' 11 3/16" long with its ends trimmed`,
      ],
    ],
    ["its longest jacks", shed, "J1", [`7' 5 5/8"`, `7' 8 1/4"`, `5' 11 1/4"`, `9' 6 7/16"`]],
    ["its hips", shed, "H", [`12' 8 1/2"`, `3 7/8"`, `2' 1 5/8"`, "9 and 17"]],
    ["the office's main jacks", office, "JM1", [`5' 11 3/8"`, "63.43°", "NOT IN ONE PASS", `2' 7 1/4"`]],
    ["its end jacks", office, "JE1", [`4' 7 15/16"`, "26.57°", "12 and 12 (45°)", `6' 7 1/4"`]],
  ] as const)("%s", (_, block, mark, figures) => {
    const words = cardOf(block, mark);
    for (const figure of figures) expect(words).toContain(figure);
  });
});

describe("card and order, end trim", () => {
  // 16' span at 9 in 12: a common's board is 143 3/16 with an overhang of 16, so with boards of 143 3/16 the order takes one untrimmed.
  const shed = (boards: string) => [
    ["Span", "16'"],
    ["Length", "24'"],
    ["Pitch", 9],
    ["Overhang", 16],
    ["Boards", boards],
  ];
  const boughtFor = async (block: unknown[][], boards: unknown[][]) =>
    (await asked("LUMBERORDER", block, boards)) as unknown as unknown[][];

  it("a board just as long as the piece is taken whole, by both", async () => {
    const exact = `11' 11 3/16", 20'`;
    expect(cardOf(shed(exact), "C, K, KE")).toContain(`Use a 2x6 at least 11' 11 3/16" long, crown up.`);
    const order = await boughtFor(shed(exact), [
      ["Size", "Length"],
      ["2x6", 143.1875],
      ["2x8", 240],
    ]);
    expect(order.some((row) => row[0] === "2x6" && row[1] === 143.1875)).toBe(true);
  });

  it("one that is a trim longer is enough, a sixteenth less is not, by both", async () => {
    expect(cardOf(shed(`12', 20'`), "C, K, KE")).toContain(`at least 11' 11 3/16" long with its ends trimmed`);
    const note = async (length: number) =>
      (
        await boughtFor(shed(`12', 20'`), [
          ["Size", "Length"],
          ["2x6", length],
          ["2x8", 240],
        ])
      )
        .map((row) => row[6])
        .join();
    expect(await note(143.1875 + 0.5)).not.toContain("none long enough");
    expect(await note(143.1875 + 0.5 - 1 / 16)).toContain("none long enough");
  });
});

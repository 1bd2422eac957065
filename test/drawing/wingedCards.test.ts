import { describe, expect, it } from "vitest";
import { cutCards } from "../../src/drawing/cards/cutCard.ts";
import { drawEnds } from "../../src/drawing/views/drawEnds.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import { framed, SHAPES } from "../roof/outlineSpecs.ts";
import { wingedCases } from "../solids/wings/cases.ts";
import { modelOf } from "../solids/wings/frameOf.ts";
import { faults } from "./faults.ts";
import { drawnBoards, measured } from "./readDrawing.ts";
import { struckTexts } from "./struckTexts.ts";
import { WINGED_ROOFS } from "./wingedRoofs.ts";

const ROOFS: [string, RoofSpec][] = [
  ...Object.entries(WINGED_ROOFS),
  ...Object.entries(wingedCases).map(([name, plan]): [string, RoofSpec] => [name, modelOf(plan).frame.spec]),
];

function cardsOf(spec: RoofSpec) {
  const { frame, pieces } = framed(spec);
  return { pieces, cards: cutCards(frame, pieces, { length: (value) => lengthText(value, spec.unit) }) };
}

/** The steps of one piece's card as one text. */
const steps = (spec: RoofSpec, mark: string): string =>
  cardsOf(spec)
    .cards.find((card) => card.mark === mark)!
    .steps.join("\n");

describe("cut cards of a roof with wings", () => {
  it.each(ROOFS)("every piece has one, told in full, its drawing without a text on another: %s", (_, spec) => {
    const { pieces, cards } = cardsOf(spec);
    expect(
      pieces.map(({ mark }) => mark).filter((mark) => !cards.some((card) => card.mark.split(", ").includes(mark))),
    ).toEqual([]);
    for (const { mark, steps, drawing } of cards) {
      expect([mark, steps.join(" ")]).not.toEqual([mark, expect.stringMatching(/NaN|undefined|Infinity|null| -\d/)]);
      for (const [width, brief] of [
        [345, true],
        [900, false],
      ] as const) {
        const svg = drawing(width, brief);
        expect([mark, faults(svg)]).toEqual([mark, []]);
        expect([mark, struckTexts(svg).filter(({ backed }) => !backed)]).toEqual([mark, []]);
        expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
      }
    }
  });

  it("a hip's marks say so where hips of one cut carry different pieces, as beside a wing; on a rectangle all carry the same", () => {
    const told = (spec: RoofSpec) =>
      cardsOf(spec).cards.filter((card) => card.steps.join().includes("Others carry other pieces")).length;
    expect(Object.values(SHAPES).map(told)).toEqual(Object.values(SHAPES).map(() => 0));
    expect(told(WINGED_ROOFS["cross"]!)).toBe(1);
    expect(told(WINGED_ROOFS["T"]!)).toBe(0);
  });

  // 24 by 40 feet at 6 in 12, a wing of 16 by 10 from 12' 6", long valley left: worked by hand, and read off solid models.
  const worked: RoofSpec = {
    ...WINGED_ROOFS["T"]!,
    wings: WINGED_ROOFS["T"]!.wings.map((wing) => ({ ...wing, longValley: "left" })),
  };
  it.each([
    // 143.2045, 214.8750 + 0.75 x sqrt(1.125), 139.6864 and 138.0094, 93.2202 and 89.8661, 214.9393 in.
    ["VS-A", [`11' 11 3/16"`, "Saw it square across"]],
    ["VL-A", [`17' 11 11/16"`, "from the wing side's face: tilt 45°"]],
    ["VJ2-A", [`Check the top edges: 11' 7 11/16" on the longer face, 11' 6" on the other`]],
    ["VV1-A", [`Check the top edges: 7' 9 1/4" on the longer face, 7' 5 7/8" on the other`]],
    ["R-A", [`17' 10 15/16" to its tip`, "tilt 45°"]],
  ])("tells the worked lengths: %s", (mark, texts) => {
    for (const text of texts) expect(steps(worked, mark)).toContain(text);
  });

  it("marks on each valley of a wing what meets it there, left and right by themselves", () => {
    const { pieces, cards } = cardsOf(worked);
    for (const mark of ["VL-A", "VS-A"]) {
      const [cuts, marks] = cards.filter((card) => card.mark === mark);
      expect(cuts!.counts).toEqual(expect.arrayContaining([...marks!.counts]));
      const said = marks!.drawing(900, false).replaceAll("&#34;", '"');
      // Feet on it have the marks of JACKTABLE: (d / cos f + 0.75) x sqrt(1.125), of a jack at 18 in 26.2513.
      const valley = pieces.find((piece) => piece.mark === mark)!;
      const own = pieces.flatMap((piece) =>
        piece.stands.flatMap((stand) =>
          stand.kind === "rafter" && stand.foot.bearer === valley.stands[0] ? [{ piece, stand }] : [],
        ),
      );
      expect(own.length).toBeGreaterThan(2);
      for (const { piece, stand } of own) {
        const at = (stand.offset! * Math.SQRT2 + 0.75) * Math.sqrt(1.125);
        expect([mark, said]).toEqual([mark, expect.stringContaining(`${piece.mark}  ${lengthText(at, "in")}`)]);
      }
    }
    const level = cardsOf(WINGED_ROOFS["T with level ridges"]!).cards.filter(({ mark }) => mark === "V-A");
    expect(level.map(({ counts }) => counts.map(({ name, count }) => `${count} ${name}`).join())).toEqual([
      "1 left,1 right",
      "1 left",
      "1 right",
    ]);
  });

  it("has both valleys of two pitches with their own tilts and longer faces", () => {
    // 25 by 45 feet at 8 in 12, wing 18 wide at 6 in 12: f 36.8699, so 53.1301 and 16.2602 degrees; heads read off solid models.
    const spec = modelOf(wingedCases["a T at two pitches, long valley right"]!).frame.spec;
    expect(steps(spec, "VL-A")).toContain("from the wing side's face: tilt 53.13°");
    expect(steps(spec, "VS-A")).toContain("from the wing side's face: tilt 16.26°");
    // 268.9890 - 266.8349, and 144.7936 - 144.3224.
    expect(steps(spec, "VL-A")).toContain(`ends 2 1/8" sooner`);
    expect(steps(spec, "VS-A")).toContain(`ends 1/2" sooner`);
  });

  it("turns the heel of a valley uphill and notches its tail, and cuts a broken hip's foot to ridge and valley", () => {
    const spec = WINGED_ROOFS["L"]!;
    // At equal pitches each face's heel is 3/4 x sqrt(1.125) farther out, and so is its tail: 16 x sqrt(2) x sqrt(1.125) = 24 in.
    expect(steps(spec, "V-A")).toContain(`13/16" on the main side's face, 13/16" on the wing side's`);
    expect(steps(spec, "V-A")).toContain(`2' 0" down the middle, 2' 0 13/16" down the main side's face`);
    expect(steps(spec, "BH-A")).toMatch(/NOTHING BUT RIDGE AND VALLEY/);
  });

  it.each(ROOFS)("draws both ends to scale: %s", (_, spec) => {
    const { frame, pieces } = framed(spec);
    for (const piece of pieces.filter(({ foot, member }) => foot.bearer === "valley" || member === "valley")) {
      const boards = drawnBoards(drawEnds(frame, piece, { width: 640, length: String }));
      expect(boards.map(({ view }) => view.name)).toEqual(["foot end", "head end"]);
      for (const board of boards) {
        const ys = board.points.map((point) => measured(board, point).y);
        expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(piece.section.thickness, 2);
      }
    }
  });
});

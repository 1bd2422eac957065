import { describe, expect, it } from "vitest";
import { drawApex } from "../../../src/drawing/views/drawApex.ts";
import { drawSetOut } from "../../../src/drawing/views/drawSetOut.ts";
import { placedBoards } from "../../../src/roof/frame/placedBoards.ts";
import { framed, HALL, SHAPES } from "../../roof/outlineSpecs.ts";
import { inches } from "../allDrawings.ts";
import { drawnBoards, drawnTexts, measured } from "../readDrawing.ts";

const options = { width: 680, length: inches };
const texts = (svg: string) => drawnTexts(svg).map(({ text }) => text);

describe("a part of a plan", () => {
  it.each(Object.entries(SHAPES))("shows the roof's own boards to scale, %s", (title, spec) => {
    const one = { title, ...framed(spec) };
    const placed = placedBoards(one.frame, one.pieces);
    for (const svg of [drawSetOut([one], options), drawApex([{ ...one, end: "hip" }], options)]) {
      const shown = drawnBoards(svg);
      expect(shown.length).toBeGreaterThan(2);
      for (const board of shown) {
        const back = board.points.map((point) => measured(board, point));
        expect(
          placed.some(
            ({ piece, plan }) =>
              piece.mark === board.piece &&
              plan.length === back.length &&
              plan.every(({ x, y }, i) => Math.hypot(x - back[i]!.x, y - back[i]!.y) * board.view.scale < 0.002),
          ),
        ).toBe(true);
      }
    }
  });
});

describe("drawSetOut", () => {
  // Half of 18' is four bays of 2' and one of 1': at the corner when set out from the king common, else at the king common.
  const spec = { ...HALL, span: 216 };
  it("tells where the odd bay is left", () => {
    const svg = drawSetOut(
      [
        { title: "From the king common", ...framed(spec) },
        { title: "From the corner", ...framed({ ...spec, setOutFrom: "corner" }) },
      ],
      options,
    );
    expect(texts(svg).filter((text) => text === `4 @ 2' 0"`)).toHaveLength(2);
    const [atCorner, atKing] = drawnTexts(svg).filter(({ text }) => text === `1' 0"`);
    const [left, right] = drawnTexts(svg).filter(({ text }) => text === `9' 0"`);
    expect(atCorner!.right).toBeLessThan(left!.left);
    expect(atKing!.left).toBeGreaterThan(right!.right);
  });
});

describe("drawApex", () => {
  it("shows what meets at the top, by mark", () => {
    const marksOf = (spec: typeof HALL, end: "hip" | "gable" = "hip") =>
      [
        ...new Set(drawnBoards(drawApex([{ title: "", ...framed(spec), end }], options)).map(({ piece }) => piece)),
      ].sort();
    expect(marksOf(HALL)).toEqual(["H", "K", "KE", "R"]);
    expect(marksOf({ ...HALL, hipHead: "ridge" })).toEqual(["H", "R"]);
    expect(marksOf({ ...HALL, length: 288 })).toEqual(["H", "K", "KE"]);
    expect(marksOf({ ...HALL, ends: "hip and gable" }, "gable")).toEqual(["C", "R"]);
  });

  it("says how far the ridge runs on: half a rafter between king commons, 3/4 + 0.75 root 2 in with hips on it", () => {
    expect(texts(drawApex([{ title: "", ...framed(HALL), end: "hip" }], options))).toContain(
      `Ridge past the apex 3/4"`,
    );
    expect(texts(drawApex([{ title: "", ...framed({ ...HALL, hipHead: "ridge" }), end: "hip" }], options))).toContain(
      `Ridge past the apex 1 13/16"`,
    );
    expect(
      texts(drawApex([{ title: "", ...framed({ ...HALL, ridge: null }), end: "hip" }], options)).join(),
    ).not.toContain("Ridge");
  });
});

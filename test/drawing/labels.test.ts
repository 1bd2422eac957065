import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bays } from "../../src/drawing/views/bays.ts";
import { placedDimensions, type Dimension } from "../../src/drawing/canvas/dimensions.ts";
import { drawPlan } from "../../src/drawing/views/drawPlan.ts";
import { textWidth } from "../../src/drawing/canvas/textWidth.ts";
import { nonBreaking } from "../../src/drawing/canvas/nonBreaking.ts";
import { wrapped } from "../../src/drawing/canvas/wrapped.ts";
import { framed, handsOf } from "../roof/outlineSpecs.ts";
import { inches, ROOFS } from "./allDrawings.ts";
import { drawnTexts } from "./readDrawing.ts";

describe("drawPlan", () => {
  it.each(Object.entries(ROOFS))(
    "writes every mark at least once on the narrowest pane, and with both hands where they have room, %s",
    (name, spec) => {
      const { frame, pieces } = framed(spec);
      const texts = new Set(
        drawnTexts(drawPlan(frame, pieces, { width: 320, length: inches })).map(({ text }) => text),
      );
      const marks = pieces.flatMap((piece) =>
        handsOf(piece).map((hand) => (hand === "plain" ? piece.mark : `${piece.mark} ${hand === "left" ? "L" : "R"}`)),
      );
      const missing = marks.filter((mark) => !texts.has(mark));
      // Fourteen jacks a side that are less than six pixels apart: at each corner every second one has room.
      if (name !== "steep with a long hip") expect(missing).toEqual([]);
      for (const { mark } of pieces) expect([...texts].some((text) => text.split(" ")[0] === mark)).toBe(true);
    },
  );

  it("writes equal bays as one, and the whole plate", () => {
    const { frame, pieces } = framed(ROOFS["regular"]!);
    const texts = drawnTexts(drawPlan(frame, pieces, { width: 1000, length: inches })).map(({ text }) => text);
    for (const text of [`18 @ 2' 0"`, `36' 0"`, `12 @ 2' 0"`, `24' 0"`]) expect(texts).toContain(text);
  });
});

describe("bays", () => {
  it("cover the plate from end to end, whatever stands on it", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 20 }), (widths) => {
        const stations = widths.reduce((all, width) => [...all, all.at(-1)! + width], [0]);
        const found = bays(stations);
        expect(found.flatMap(({ count, each }) => Array.from({ length: count }, () => each))).toEqual(widths);
        for (const [i, bay] of found.entries()) {
          expect(bay.from).toBe(found[i - 1]?.to ?? 0);
          expect(bay.to - bay.from).toBe(bay.count * bay.each);
          expect(bay.each).not.toBe(found[i - 1]?.each);
        }
      }),
      { seed: 5 },
    );
  });

  it("are none on a plate with one mark", () => {
    expect(bays([7])).toEqual([]);
  });
});

describe("placedDimensions", () => {
  const reach = { least: 0, most: 300 };
  const dimension = fc
    .record({
      from: fc.integer({ min: 0, max: 300 }),
      to: fc.integer({ min: 0, max: 300 }),
      name: fc.constantFrom("Long point", "Tail", undefined),
      text: fc.constantFrom(`2' 0"`, `13' 4 3/16"`, "38 mm"),
    })
    .map(({ from, to, name, text }): Dimension => (name === undefined ? { from, to, text } : { from, to, name, text }));
  const placed = (all: readonly Dimension[]) =>
    placedDimensions(all, 10, reach).map(({ row, at, lines }, i) => {
      const half = Math.max(...lines.map((line) => textWidth(line, 10))) / 2;
      return {
        row,
        text: [at - half, at + half] as const,
        ends: [all[i]!.from, all[i]!.to].sort((a, b) => a - b) as [number, number],
      };
    });

  it("lets no two of one row touch, and no text leave its reach", () => {
    fc.assert(
      fc.property(fc.array(dimension, { maxLength: 12 }), (all) => {
        const spans = placed(all).map(({ row, text, ends }) => ({
          row,
          from: Math.min(text[0], ends[0]),
          to: Math.max(text[1], ends[1]),
        }));
        for (const [i, one] of spans.entries()) {
          expect(one.from).toBeGreaterThanOrEqual(-1e-9);
          expect(one.to).toBeLessThanOrEqual(300 + 1e-9);
          for (const two of spans.slice(i + 1))
            if (one.row === two.row) expect(one.from >= two.to || two.from >= one.to).toBe(true);
        }
      }),
      { seed: 6 },
    );
  });

  it("lets no extension line run through a text that has room anywhere, its own included", () => {
    fc.assert(
      fc.property(fc.array(dimension, { minLength: 1, maxLength: 4 }), (all) => {
        const every = placed(all);
        // The widest of these texts is 65 px in two lines: with lines at three places at most some gap of 300 px has room for it.
        const lines = new Set(all.flatMap(({ from, to }) => [from, to]));
        if (lines.size > 3) return;
        for (const { row, text } of every)
          for (const { row: other, ends } of every)
            for (const end of ends) if (other >= row) expect(end <= text[0] || end >= text[1]).toBe(true);
      }),
      { seed: 8, numRuns: 2000 },
    );
  });

  it("writes a text beside a short dimension, and its name over it where both have no room in one line", () => {
    expect(placed([{ from: 0, to: 20, text: `2' 0"` }])[0]!.text[0]).toBeCloseTo(24, 9);
    const [tail] = placedDimensions([{ from: 0, to: 60, name: "Tail", text: `13' 4 3/16"` }], 10, {
      least: 0,
      most: 70,
    });
    expect(tail!.lines).toEqual(["Tail", `13' 4 3/16"`]);
  });
});

describe("wrapped", () => {
  it("keeps every word and the width, but where one word is wider", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom("Hook", "on", "the", "long", "point,", `11'`, `1 13/16"`), {
          minLength: 1,
          maxLength: 30,
        }),
        fc.integer({ min: 20, max: 200 }),
        (words, width) => {
          const lines = wrapped(words.join(" "), 10, width);
          expect(lines.join(" ")).toBe(words.join(" "));
          for (const line of lines)
            if (nonBreaking(line).includes(" ")) expect(textWidth(line, 10)).toBeLessThanOrEqual(width);
        },
      ),
      { seed: 7 },
    );
  });

  it("breaks no length: its feet, inches and fraction stay on one line", () => {
    expect(wrapped(`left over 1' 6 7/8"`, 10, 80)).toEqual(["left over", `1' 6 7/8"`]);
    expect(wrapped("tail of 636 mm", 10, 50)).toEqual(["tail of", "636 mm"]);
  });
});

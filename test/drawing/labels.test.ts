import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bays } from "../../src/drawing/bays.ts";
import { dimensionRows, type Dimension } from "../../src/drawing/dimensions.ts";
import { drawPlan } from "../../src/drawing/drawPlan.ts";
import { textWidth } from "../../src/drawing/textWidth.ts";
import { wrapped } from "../../src/drawing/wrapped.ts";
import { framed, handsOf } from "../roof/outlineSpecs.ts";
import { inches, ROOFS } from "./allDrawings.ts";
import { drawnTexts } from "./readDrawing.ts";

describe("drawPlan", () => {
  it.each(Object.entries(ROOFS))("writes every mark at least once on the narrowest pane, and with both hands where they have room, %s", (name, spec) => {
    const { frame, pieces } = framed(spec);
    const texts = new Set(drawnTexts(drawPlan(frame, pieces, { width: 320, length: inches })).map(({ text }) => text));
    const marks = pieces.flatMap((piece) => handsOf(piece).map((hand) => (hand === "plain" ? piece.mark : `${piece.mark} ${hand === "left" ? "L" : "R"}`)));
    const missing = marks.filter((mark) => !texts.has(mark));
    // Fourteen jacks a side that are less than six pixels apart: at each corner every second one has room.
    if (name !== "steep with a long hip") expect(missing).toEqual([]);
    for (const { mark } of pieces) expect([...texts].some((text) => text.split(" ")[0] === mark)).toBe(true);
  });

  it("writes equal bays as one, and the whole plate", () => {
    const { frame, pieces } = framed(ROOFS["regular"]!);
    const texts = drawnTexts(drawPlan(frame, pieces, { width: 1000, length: inches })).map(({ text }) => text);
    for (const text of [`18 @ 2' 0"`, `36' 0"`, `12 @ 2' 0"`, `24' 0"`]) expect(texts).toContain(text);
  });
});

describe("bays", () => {
  it("cover the plate from end to end, whatever stands on it", () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 20 }), (widths) => {
      const stations = widths.reduce((all, width) => [...all, all.at(-1)! + width], [0]);
      const found = bays(stations);
      expect(found.flatMap(({ count, each }) => Array.from({ length: count }, () => each))).toEqual(widths);
      for (const [i, bay] of found.entries()) {
        expect(bay.from).toBe(found[i - 1]?.to ?? 0);
        expect(bay.to - bay.from).toBe(bay.count * bay.each);
        expect(bay.each).not.toBe(found[i - 1]?.each);
      }
    }), { seed: 5 });
  });

  it("are none on a plate with one mark", () => { expect(bays([7])).toEqual([]); });
});

describe("dimensionRows", () => {
  it("lets no two of one row touch", () => {
    const dimension = fc.record({ from: fc.integer({ min: 0, max: 300 }), to: fc.integer({ min: 0, max: 300 }), text: fc.constantFrom(`2' 0"`, `Long point 13' 4 3/16"`, "38 mm") });
    fc.assert(fc.property(fc.array(dimension, { maxLength: 12 }), (all: Dimension[]) => {
      const rows = dimensionRows(all, 10, { least: 0, most: 300 });
      const spans = all.map(({ from, to, text }) => {
        const half = textWidth(text, 10) / 2;
        const at = Math.max(half, Math.min(300 - half, (from + to) / 2));
        return [Math.min(from, to, at - half), Math.max(from, to, at + half)] as const;
      });
      for (const [i, one] of spans.entries()) for (const [j, two] of spans.entries()) if (i < j && rows[i] === rows[j]) expect(one[0] >= two[1] || two[0] >= one[1]).toBe(true);
    }), { seed: 6 });
  });
});

describe("wrapped", () => {
  it("keeps every word and the width, but where one word is wider", () => {
    fc.assert(fc.property(fc.array(fc.constantFrom("Hook", "on", "the", "long", "point,", `11'`, `1 13/16"`), { minLength: 1, maxLength: 30 }), fc.integer({ min: 20, max: 200 }), (words, width) => {
      const lines = wrapped(words.join(" "), 10, width);
      expect(lines.join(" ")).toBe(words.join(" "));
      for (const line of lines) if (line.includes(" ")) expect(textWidth(line, 10)).toBeLessThanOrEqual(width);
    }), { seed: 7 });
  });
});

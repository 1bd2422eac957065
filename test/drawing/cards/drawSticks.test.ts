import { describe, expect, it } from "vitest";
import { orderFor } from "../../../functions/arguments/cutOrder.ts";
import { cuttingDrawing, type CuttingDrawing } from "../../../functions/arguments/cuttingDrawing.ts";
import { drawSticks, type Stick } from "../../../src/drawing/cards/drawSticks.ts";
import { stickPages } from "../../../src/drawing/cards/stickPages.ts";
import { lengthText } from "../../../src/measure/lengthText.ts";
import { drawnBoards, drawnSize, drawnTexts, measured } from "../readDrawing.ts";

const BLOCKS: Readonly<Record<string, readonly (readonly (string | number)[])[]>> = {
  regular: [
    ["Span", 288],
    ["Length", 432],
    ["Pitch", 6],
    ["Overhang", 16],
  ],
  "steeper ends, one size": [
    ["Span", 288],
    ["Length", 432],
    ["Pitch", 6],
    ["End pitch", 9],
    ["Rafter", "2x8"],
    ["Hip", "2x8"],
    ["Ridge", "2x8"],
  ],
  "hips on the ridge, a joined ridge": [
    ["Span", 240],
    ["Length", 960],
    ["Pitch", 8],
    ["Hip head", "ridge"],
    ["Spacing", 16],
  ],
  metric: [
    ["Span", "7.2 m"],
    ["Length", "10.3 m"],
    ["Pitch", 7],
    ["Overhang", "400 mm"],
  ],
  "a list": [
    ["Piece", "Size", "Length", "Count"],
    ["block", "2x4", 14.5, 40],
    ['<b> & "plate"', "2x4", 93, 6],
    ["W".repeat(40), "beam of our own", 60, 3],
  ],
};

async function sheetOf(name: string): Promise<CuttingDrawing> {
  const order = await orderFor(BLOCKS[name], name === "metric" ? "3.6 m to 7.2 m by 0.6 m" : `10' to 24' by 2'`);
  if (!("plan" in order)) throw new Error(JSON.stringify(order));
  return cuttingDrawing(order);
}

const draw = ({ sticks, unit }: CuttingDrawing, width = 640, theme: "print" | "screen" = "print") =>
  drawSticks(sticks, { width, theme, length: (value) => lengthText(value, unit) });
const named = (name: string) => name.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);

describe("drawSticks", () => {
  it.each(Object.keys(BLOCKS))("%s: every drawn point is where the plan says, on the near face", async (name) => {
    const sheet = await sheetOf(name);
    const drawn = drawnBoards(draw(sheet));
    for (const stick of sheet.sticks) {
      const [board, ...pieces] = drawn.filter(({ view }) => view.name === `board ${stick.number}`);
      const outline = board!.points.map((point) => measured(board!, point));
      expect(Math.max(...outline.map(({ x }) => x)) - Math.min(...outline.map(({ x }) => x))).toBeCloseTo(
        stick.length,
        1,
      );
      if (stick.depth !== null) expect(Math.max(...outline.map(({ y }) => y))).toBeCloseTo(stick.depth, 1);
      expect(pieces.map(({ piece, hand }) => [piece, hand])).toEqual(
        stick.pieces.map((one) => [named(one.name), one.hand]),
      );
      for (const [i, piece] of stick.pieces.entries()) {
        const points = pieces[i]!.points.map((point) => measured(pieces[i]!, point));
        const lean = stick.depth === null ? 0 : piece.lean / stick.depth;
        // Plumb cuts are lines of x - y tan A; the near face is the right one, so a left piece is short there.
        const cuts = points.filter(({ x }) => x > 0.01 && x < stick.length - 0.01).map(({ x, y }) => x - y * lean);
        const short = piece.hand === "left" ? piece.slants[1] : 0;
        const [tail, head] = piece.flipped
          ? [piece.end, piece.start + short]
          : [piece.start - piece.lean, piece.end - short - piece.lean];
        for (const cut of cuts)
          expect(
            Math.min(Math.abs(cut - tail), Math.abs(cut - head)),
            `${name}, board ${stick.number}, ${piece.name}`,
          ).toBeLessThan(0.01 * Math.max(1, stick.length / 240));
        // A part of the ridge may fill its board, and then has no cut.
        if (stick.leftOver > 0.1) expect(cuts.length).toBeGreaterThanOrEqual(stick.pieces.length === 1 ? 1 : 2);
        for (const { x } of points) expect(x).toBeGreaterThan(-0.01);
      }
    }
  });

  it("is to one scale for all boards, and the longest fills the width", async () => {
    const drawn = drawnBoards(draw(await sheetOf("regular"), 500));
    expect(new Set(drawn.map(({ view }) => view.scale)).size).toBe(1);
    const xs = drawn.flatMap(({ points }) => points.map(({ x }) => x));
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(498, 0);
  });

  it("draws a dashed far side for each turned head, and no line of the hatching within a piece", async () => {
    const sheet = await sheetOf("regular");
    const svg = draw(sheet);
    const turned = sheet.sticks.flatMap(({ pieces }) => pieces).filter(({ slants }) => slants[1] !== 0);
    expect(svg.match(/stroke-dasharray/g)).toHaveLength(turned.length);
    // A hatching line is one that neither stands, lies, nor ticks: it falls at 45 degrees over more than three pixels.
    const hatching = [...svg.matchAll(/<polyline points="([\d.,\- ]+)" style="stroke:#555"\/>/g)]
      .map(([, points]) => points!.split(" ").map((pair) => pair.split(",").map(Number) as [number, number]))
      .filter(
        ([[x1, y1] = [0, 0], [x2, y2] = [0, 0]]) =>
          Math.abs(x2 - x1) > 3 && Math.abs(Math.abs(x2 - x1) - Math.abs(y2 - y1)) < 0.01,
      );
    expect(hatching.length).toBeGreaterThan(10);
    const boards = drawnBoards(svg);
    for (const line of hatching) {
      const [x, y] = [(line[0]![0] + line[1]![0]) / 2, (line[0]![1] + line[1]![1]) / 2];
      const on = boards.filter(
        ({ piece, points }) =>
          piece !== "" &&
          points.every((point, i) => {
            const next = points[(i + 1) % points.length]!;
            return (next.x - point.x) * (y - point.y) - (next.y - point.y) * (x - point.x) < -0.5;
          }),
      );
      expect(on).toEqual([]);
    }
  });

  it("says how many boards are alike, with lengths, hands and what is left over", async () => {
    const sheet = await sheetOf("regular");
    const texts = drawnTexts(draw(sheet, 900)).map(({ text }) => text);
    const many = sheet.sticks.find(({ times }) => times > 1)!;
    expect(
      texts.some((text) =>
        text.startsWith(
          `Boards ${many.number} to ${many.number + many.times - 1}, ${many.times} times: ${many.size}, `,
        ),
      ),
    ).toBe(true);
    for (const { pieces, leftOver } of sheet.sticks) {
      expect(texts.some((text) => text.includes(`left over ${lengthText(leftOver, "in")}`))).toBe(true);
      for (const { name, hand, start, end } of pieces) {
        const mark = hand === "plain" ? name : `${name} ${hand === "left" ? "L" : "R"}`;
        expect(texts.some((text) => text.includes(mark) && text.endsWith(lengthText(end - start, "in")))).toBe(true);
      }
    }
  });

  it.each(Object.keys(BLOCKS).flatMap((name) => [320, 640, 1000].map((width) => [name, width] as const)))(
    "%s at %i px: texts stand clear of one another on the sheet",
    async (name, width) => {
      const svg = draw(await sheetOf(name), width);
      const { height } = drawnSize(svg);
      const texts = drawnTexts(svg);
      for (const [i, one] of texts.entries()) {
        expect(
          one.left > -0.01 && one.right < width + 0.01 && one.top > -0.01 && one.bottom < height + 0.01,
          one.text,
        ).toBe(true);
        for (const other of texts.slice(i + 1))
          expect(
            one.left < other.right - 0.01 &&
              other.left < one.right - 0.01 &&
              one.top < other.bottom - 0.01 &&
              other.top < one.bottom - 0.01,
            `"${one.text}" on "${other.text}"`,
          ).toBe(false);
      }
    },
  );

  it("is whole, black and white in print, and takes a name for what it is, not for markup", async () => {
    const svg = draw(await sheetOf("a list"));
    expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*><title>[^<]+<\/title><desc>[^<]+<\/desc>/);
    expect(svg).not.toMatch(/NaN|undefined|Infinity|null|<b>| id=/);
    expect(new Set(svg.match(/(?:fill|stroke):[^;"]+/g)!.map((style) => style.split(":")[1]))).toEqual(
      new Set(["#000", "#fff", "#555", "none"]),
    );
    expect(draw(await sheetOf("regular"), 640, "screen")).not.toMatch(/:#/);
  });

  it("counts neighbors that are alike, and only neighbors", () => {
    const piece = (name: string, start: number) => ({
      name,
      hand: "plain" as const,
      start,
      end: start + 20,
      flipped: false,
      lean: 0,
      slants: [0, 0] as const,
    });
    const stick: Stick = {
      number: 1,
      times: 1,
      size: "2x4",
      length: 120,
      depth: 3.5,
      leftOver: 20,
      pieces: [piece("a", 0), piece("a", 20), piece("b", 40), piece("a", 60), piece("a", 80)],
    };
    const texts = drawnTexts(drawSticks([stick], { width: 640, length: String })).map(({ text }) => text);
    expect(texts.filter((text) => text === "2 × a, each 20")).toHaveLength(2);
    expect(texts).toContain("b 20");
  });
});

describe("stickPages", () => {
  it.each([
    ["letter", "8.5in 11in"],
    ["A4", "8.267"],
  ] as const)("is a whole document on %s with every board once, its notes and the cautions", async (paper, size) => {
    const { sticks, unit, notes } = await sheetOf("hips on the ridge, a joined ridge");
    const html = stickPages(sticks, { paper, length: (value) => lengthText(value, unit), notes });
    expect(html).toMatch(/^<!doctype html>/);
    expect(html).toContain(`@page{size:${size}`);
    expect(html.match(/<figure>/g)).toHaveLength(sticks.length);
    expect(html).toContain("break-inside:avoid");
    expect(notes.some((note) => note.includes("joined over rafters"))).toBe(true);
    expect(html.replaceAll("\u00a0", " ")).toContain(notes[0]!.replaceAll('"', "&#34;"));
    expect(html).toMatch(/blade guard, eye protection/);
    // All boards to one scale, whichever svg they stand in.
    expect(new Set([...html.matchAll(/data-scale="([^"]+)"/g)].map(([, scale]) => scale)).size).toBe(1);
    expect(html).not.toMatch(/https?:\/\/(?!www\.w3\.org)/);
  });
});

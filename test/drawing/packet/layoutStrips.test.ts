import { describe, expect, it } from "vitest";
import { layoutStrips } from "../../../src/drawing/packet/layoutStrips.ts";
import { inches } from "../allDrawings.ts";

// CSS has 96 pixels to an inch, and an inch 25.4 mm.
const PIXELS = 96;

const LIST = {
  name: "Main",
  hook: "hook at the left corner",
  marks: [
    { name: "J2 R", from: 23.25, to: 24.75 },
    { name: "K", from: 71.25, to: 72.75 },
  ],
};

/** Every strip of the pages: heavy lines, from its upper end down, in pixels. */
function heavy(pages: readonly string[]): number[][] {
  return pages.flatMap((page) =>
    page
      .split('<g transform="translate(')
      .slice(1)
      .map((strip) =>
        [...strip.matchAll(/<path d="M0 ([\d.]+)H[\d.]+" stroke-width="1.6"/g)].map(([, y]) => Number(y)),
      ),
  );
}

describe("layoutStrips", () => {
  it("puts every mark at its true distance from the hook, strips end to end", () => {
    const pages = layoutStrips([LIST], { paper: "letter", unit: "in", length: inches });
    const strips = heavy(pages);
    const long = Number(/height="(\d+)" stroke-dasharray/.exec(pages[0]!)![1]) / PIXELS;
    expect(long).toBe(9);
    const found = strips.flatMap((own, i) => own.map((y) => i * long + y / PIXELS));
    expect(found).toEqual([23.25, 71.25]);
    expect(strips).toHaveLength(Math.ceil(73.75 / 9));
  });
  it("writes the names of pieces at one place under one another", () => {
    const marks = ["VJ1 L", "VJ1 R"].map((name) => ({ name, from: 2, to: 3.5 }));
    const [page] = layoutStrips([{ ...LIST, marks }], { paper: "letter", unit: "in", length: inches });
    const at = ["VJ1 L", "VJ1 R"].map((name) => Number(new RegExp(`y="([\\d.]+)"[^>]*>${name}<`).exec(page!)![1]));
    expect(at[1]! - at[0]!).toBe(13);
  });
  it("draws a place without a board on it, an inner corner, as one line with its name", () => {
    const marks = [{ name: "VL-A L", from: 5, to: 5 }];
    const [page] = layoutStrips([{ ...LIST, marks }], { paper: "letter", unit: "in", length: inches });
    expect(page).not.toContain("NaN");
    expect(page!.match(/<path d="M0 480H\d+"/g)).toHaveLength(1);
    expect(page).toContain(">VL-A L<");
  });
  it("has a line to check the printer by on each page: 6 in, or 150 mm", () => {
    for (const [unit, pixels] of [
      ["in", 6 * PIXELS],
      ["mm", (150 / 25.4) * PIXELS],
    ] as const) {
      const list = unit === "in" ? LIST : { ...LIST, marks: [{ name: "K", from: 3000, to: 3038 }] };
      for (const paper of ["letter", "A4"] as const) {
        const pages = layoutStrips([list], { paper, unit, length: String });
        expect(pages.length).toBeGreaterThan(1);
        for (const page of pages) expect(Number(/M1 [\d.]+h([\d.]+)m0 -6v12/.exec(page)![1])).toBeCloseTo(pixels, 6);
      }
    }
  });
  it("shows the size of its picture as the size it is drawn at, so that nothing scales it", () => {
    for (const page of layoutStrips([LIST], { paper: "A4", unit: "in", length: inches })) {
      const [, width, height, box] = /width="(\d+)" height="(\d+)" viewBox="0 0 ([\d ]+)"/.exec(page)!;
      expect(box).toBe(`${width} ${height}`);
    }
  });
});

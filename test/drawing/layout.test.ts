import { describe, expect, it } from "vitest";
import { allDrawings, ROOFS } from "./allDrawings.ts";
import { faults } from "./faults.ts";
import { drawnSize } from "./readDrawing.ts";
import { struckTexts } from "./struckTexts.ts";

// Marks among many boards, and numbers on sheets that a hip runs over, may break lines off behind them. Nothing else needs to.
const crowded = /^(plan( in small room)?|corner|frame|courses|set out)$/;

describe("texts of every drawing", () => {
  const cases = Object.entries(ROOFS).flatMap(([name, spec]) =>
    [288, 320, 400, 640, 1000].map((width) => [name, width, spec] as const),
  );
  it.each(cases)("stand clear of one another and of lines, or break them off, %s at %i px", (name, width, spec) => {
    for (const [drawing, svg] of allDrawings(spec, { width })) {
      expect([drawing, faults(svg)]).toEqual([drawing, []]);
      const struck = struckTexts(svg);
      expect([drawing, struck.filter(({ backed }) => !backed)]).toEqual([drawing, []]);
      if (!crowded.test(drawing) && width > (name === "small" ? 320 : 288))
        expect([drawing, struck]).toEqual([drawing, []]);
    }
  });

  it.each(Object.entries(ROOFS))("stand clear on the small drawings of cards, %s", (_, spec) => {
    for (const [drawing, svg] of allDrawings(spec, { width: 345, brief: true, theme: "print" })) {
      expect([drawing, faults(svg)]).toEqual([drawing, []]);
      if (!crowded.test(drawing)) expect([drawing, struckTexts(svg)]).toEqual([drawing, []]);
    }
  });

  it("are never smaller than 9 px, and the drawing is as wide as asked", () => {
    for (const width of [320, 480, 1000]) {
      for (const [, svg] of allDrawings(ROOFS["large and dense"]!, { width })) {
        expect(drawnSize(svg).text).toBeGreaterThanOrEqual(9);
        expect(drawnSize(svg).width).toBe(width);
        expect(svg.match(/font-size/g)).toHaveLength(1);
      }
    }
  });

  it("finds two texts on one another, so it would find them in a drawing", () => {
    const root = '<svg width="100" height="50" font-size="10">';
    expect(
      faults(`${root}<text><tspan x="0" y="20">Long point</tspan><tspan x="30" y="22">Tape</tspan></text></svg>`),
    ).toEqual(['"Long point" on "Tape"']);
    expect(faults(`${root}<text x="90" y="20">Long point</text></svg>`)).toEqual(['"Long point" leaves the sheet']);
    expect(
      faults(
        `${root}<text text-anchor="end" transform="rotate(-90)"><tspan x="-10" y="20">K</tspan></text><text><tspan x="14" y="15">C</tspan></text></svg>`,
      ),
    ).toEqual(['"K" on "C"']);
  });
});

describe("lines of every drawing", () => {
  it("that strike a text through are found, whole boards and what shows of them in an opening", () => {
    const root = '<svg width="100" height="50" font-size="10">';
    const text = '<text><tspan x="10" y="20">Tail</tspan></text>';
    const struck = [{ text: "Tail", backed: false }];
    expect(struckTexts(`${root}<polyline points="15,0 15,50"/>${text}</svg>`)).toEqual(struck);
    expect(struckTexts(`${root}<polygon points="0,0 15,0 15,50 0,50"/>${text}</svg>`)).toEqual(struck);
    expect(struckTexts(`${root}<polygon points="0,15 50,15 50,50"/>${text}</svg>`)).toEqual(struck);
    expect(
      struckTexts(
        `${root}<svg x="30" y="0" width="50" height="50"><polygon points="0,15 50,15 50,50"/></svg>${text}</svg>`,
      ),
    ).toEqual([]);
    expect(struckTexts(`${root}<polyline points="0,23 50,23"/>${text}</svg>`)).toEqual([]);
    expect(
      struckTexts(
        `${root}<polyline points="15,0 15,50"/><rect data-backing="" x="9" y="12" width="30" height="11"/>${text}</svg>`,
      ),
    ).toEqual([{ text: "Tail", backed: true }]);
  });
});

describe("every drawing", () => {
  it.each(Object.entries(ROOFS))("says what it is and is whole, %s", (_, spec) => {
    for (const [, svg] of allDrawings(spec, { width: 320 })) {
      expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*><title>[^<]+<\/title><desc>[^<]+<\/desc>/);
      expect(svg).not.toMatch(/NaN|undefined|Infinity|null/);
      // No name that could clash with another drawing's on the same page.
      expect(svg).not.toMatch(/ id=/);
    }
  });

  it("is black and white for print, and follows the page's colors on a screen", () => {
    for (const [, svg] of allDrawings(ROOFS["regular"]!, { width: 640, theme: "print" }))
      expect(new Set(svg.match(/(?:fill|stroke):[^;"]+/g)!.map((style) => style.split(":")[1]))).toEqual(
        new Set([...["#000", "#fff", "#555", "none"].filter((color) => svg.includes(`:${color}`))]),
      );
    for (const [, svg] of allDrawings(ROOFS["regular"]!, { width: 640 })) expect(svg).not.toMatch(/:#/);
  });

  it("writes nothing of its own accord: a length's text may hold anything", () => {
    for (const [, svg] of allDrawings(ROOFS["regular"]!, { width: 640, length: () => '<b>&"' }))
      expect(svg).not.toContain("<b>");
  });
});

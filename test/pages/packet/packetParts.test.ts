import { describe, expect, it } from "vitest";
import { jackTable } from "../../../functions/jackTable.ts";
import { members } from "../../../functions/members.ts";
import { plateMarks } from "../../../functions/plateMarks.ts";
import { plateStrips } from "../../../functions/plateStrips.ts";
import { layoutStrips } from "../../../src/drawing/packet/layoutStrips.ts";
import { lengthText } from "../../../src/measure/lengthText.ts";
import { Failure } from "../../../src/measure/result.ts";
import { columnAt } from "../../../src/registry/columns.ts";
import type { TableFunction } from "../../../src/registry/worksheetFunction.ts";
import { packetAsked, roofAsked } from "../../../src/pages/packet/packetAsked.ts";
import { PARTS, type PartName } from "../../../src/pages/packet/packetOf.ts";
import { packetPage } from "../../../src/pages/packet/packetParts.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { evaluateFunction, type Table } from "../../../src/pane/state/evaluateFunction.ts";
import type { Inputs } from "../../../src/pane/state/fields.ts";
import { orderNow } from "../../../src/pane/state/orderNow.ts";
import { printAddress, sawAddress } from "../../../src/pane/writing/printAddress.ts";
import { PACKET_ROOFS, typed } from "./roofs.ts";

const ALL = new Set(Object.keys(PARTS) as PartName[]);
const hashOf = (inputs: Inputs) => printAddress(typed(inputs), { packet: true }).replace(/^[^#]*/, "");

async function made(inputs: Inputs, paper: "letter" | "A4", parts: ReadonlySet<PartName> = ALL) {
  const { model, kerf, kerfWidth } = packetAsked(hashOf(inputs))!;
  return packetPage({
    inputs,
    model,
    packet: { job: model.job, date: "Nov 26, 2026", stamp: "A2B3C" },
    order: parts.has("shopping") || parts.has("cutting") ? await orderNow({ inputs, kerf }) : null,
    kerf: kerfWidth,
    parts,
    paper: { paper, perPage: 2 },
  });
}

const plain = (html: string) =>
  html
    .replaceAll("\u00a0", " ")
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");
const sheets = (html: string) => plain(html).split("<section ").slice(1);
const named = (html: string, name: string) =>
  sheets(html)
    .filter((sheet) => sheet.includes(`data-sheet="${name}"`))
    .join("");

describe("packetPage", () => {
  it.each(["sample", "winged", "metric"] as const)(
    "has the figures of the cells in it, of the %s roof",
    async (name) => {
      const inputs = PACKET_ROOFS[name];
      const unit = "Unit" in inputs && inputs.Unit === "mm" ? "mm" : "in";
      const html = await made(inputs, "A4", new Set(["title", "schedule", "marks", "cards"] as const));
      const figures = (definition: TableFunction, headings: readonly string[]) => {
        const [, ...rows] = evaluateFunction(definition, [blockRows(inputs)]) as Table;
        return rows.map((row) =>
          headings.map((heading) => {
            const cell = row[columnAt(definition.columns, heading)]!;
            return typeof cell === "number" ? lengthText(cell, unit) : cell;
          }),
        );
      };
      const rowsOf = (sheet: string) =>
        [...sheet.matchAll(/<tr(?: class="noted")?>(.*?)<\/tr>/g)].map(([, row]) =>
          [...row!.matchAll(/<td[^>]*>(.*?)<\/td>/g)].map(([, cell]) => cell),
        );
      const schedule = rowsOf(named(html, "Schedule"));
      const onSheet = (rows: readonly unknown[][], wanted: readonly unknown[]) =>
        rows.some((row) => wanted.every((cell) => row.includes(cell)));
      for (const wanted of figures(members, ["Piece", "Long point", "Shortest board"]))
        expect([wanted, onSheet(schedule, wanted)]).toEqual([wanted, true]);
      for (const wanted of figures(jackTable, ["Piece", "Short point"]))
        expect([wanted, onSheet(schedule, wanted)]).toEqual([wanted, true]);
      const marks = rowsOf(named(html, "Plate marks"));
      for (const wanted of figures(plateMarks, ["Plate", "Mark", "Member"]))
        expect([wanted, onSheet(marks, wanted)]).toEqual([wanted, true]);
      const cards = named(html, "Cut cards");
      for (const [, long] of figures(members, ["Piece", "Long point"])) expect(cards).toContain(`<dd>${long}</dd>`);
    },
  );

  it("says on every page whose it is, its stamp, its date and which of how many, and where each part is", async () => {
    const html = await made(PACKET_ROOFS.sample, "letter");
    const pages = sheets(html);
    pages.forEach((page, i) => {
      for (const text of ["Weighhouse, north roof", "A2B3C", "Nov 26, 2026", `${i + 1} of ${pages.length}`])
        expect([i, page.includes(`<b>${text}</b>`)]).toEqual([i, true]);
    });
    const [, inside] = /In this packet: ([^<]*)\.</.exec(pages[0]!)!;
    for (const one of inside!.split("; ")) {
      const [, name, from] = /^(.*) pages? (\d+)/.exec(one)!;
      expect(pages[Number(from) - 1]).toContain(`data-sheet="${name}"`);
      expect(pages[Number(from) - 2]).not.toContain(`data-sheet="${name}"`);
    }
  });

  it("has no text under 8 points and no color", async () => {
    const html = await made(PACKET_ROOFS.winged, "letter");
    const sizes = [...html.matchAll(/font(?:-size)?[=:]"?([\d.]+)(p[xt])?/g)].map(([, size, unit]) =>
      unit === "pt" ? Number(size) : (Number(size) * 72) / 96,
    );
    expect(sizes.length).toBeGreaterThan(50);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(8);
    for (const [, color] of html.matchAll(/#([0-9a-f]{3}|[0-9a-f]{6})\b/g)) {
      const part = color!.length / 3;
      expect(color!.slice(0, part)).toBe(color!.slice(part, 2 * part));
      expect(color!.slice(0, part)).toBe(color!.slice(2 * part));
    }
  });

  it("ends the cutting plan with what is left of each board, less the cut that parts it", async () => {
    const inputs = PACKET_ROOFS.sample;
    const order = await orderNow({ inputs, kerf: "" });
    if (order instanceof Failure) throw new Error("no order");
    const kept = order.plan.sticks
      .map(({ leftOver }) => Math.floor((leftOver - 1 / 8) * 16 + 1e-9) / 16)
      .filter((left) => left >= 12);
    expect(kept.length).toBeGreaterThan(0);
    const sheet = named(await made(inputs, "letter", new Set(["cutting"] as const)), "Cutting plan");
    const list = sheet.slice(sheet.indexOf("Off-cuts to keep"));
    for (const left of kept) expect(list).toContain(lengthText(left, "in"));
  });

  it("draws the plates on its strips as the pane does, an inner corner as one line", async () => {
    const inputs = PACKET_ROOFS.winged;
    const { frame } = packetAsked(hashOf(inputs))!.model;
    const plates = plateStrips(frame);
    expect(plates.flatMap(({ marks }) => marks).some(({ from, to }) => from === to)).toBe(true);
    const html = await made(inputs, "letter", new Set(["strips"] as const));
    for (const page of layoutStrips(plates, {
      paper: "letter",
      unit: "in",
      length: (value) => lengthText(value, "in"),
    }))
      expect(html.includes(page)).toBe(true);
  });

  it("holds what is chosen only", async () => {
    const html = await made(PACKET_ROOFS.sample, "letter", new Set(["marks"] as const));
    expect(sheets(html).every((sheet) => sheet.includes('data-sheet="Plate marks"'))).toBe(true);
    expect(sheets(await made(PACKET_ROOFS.sample, "letter", new Set()))).toEqual([]);
  });

  it("makes pages of a roof of some 500 pieces, and of a name of 10,000 letters", async () => {
    const long = await made(
      PACKET_ROOFS.long,
      "letter",
      new Set(["title", "schedule", "marks", "labels", "cards"] as const),
    );
    const { pieces } = packetAsked(hashOf(PACKET_ROOFS.long))!.model;
    const all = pieces.reduce((sum, { left, right, plain: none }) => sum + left + right + none, 0);
    expect(all).toBeGreaterThan(500);
    expect(long.match(/class="sticker"/g)).toHaveLength(all);
    const name = await made(PACKET_ROOFS.winged, "letter", new Set(["title"] as const));
    expect(name).not.toMatch(/W{100}/);
  });
});

describe("the roof behind the # of an address", () => {
  it("is the very one that was typed, for paper and for the saw", () => {
    const { model } = packetAsked(hashOf(PACKET_ROOFS.winged))!;
    expect(model.frame.spec.wings).toHaveLength(1);
    expect(packetAsked(sawAddress("saw.html", typed(PACKET_ROOFS.sample)).replace(/^[^#]*/, ""))).toBeNull();
    expect(roofAsked(sawAddress("saw.html", typed(PACKET_ROOFS.sample)).replace(/^[^#]*/, ""))!.model.job).toBe(
      "Weighhouse, north roof",
    );
  });
  it.each(["", "#", "#%", "#{}", "#null", '#{"packet":true}', hashOf({ ...PACKET_ROOFS.sample, Span: "none" })])(
    "is none for %j",
    (hash) => {
      expect(packetAsked(hash)).toBeNull();
    },
  );
});

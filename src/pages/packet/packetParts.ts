import { cautions } from "../../../functions/cautions.ts";
import { members } from "../../../functions/members.ts";
import { jackTable } from "../../../functions/jackTable.ts";
import { plateMarks } from "../../../functions/plateMarks.ts";
import { plateStrips } from "../../../functions/plateStrips.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import { cardSheets } from "../../drawing/cards/cardPages.ts";
import { drawSticks } from "../../drawing/cards/drawSticks.ts";
import { WORDS } from "../../drawing/canvas/words.ts";
import { labelSheets } from "../../drawing/packet/labelSheets.ts";
import { layoutStrips } from "../../drawing/packet/layoutStrips.ts";
import { drawn, heading, paragraph, tableRows, tickBoxes } from "../../drawing/packet/packetBlocks.ts";
import { packetPages, type PacketPart } from "../../drawing/packet/packetPages.ts";
import { packetWords as words } from "../../drawing/packet/packetWords.ts";
import { flowed, roomOf, type Block, type Rows } from "../../drawing/packet/pageFlow.ts";
import type { PlateStrip } from "../../drawing/views/drawPlates.ts";
import { ridgeMarks } from "../../drawing/views/drawRidge.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { TableFunction } from "../../registry/worksheetFunction.ts";
import { tableTexts } from "../../pane/controls/tableTexts.ts";
import { blockRows } from "../../pane/state/blockCells.ts";
import { evaluateFunction, type Table } from "../../pane/state/evaluateFunction.ts";
import { kerfText, type Order } from "../../pane/state/orderNow.ts";
import { texts } from "../../pane/words/texts.ts";
import { cardsOf } from "../../pane/writing/cards.ts";
import { offCutList } from "../../pane/writing/planLists.ts";
import { PARTS, type PacketOf, type PartName } from "./packetOf.ts";
import { titlePages } from "./titlePage.ts";

/** A packet as one printable document. */
export function packetPage(given: PacketOf): string {
  const rest = (Object.keys(PARTS) as PartName[])
    .filter((name) => name !== "title")
    .filter((name) => given.parts.has(name))
    .map((name) => partOf(name, given))
    .filter(({ pages }) => pages.length > 0);
  const room = roomOf(given.paper.paper);
  const title: PacketPart[] = given.parts.has("title")
    ? [{ name: words.parts.title, kind: "flow", pages: titlePages(given, rest, room) }]
    : [];
  return packetPages([...title, ...rest], given.paper, given.packet);
}

function partOf(part: Exclude<PartName, "title">, given: PacketOf): PacketPart {
  const { paper, model, packet, order } = given;
  const room = roomOf(paper.paper);
  const { unit } = model.frame.spec;
  const flow = (blocks: readonly (Block | Rows)[]): PacketPart => ({
    name: words.parts[part],
    kind: "flow",
    pages: flowed([heading(words.parts[part], room.width), ...blocks], room.height),
  });
  const sticks = order && !(order instanceof Failure) ? { sticks: order.plan.sticks } : {};
  switch (part) {
    case "schedule":
      return flow(scheduleBlocks(given, room.width));
    case "marks":
      return flow([
        paragraph(words.plateLead, room.width),
        ...tableBlocks(plateMarks, given, MARK_COLUMNS, room.width),
      ]);
    case "shopping":
      return flow(shoppingBlocks(given, room.width));
    case "cutting":
      return flow(cuttingBlocks(given, room.width));
    case "cautions":
      return flow([
        ...texts.cautions.map((text) => paragraph(text, room.width)),
        ...tableBlocks(cautions, given, CAUTION_COLUMNS, room.width),
      ]);
    case "cards":
      return {
        name: words.parts.cards,
        kind: "cards",
        pages: cardSheets(cardsOf(model, { packet, ...sticks }), { ...paper, room }),
      };
    case "labels":
      return { name: words.parts.labels, kind: "stickers", pages: labelSheets(model.pieces, packet, paper.paper) };
    case "strips":
      return {
        name: words.parts.strips,
        kind: "flow",
        pages: layoutStrips(stripLists(model), {
          paper: paper.paper,
          unit,
          length: (value) => lengthText(value, unit),
        }),
      };
  }
}

const MARK_COLUMNS = ["Plate", "Mark", "Member", "Bay", "Edge"];
const CAUTION_COLUMNS = ["Check", "Here", "Published", "Source", "Remark"];
const MEMBER_COLUMNS = [
  "Piece",
  "Member",
  "Side",
  "Size",
  "Left",
  "Right",
  "Plain",
  "Long point",
  "Shortest board",
  "Head cut",
  "Saw tilt",
];
const JACK_COLUMNS = [
  "Piece",
  "Side",
  "Left",
  "Right",
  "Long point",
  "Short point",
  "Tape",
  "Plate mark",
  "Hip mark",
  "Saw tilt",
];

/** A table of a worksheet function, as its cells are, read on the tape; its notes stand under their rows. */
function tableBlocks(
  definition: TableFunction,
  { inputs, model }: PacketOf,
  wanted: readonly string[],
  width: number,
): (Block | Rows)[] {
  const table = evaluateFunction(definition, [blockRows(inputs)]) as Result<Table>;
  if (table instanceof Failure) return [paragraph(fieldText(table), width)];
  const { unit } = model.frame.spec;
  const noted = definition.columns.some(({ heading: name }) => name === "Note");
  const notes = noted ? tableTexts(definition.columns, table, unit, ["Note"]).rows.map(([note]) => note!) : [];
  return [tableRows({ ...tableTexts(definition.columns, table, unit, wanted), notes }, width)];
}

function scheduleBlocks(given: PacketOf, width: number): (Block | Rows)[] {
  return [
    ...tableBlocks(members, given, MEMBER_COLUMNS, width),
    heading(texts.tables.schedule, width),
    ...tableBlocks(jackTable, given, JACK_COLUMNS, width),
  ];
}

function shoppingBlocks({ order, model }: PacketOf, width: number): (Block | Rows)[] {
  if (order === null || order instanceof Failure) return [paragraph(whyNone(order), width)];
  const { unit } = model.frame.spec;
  const length = (value: number) => lengthText(value, unit);
  const all = unit === "mm" ? texts.meters(order.length / 1000) : length(order.length);
  return [
    ...order.plan.missing.map((why) => paragraph(texts.boardsTooShort(why), width, "caution")),
    tableRows(
      {
        headings: words.shoppingColumns,
        rows: order.lines.map(({ size, board, count, waste, leftOver }) => [
          String(count),
          size,
          length(board),
          waste === 0 ? "" : String(waste),
          length(leftOver),
        ]),
        numbers: [true, false, true, true, true],
        ticks: true,
      },
      width,
    ),
    paragraph(words.total(order.boards, all), width),
    paragraph(texts.sentence(order.proof), width),
  ];
}

const whyNone = (order: Result<Order> | null) =>
  order instanceof Failure ? words.noOrder(fieldText(order)) : words.noPlan;

function cuttingBlocks({ order, model, kerf }: PacketOf, width: number): (Block | Rows)[] {
  if (order === null || order instanceof Failure) return [paragraph(words.noPlan, width)];
  const { spec } = model.frame;
  const length = (value: number) => lengthText(value, spec.unit);
  const { sticks, missing, notes } = order.plan;
  const longest = Math.max(...sticks.map((stick) => stick.length));
  const left = offCutList(order, spec.unit, kerf);
  return [
    ...[
      texts.planFor(length(spec.span), length(spec.length), kerfText(kerf, spec.unit)),
      WORDS.sticks.key,
      WORDS.handSeen,
    ].map((text) => paragraph(text, width)),
    ...[...missing, ...notes].map((text) => paragraph(texts.sentence(text), width)),
    ...sticks.map((stick) => {
      const { html, height } = tickBoxes(stick.times, width, words.done);
      return drawn(drawSticks([stick], { width, length, theme: "print", brief: true, longest }), html, height);
    }),
    heading(left.title, width),
    left.rows.length === 0
      ? paragraph(left.none, width)
      : tableRows({ ...left, numbers: [true, false, true, false], ticks: true }, width),
  ];
}

/** Every plate's marks, and the ridge's, which on a roof without wings stand on its card alone. */
function stripLists({ frame, pieces }: RoofModel): PlateStrip[] {
  const ridge = pieces.find(({ member }) => member === "ridge");
  if (!ridge || frame.spec.wings.length > 0) return plateStrips(frame);
  const marks = ridgeMarks(frame, ridge).map(({ mark, from, to }) => ({ name: mark, from, to }));
  return [...plateStrips(frame), { name: WORDS.ridge, hook: words.ridgeHook, marks }];
}

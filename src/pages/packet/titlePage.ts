import { cautions } from "../../../functions/cautions.ts";
import { members } from "../../../functions/members.ts";
import { figure } from "../../drawing/canvas/figure.ts";
import { firstDrawn } from "../../drawing/canvas/firstDrawn.ts";
import { drawn, heading, paragraph, tableRows } from "../../drawing/packet/packetBlocks.ts";
import type { PacketPart } from "../../drawing/packet/packetPages.ts";
import { packetWords as words } from "../../drawing/packet/packetWords.ts";
import { flowed, type Block, type Room, type Rows } from "../../drawing/packet/pageFlow.ts";
import { drawPlan } from "../../drawing/views/drawPlan.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Failure, type Result } from "../../measure/result.ts";
import { columnAt } from "../../registry/columns.ts";
import { tableTexts } from "../../pane/controls/tableTexts.ts";
import { blockRows } from "../../pane/state/blockCells.ts";
import { evaluateFunction, type Table } from "../../pane/state/evaluateFunction.ts";
import { texts } from "../../pane/words/texts.ts";
import type { PacketOf } from "./packetOf.ts";

/** Part of the page's height that the plan may take, and parts of its width, the first that the height allows. */
const PLAN = 0.55;
const WIDTHS = [0.99, 0.9, 0.8, 0.7, 0.62, 0.55, 0.48, 0.4];

/** The first page, which may go on on more: whose roof, where everything goes, what is outside a published figure, every piece, and on which pages the other parts are. */
export function titlePages(
  { inputs, model, packet }: PacketOf,
  rest: readonly PacketPart[],
  { width, height }: Room,
): string[] {
  const { frame, pieces } = model;
  const { spec } = frame;
  const length = (value: number) => lengthText(value, spec.unit);
  const read = (definition: typeof members) => {
    const table = evaluateFunction(definition, [blockRows(inputs)]) as Result<Table>;
    return table instanceof Failure ? null : table;
  };
  const figures = read(cautions);
  const remark = columnAt(cautions.columns, "Remark");
  const outside = figures?.slice(1).filter((row) => String(row[remark]).startsWith("OUTSIDE")) ?? [];
  const listed = read(members);
  const blocks: (Block | Rows)[] = [
    heading(packet.job === "" ? words.untitled : packet.job, width, "title"),
    paragraph(
      words.roof({
        span: length(spec.span),
        length: length(spec.length),
        pitch: figure(spec.pitch * 12),
        spacing: length(spec.spacing),
        overhang: length(spec.overhang),
      }),
      width,
    ),
    paragraph(`${packet.date}. ${words.stamp(packet.stamp)}`, width),
    firstDrawn(
      WIDTHS,
      (part) => drawn(drawPlan(frame, pieces, { width: Math.floor(width * part), length, theme: "print" })),
      (plan) => plan.height <= height * PLAN,
    ),
    ...outside.map((row) =>
      paragraph(
        words.outside(String(row[columnAt(cautions.columns, "Check")]), String(row[remark]).replace("OUTSIDE", "")),
        width,
        "caution",
      ),
    ),
    paragraph(texts.cautionInSheet, width),
  ];
  const list: (Block | Rows)[] = listed
    ? [heading(words.pieces, width), tableRows(tableTexts(members.columns, listed, spec.unit, PIECE_COLUMNS), width)]
    : [];
  const flowedFrom = (first: number) =>
    flowed([...blocks, ...(rest.length === 0 ? [] : [paragraph(insideText(rest, first), width)]), ...list], height);
  // How many pages it takes itself is known once it is laid out.
  return flowedFrom(flowedFrom(2).length + 1);
}

/** Which parts follow, the first of them on this page. */
function insideText(rest: readonly PacketPart[], first: number): string {
  let page = first;
  return words.inside(
    rest.map(({ name, pages }) => {
      const from = page;
      page += pages.length;
      return words.partOn(name, from, page - 1);
    }),
  );
}

const PIECE_COLUMNS = ["Piece", "Member", "Size", "Left", "Right", "Plain", "Long point", "Shortest board"];

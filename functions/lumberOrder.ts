import { roofCells } from "./arguments/roofCells.ts";
import { Failure } from "../src/measure/result.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { boardsParameter } from "./arguments/boardTable.ts";
import { cutOrder, kerfParameter, type CutOrder } from "./arguments/cutOrder.ts";
import { orderLines, type OrderLine } from "./arguments/orderLines.ts";
import { piecesParameter } from "./arguments/pieceList.ts";
import { orderProof, PROVED } from "./words/orderProof.ts";
import { ridgeNote } from "./words/ridgeNote.ts";

/** The last row, null, is the least that any order can come to. */
const columns: readonly Column<OrderLine | null, CutOrder>[] = [
  column("Size", "text", (line) => line?.size ?? "Least possible", 100),
  column("Board", "length", (line) => line?.length ?? ""),
  column("Count", "count", (line) => line?.count ?? ""),
  column("Cost", "money", (line, { plan }) => (line ? line.count * line.price : plan.proved ? plan.cost : plan.bound)),
  column("Used", "length", (line) => line?.used ?? ""),
  column("Left over", "length", (line) => line?.leftOver ?? ""),
  column("Note", "text", (line, order) => (line ? lineNote(line, order) : orderProof(order)), 420),
];

/** A small hip roof, whose figures the examples of MEMBERS show: kings of 80.4984 and 79.6599, hips of 106.875, jacks of 53.3183 and 26.4855 in. */
const small = roofCells({ Span: 144, Length: 144, Pitch: 6, Spacing: 24 });
const list = [
  ["Piece", "Size", "Length", "Count"],
  ["stud", "2x4", 30, 4],
  ["plate", "2x4", 92, 2],
] as const;
const yard = [
  ["Size", "Length", "Price"],
  ["2x4", 96, 4],
  ["2x4", 144, 5.5],
  ["2x4", 192, 8.25],
] as const;
export const lumberOrder = worksheetFunction({
  name: "LUMBERORDER",
  family: "lumber",
  asynchronous: true,
  summary:
    "Boards to buy for a list of pieces or a whole roof at the least cost, with the proof that nothing costs less.",
  parameters: [piecesParameter, boardsParameter, kerfParameter],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings: Used and Left over are lengths over all boards of the row, in the unit of the call. Cost is in the prices given, or without prices the length bought. The last row holds the least cost that any way of cutting can have. Pieces of one size and pitch share their plumb cuts, left and right jacks head to head their slanting cut, with a kerf at every cut; pieces longer than every board are refused, but a roof's ridge is joined at commons. A roof block's Spares are more commons; its Waste adds whole boards in rows of their own, which the plan and the last row do not count.",
  examples: [
    {
      cells: [list, [[96], [144]]],
      result: [
        headings(columns),
        ["2x4", 96, 2, 192, 182.25, 9.75, ""],
        ["2x4", 144, 1, 144, 122.125, 21.875, ""],
        ["Least possible", "", "", 336, "", "", PROVED.length],
      ],
      source:
        "by hand: the pieces are 304 in long, so that 288 in are too few, and the next sum of these boards is 336; 92 + 30 and a kerf of 1/8 fit in 144, and 3 x 30 with two kerfs in 96",
    },
    {
      cells: [list, yard, 0],
      result: [
        headings(columns),
        ["2x4", 96, 2, 8, 182, 10, ""],
        ["2x4", 144, 1, 5.5, 122, 22, ""],
        ["Least possible", "", "", 13.5, "", "", PROVED.cost],
      ],
    },
    {
      cells: [
        small,
        [
          ["Size", "Length"],
          ["2x6", 96],
          ["2x6", 144],
          ["2x8", 120],
          ["2x8", 240],
        ],
      ],
      result: [
        headings(columns),
        ["2x6", 96, 2, 192, 163.2546, 28.7454, ""],
        ["2x6", 144, 6, 864, 803.5409, 60.4591, ""],
        ["2x8", 240, 2, 480, 430.5212, 49.4788, ""],
        ["Least possible", "", "", 1536, "", "", PROVED.length],
      ],
      tolerance: 0.0001,
    },
  ],
  async compute({ pieces, boards, kerf }, reading) {
    const order = await cutOrder(pieces, boards, kerf, reading);
    return order instanceof Failure ? order : tableOf(columns, [...orderLines(order), null], order);
  },
});

/** The first boards of a ridge's size say where it is joined. */
function lineNote({ size, first, waste }: OrderLine, order: CutOrder): string {
  if (waste === null) return first ? ridgeNote(order, size) : "";
  const short = waste.short > 0 ? `; ${waste.short} more are asked than there are` : "";
  return `plus ${order.waste} percent waste, not in the plan and not in the least possible${short}`;
}

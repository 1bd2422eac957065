import { roofCells } from "./arguments/roofCells.ts";
import { Failure } from "../src/measure/result.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { cutOrder, orderParameters, type CutOrder } from "./arguments/cutOrder.ts";
import { orderLines, type OrderLine } from "./arguments/orderLines.ts";
import { noneLongEnough, orderTerms } from "./words/orderNotes.ts";
import { orderProof, PROVED } from "./words/orderProof.ts";
import { joinNote } from "./words/joinNote.ts";

/** What one row shows; blank where it holds nothing. */
interface Row {
  readonly size: string;
  readonly length?: number;
  readonly count?: number;
  readonly cost?: number;
  readonly used?: number;
  readonly leftOver?: number;
  readonly note: string;
  /** Count times board; in the last row the least that can be bought. */
  readonly bought?: number;
}

const columns: readonly Column<Row>[] = [
  column("Size", "text", ({ size }) => size, 100),
  column("Board", "length", ({ length = "" }) => length),
  column("Count", "count", ({ count = "" }) => count),
  column("Cost", "money", ({ cost = "" }) => cost),
  column("Used", "length", ({ used = "" }) => used),
  column("Left over", "length", ({ leftOver = "" }) => leftOver),
  column("Note", "text", ({ note }) => note, 420),
  column("Length bought", "length", ({ bought = "" }) => bought),
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
/** A list's boards count as they are. */
const AS_LISTED = "no end trim";

export const lumberOrder = worksheetFunction({
  name: "LUMBERORDER",
  family: "lumber",
  asynchronous: true,
  summary:
    "Boards to buy for a list of pieces or a whole roof at the least cost, with the proof that nothing costs less.",
  parameters: orderParameters,
  result: "table",
  columns,
  returns:
    "a table that spills, with headings: Used and Left over are lengths over all boards of the row, in the unit of the call; what is trimmed off is in neither. Cost is in the prices given and blank without; Length bought is the boards' own. The first Note says what is taken off the boards and what is allowed. The last row holds the least, in cost or without prices in length, that any way of cutting can have. Pieces of one size and pitch share their plumb cuts, and where a head and a foot slant alike that cut too, with a kerf at every cut; a piece as long as a board takes one untrimmed. crownDown lets left and right jacks share their slanting cut head to head, one of them crown down, where that saves a board or money. A size that no board is long enough for has a row that says none long enough; the others are ordered, and the least is blank. A list of which nothing can be ordered is refused; a ridge, a fascia, or a listed piece with the heading Join is joined where it may be. A roof block's Spares are more commons; its Waste adds whole boards in rows of their own, which the plan and the last row do not count.",
  examples: [
    {
      cells: [list, [[96], [144]]],
      result: [
        headings(columns),
        ["2x4", 96, 2, "", 182.25, 9.75, `${AS_LISTED}, kerf 0.125; every piece crown up`, 192],
        ["2x4", 144, 1, "", 122.125, 21.875, "", 144],
        ["Least possible", "", "", "", "", "", PROVED.length, 336],
      ],
      source:
        "by hand: the pieces are 304 in long, so that 288 in are too few, and the next sum of these boards is 336; 92 + 30 and a kerf of 1/8 fit in 144, and 3 x 30 with two kerfs in 96",
    },
    {
      cells: [list, yard, 0],
      result: [
        headings(columns),
        ["2x4", 96, 2, 8, 182, 10, `${AS_LISTED}, kerf 0; every piece crown up`, 192],
        ["2x4", 144, 1, 5.5, 122, 22, "", 144],
        ["Least possible", "", "", 13.5, "", "", PROVED.cost, ""],
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
        [
          "2x6",
          96,
          2,
          "",
          163.2546,
          27.7454,
          `end trim 1/2" a board, both ends together, kerf 1/8"; every piece crown up`,
          192,
        ],
        ["2x6", 144, 6, "", 813.6032, 47.3968, "", 864],
        ["2x8", 240, 2, "", 430.5212, 48.4788, "", 480],
        ["Least possible", "", "", "", "", "", PROVED.length, 1536],
      ],
      tolerance: 0.0001,
    },
  ],
  async compute(read, reading) {
    const order = await cutOrder(read, reading);
    return order instanceof Failure ? order : tableOf(columns, rowsOf(order), order);
  },
});

function rowsOf(order: CutOrder): Row[] {
  const { plan, priced } = order;
  const lines = orderLines(order).map((line): Row => {
    const { size, length, count, price, used, leftOver } = line;
    const cost = priced ? { cost: count * price } : {};
    return { size, length, count, ...cost, used, leftOver, note: lineNote(line, order), bought: count * length };
  });
  const missing = plan.missing.map((one): Row => ({ size: one.size, note: noneLongEnough(one, order) }));
  const [first, ...others] = [...lines, ...missing];
  const note = first!.note === "" ? orderTerms(order) : `${first!.note}; ${orderTerms(order)}`;
  const bound = plan.proved ? plan.cost : plan.bound;
  const least = plan.missing.length > 0 ? {} : priced ? { cost: bound } : { bought: bound };
  return [{ ...first!, note }, ...others, { size: "Least possible", note: orderProof(order), ...least }];
}

/** The first boards of a size say where its long pieces are joined. */
function lineNote({ size, first, waste }: OrderLine, order: CutOrder): string {
  if (waste === null) return first ? joinNote(order, size) : "";
  const short = waste.short > 0 ? `; ${waste.short} more are asked than there are` : "";
  return `plus ${order.waste} percent waste, not in the plan and not in the least possible${short}`;
}

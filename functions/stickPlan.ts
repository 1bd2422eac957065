import type { MissingSize } from "../src/cutting/model/stockProblem.ts";
import { column, headings, tableOf, type Cell, type Column } from "../src/registry/columns.ts";
import { Failure } from "../src/measure/result.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { wholePiece } from "../src/roof/members/pieceParts.ts";
import { cutOrder, orderParameters, type CutOrder } from "./arguments/cutOrder.ts";
import { noneLongEnough } from "./words/orderNotes.ts";
import { joinText } from "./words/joinNote.ts";
import { markOf, stickText } from "./words/stickText.ts";

interface Stick {
  readonly number: number;
  readonly board: CutOrder["plan"]["boards"][number];
  readonly times: number;
}

/** A board, or a size that no board is long enough for. */
type Row = Stick | MissingSize;

const of = (row: Row, cell: (stick: Stick) => Cell) => ("board" in row ? cell(row) : "");

const columns: readonly Column<Row, CutOrder>[] = [
  column("Board number", "count", (row) => of(row, ({ number }) => number)),
  column("Size", "text", (row) => ("board" in row ? row.board.size : row.size), 100),
  column("Board", "length", (row) => of(row, ({ board }) => board.length)),
  column("Pieces", "text", (row) => of(row, ({ board }) => stickText(board.pieces)), 260),
  column("Left over", "length", (row) => of(row, ({ board }) => board.leftOver)),
  column("Times", "count", (row) => of(row, ({ times }) => times)),
  column("Note", "text", (row, order) => ("board" in row ? noteOf(row.board, order) : noneLongEnough(row, order)), 420),
];

const list = [
  ["Piece", "Size", "Length", "Count"],
  ["stud", "2x4", 30, 4],
  ["plate", "2x4", 92, 2],
] as const;
const jacks = [
  ["Piece", "Size", "Length", "Count", "Hand", "Pitch", "Saw tilt"],
  ["J", "2x6", 50, 2, "left", 9, 45],
  ["J", "2x6", 50, 2, "right", 9, 45],
] as const;

export const stickPlan = worksheetFunction({
  name: "STICKPLAN",
  family: "lumber",
  asynchronous: true,
  summary: "Which pieces come out of which board, in the order of cutting, for the order that LUMBERORDER gives.",
  parameters: orderParameters,
  result: "table",
  columns,
  returns: `a table that spills, with headings: a row for each board (over 1000 boards, for Times boards that are cut alike, numbered from Board number on), its pieces from its left end, and the length left over once its ends are trimmed; Note says which boards stay untrimmed. In Pieces "a | b" share one plumb or square cut, "a + b" one slanting cut, of two heads only where crown down is allowed: one of them is then turned end for end, the board's crown at its bottom, and Note names it; after "a; b" nothing is shared; "3 x a" are three alike. L and R are the hands.`,
  examples: [
    {
      cells: [list, [[96], [144]]],
      result: [
        headings(columns),
        [1, "2x4", 144, "plate | stud", 21.875, 1, ""],
        [2, "2x4", 96, "plate", 4, 1, ""],
        [3, "2x4", 96, "3 x stud", 5.75, 1, ""],
      ],
      source: "by hand, as LUMBERORDER",
    },
    {
      cells: [jacks, [[103]], 0, 0, "yes"],
      result: [
        headings(columns),
        [1, "2x6", 103, "J L + J R", 0.75, 1, "end for end, crown down: J R"],
        [2, "2x6", 103, "J L + J R", 0.75, 1, "end for end, crown down: J R"],
      ],
      source:
        "by hand at 9 in 12 (3-4-5): 50 + 50, less 1.5 x 5/4 for the cut that both heads share, and 5.5 x 3/4 of slant at the board's end",
    },
  ],
  async compute(read, reading) {
    const order = await cutOrder(read, reading);
    return order instanceof Failure ? order : tableOf(columns, [...sticksOf(order), ...order.plan.missing], order);
  },
});

/** Up to here every board has a row of its own. */
const ROWS = 1000;

function sticksOf({ plan }: CutOrder): Stick[] {
  const all = plan.boards.reduce((sum, { repeat }) => sum + repeat, 0);
  let next = 1;
  return plan.boards.flatMap((board) => {
    const times = all > ROWS ? board.repeat : 1;
    return Array.from({ length: board.repeat / times }, () => {
      const number = next;
      next += times;
      return { number, board, times };
    });
  });
}

function noteOf(board: Stick["board"], order: CutOrder): string {
  const turned = [...new Set(board.pieces.filter(({ flipped }) => flipped).map(markOf))];
  const joined = order.joined.filter(
    (one) =>
      one.size === board.size && board.pieces.some(({ name }) => name !== one.name && wholePiece(name) === one.name),
  );
  return [
    ...(order.trim > 0 && board.trim === 0 ? ["untrimmed: the piece takes the whole board"] : []),
    ...(turned.length > 0 ? [`end for end, crown down: ${turned.join(", ")}`] : []),
    ...joined.map((one) => joinText(one, order.unit)),
  ].join("; ");
}

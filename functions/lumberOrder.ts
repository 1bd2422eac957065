import { lengthText } from "../src/measure/lengthText.ts";
import { Refusal } from "../src/registry/refusal.ts";
import { worksheetFunction, type Cell } from "../src/registry/worksheetFunction.ts";
import { boardsParameter } from "./arguments/boardTable.ts";
import { cutOrder, kerfParameter, type CutOrder } from "./arguments/cutOrder.ts";
import { piecesParameter } from "./arguments/pieceList.ts";
import { ridgeNote } from "./words/ridgeNote.ts";
import { markOf, stickText } from "./words/stickText.ts";
import { wasteBoards } from "./arguments/wasteBoards.ts";

const family = "lumber";

export const ORDER_HEADINGS = ["Size", "Board", "Count", "Cost", "Used", "Left over", "Note"] as const;
export const STICK_HEADINGS = ["Board number", "Size", "Board", "Pieces", "Left over", "Times", "Note"] as const;

const parameters = [piecesParameter, boardsParameter, kerfParameter] as const;
const PROVED = "proved: no order of these boards costs less";
const PROVED_LENGTH = "proved: no order of these boards is shorter in all";

/** A small hip roof, whose figures the examples of MEMBERS show: kings of 80.4984 and 79.6599, hips of 106.875, jacks of 53.3183 and 26.4855 in. */
const small = [
  ["Span", 144],
  ["Length", 144],
  ["Pitch", 6],
  ["Spacing", 24],
] as const;
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
const jacks = [
  ["Piece", "Size", "Length", "Count", "Hand", "Pitch", "Saw tilt"],
  ["J", "2x6", 50, 2, "left", 9, 45],
  ["J", "2x6", 50, 2, "right", 9, 45],
] as const;

export const lumberOrder = worksheetFunction({
  name: "LUMBERORDER",
  family,
  asynchronous: true,
  summary:
    "Boards to buy for a list of pieces or a whole roof at the least cost, with the proof that nothing costs less.",
  parameters,
  result: "table",
  returns:
    "a table that spills, with headings: Used and Left over are lengths over all boards of the row, in the unit of the call. Cost is in the prices given, or without prices the length bought. The last row holds the least cost that any way of cutting can have. Pieces of one size and pitch share their plumb cuts, left and right jacks head to head their slanting cut, with a kerf at every cut; pieces longer than every board are refused, but a roof's ridge is joined at commons. A roof block's Spares are more commons; its Waste adds whole boards in rows of their own, which the plan and the last row do not count.",
  examples: [
    {
      cells: [list, [[96], [144]]],
      result: [
        [...ORDER_HEADINGS],
        ["2x4", 96, 2, 192, 182.25, 9.75, ""],
        ["2x4", 144, 1, 144, 122.125, 21.875, ""],
        ["Least possible", "", "", 336, "", "", PROVED_LENGTH],
      ],
      source:
        "by hand: the pieces are 304 in long, so that 288 in are too few, and the next sum of these boards is 336; 92 + 30 and a kerf of 1/8 fit in 144, and 3 x 30 with two kerfs in 96",
    },
    {
      cells: [list, yard, 0],
      result: [
        [...ORDER_HEADINGS],
        ["2x4", 96, 2, 8, 182, 10, ""],
        ["2x4", 144, 1, 5.5, 122, 22, ""],
        ["Least possible", "", "", 13.5, "", "", PROVED],
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
        [...ORDER_HEADINGS],
        ["2x6", 96, 2, 192, 163.2546, 28.7454, ""],
        ["2x6", 144, 6, 864, 803.5409, 60.4591, ""],
        ["2x8", 240, 2, 480, 430.5212, 49.4788, ""],
        ["Least possible", "", "", 1536, "", "", PROVED_LENGTH],
      ],
      tolerance: 0.0001,
    },
  ],
  async compute({ pieces, boards, kerf }, reading) {
    const order = await cutOrder(pieces, boards, kerf, reading);
    return order instanceof Refusal ? order : orderRows(order);
  },
});

export const stickPlan = worksheetFunction({
  name: "STICKPLAN",
  family,
  asynchronous: true,
  summary: "Which pieces come out of which board, in the order of cutting, for the order that LUMBERORDER gives.",
  parameters,
  result: "table",
  returns: `a table that spills, with headings: a row for each board (over 1000 boards, for Times boards that are cut alike, numbered from Board number on), its pieces from its left end, and the length left over. In Pieces "a | b" share one plumb or square cut, "a + b" the slanting cut of their heads, with b turned end for end so that the board's crown is at its bottom; after "a; b" nothing is shared; "3 x a" are three alike. L and R are the hands.`,
  examples: [
    {
      cells: [list, [[96], [144]]],
      result: [
        [...STICK_HEADINGS],
        [1, "2x4", 144, "plate | stud", 21.875, 1, ""],
        [2, "2x4", 96, "plate", 4, 1, ""],
        [3, "2x4", 96, "3 x stud", 5.75, 1, ""],
      ],
      source: "by hand, as LUMBERORDER",
    },
    {
      cells: [jacks, [[120]], 0],
      result: [
        [...STICK_HEADINGS],
        [1, "2x6", 120, "J L + J R", 17.75, 1, "end for end, crown down: J R"],
        [2, "2x6", 120, "J L + J R", 17.75, 1, "end for end, crown down: J R"],
      ],
      source:
        "by hand at 9 in 12 (3-4-5): 50 + 50, less 1.5 x 5/4 for the cut that both heads share, and 5.5 x 3/4 of slant at the board's end",
    },
  ],
  async compute({ pieces, boards, kerf }, reading) {
    const order = await cutOrder(pieces, boards, kerf, reading);
    return order instanceof Refusal ? order : stickRows(order);
  },
});

function orderRows(order: CutOrder): Cell[][] {
  const { plan } = order;
  const extra = wasteBoards(order);
  const rows = plan.sizes.flatMap(({ size }): Cell[][] => {
    const own = new Map<string, { length: number; price: number; count: number; used: number; left: number }>();
    for (const { size: of, length, price, repeat, used, leftOver } of plan.boards) {
      if (of !== size) continue;
      const sum = own.get(`${length} ${price}`) ?? { length, price, count: 0, used: 0, left: 0 };
      own.set(`${length} ${price}`, {
        ...sum,
        count: sum.count + repeat,
        used: sum.used + used * repeat,
        left: sum.left + leftOver * repeat,
      });
    }
    const bought = [...own.values()]
      .sort((a, b) => a.length - b.length || a.price - b.price)
      .map(({ length, price, count, used, left }, i): Cell[] => [
        size,
        length,
        count,
        count * price,
        used,
        left,
        i === 0 ? ridgeNote(order, size) : "",
      ]);
    const wasted = extra
      .filter((one) => one.size === size)
      .map(({ length, price, count, short }): Cell[] => [
        size,
        length,
        count,
        count * price,
        0,
        count * length,
        `plus ${order.waste} per cent waste, not in the plan and not in the least possible${short > 0 ? `; ${short} more are asked than there are` : ""}`,
      ]);
    return [...bought, ...wasted];
  });
  return [
    [...ORDER_HEADINGS],
    ...rows,
    ["Least possible", "", "", plan.proved ? plan.cost : plan.bound, "", "", provedText(order)],
  ];
}

/** That the order is the least there is, or how much could still be saved at most. */
function provedText({ plan, priced, unit }: CutOrder): string {
  if (plan.proved) return priced ? PROVED : PROVED_LENGTH;
  const money = (value: number) => (priced ? value.toFixed(2) : lengthText(value, unit));
  const sizes = plan.sizes.filter(({ proved }) => !proved).map(({ size }) => size);
  const gap = plan.cost - plan.bound;
  return `not proved: the order comes to ${money(plan.cost)}, and at most ${money(gap)} of it (${((gap / plan.cost) * 100).toFixed(2)} per cent) could be saved, on ${sizes.join(", ")}; the search stopped at its limit`;
}

/** Up to here every board has a row of its own. */
const ROWS = 1000;

function stickRows(order: CutOrder): Cell[][] {
  const { plan, pieces, ridge } = order;
  const all = plan.boards.reduce((sum, { repeat }) => sum + repeat, 0);
  let next = 1;
  const rows = plan.boards.flatMap((board): Cell[][] => {
    const turned = [...new Set(board.pieces.filter(({ flipped }) => flipped).map(markOf))];
    const joined = ridge?.size === board.size && board.pieces.some(({ piece }) => pieces[piece]!.slant === "square");
    const note = [
      ...(turned.length > 0 ? [`end for end, crown down: ${turned.join(", ")}`] : []),
      ...(joined ? [ridgeNote(order, board.size)] : []),
    ].join("; ");
    const times = all > ROWS ? board.repeat : 1;
    return Array.from({ length: board.repeat / times }, () => {
      const row: Cell[] = [next, board.size, board.length, stickText(board.pieces), board.leftOver, times, note];
      next += times;
      return row;
    });
  });
  return [[...STICK_HEADINGS], ...rows];
}

export const lumberOrders = [lumberOrder, stickPlan];

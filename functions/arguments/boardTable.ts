import { Failure, type Result } from "../../src/measure/result.ts";
import { isBlank } from "../../src/registry/cells.ts";
import { headedBlock, type HeadedRow } from "../../src/registry/headedBlock.ts";
import { inCell, type Reading } from "../../src/registry/reading.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { readNumberCell } from "../../src/registry/readNumberCell.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input, Parameter } from "../../src/registry/worksheetFunction.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";
import { boardLengths } from "./boardLengths.ts";
import { readListedSize, type ListedSize } from "./pieceList.ts";

/** Boards of one length that can be had; the size null counts for every size. */
export interface ListedBoard {
  readonly size: ListedSize | null;
  readonly length: number;
  readonly price: number | null;
  /** Its column holds nothing but zeros, as a desktop hands over empty cells: no price. */
  readonly zeroPrice: boolean;
  /** null: as many as are wanted. */
  readonly count: number | null;
}

const REQUIRED = ["Size", "Length"] as const;
const OPTIONAL = ["Price", "Count"] as const;
type Heading = (typeof REQUIRED)[number] | (typeof OPTIONAL)[number];

/** More kinds of board than any yard has. */
const MOST = 200;

/** `boards`: a table of what can be had, or a plain list of lengths for every size. */
export const boardsParameter: Parameter<readonly ListedBoard[], "boards"> = {
  name: "boards",
  quantity: "boards",
  block: true,
  description: `Boards to be had: a table with the headings Size, Length and if wanted Price and Count (how many there are at most), or lengths for every size, in a range or as text such as "8' to 20' by 2'".`,
  read(input, reading) {
    const rows = headedBlock<Heading>(input, reading, REQUIRED, OPTIONAL);
    if (rows instanceof Failure) return rows;
    if (rows === null) {
      const lengths = boardLengths(input, reading);
      return lengths instanceof Failure
        ? lengths
        : lengths.map((length) => ({ size: null, length, price: null, zeroPrice: false, count: null }));
    }
    if (rows.length > MOST) return refuse<BlockProblem>(reading, { kind: "too many kinds of board", most: MOST });
    return boardTable(rows, reading);
  },
};

function boardTable(
  rows: readonly HeadedRow<Heading>[],
  reading: Reading,
): Result<readonly ListedBoard[], ArgumentProblem> {
  // A column that is empty in every row counts as left out; a host may hand its cells over as 0.
  const filled = (heading: Heading) => rows.some(({ cells }) => !isBlank(cells[heading]) && cells[heading] !== 0);
  const priced = filled("Price");
  const zeroPrice = !priced && rows.some(({ cells }) => cells.Price === 0);
  // Beside cells that come as empty a 0 was typed, and none is not as many as are wanted.
  const noughts = rows.filter(({ cells }) => cells.Count === 0).length;
  const counted = filled("Count") || (noughts > 0 && noughts < rows.length);
  const boards: ListedBoard[] = [];
  for (const { row, cells } of rows) {
    const at = (heading: Heading) => inCell(reading, row, heading);
    const size = readListedSize(cells.Size, at("Size"));
    if (size instanceof Failure) return size;
    const length = readLengthCell(cells.Length, at("Length"), { example: ["192", `16' 0"`] });
    if (length instanceof Failure) return length;
    const price = priced ? readPrice(cells.Price, at("Price")) : null;
    if (price instanceof Failure) return price;
    const count = counted ? readCount(cells.Count, at("Count")) : null;
    if (count instanceof Failure) return count;
    boards.push({ size, length, price, zeroPrice, count });
  }
  return boards;
}

function readPrice(cell: Input, reading: Reading): Result<number, ArgumentProblem> {
  // 0 may be an empty cell: an order that takes such a board for free would be wrong without a word.
  if (isBlank(cell) || cell === 0) return refuse<BlockProblem>(reading, { kind: "price missing", read: cell });
  return readNumberCell(cell, reading, { from: 0.000001, to: 1_000_000, example: "price" });
}

function readCount(cell: Input, reading: Reading): Result<number | null, ArgumentProblem> {
  if (isBlank(cell)) return null;
  if (cell === 0) return refuse<BlockProblem>(reading, { kind: "no boards in a row" });
  return readNumberCell(cell, reading, { from: 1, to: 1_000_000, whole: true, example: "boards" });
}

import { isBlank } from "../../src/registry/cells.ts";
import { headedBlock, type HeadedRow } from "../../src/registry/headedBlock.ts";
import { number } from "../../src/registry/parameters.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input, Parameter, Reading } from "../../src/registry/worksheetFunction.ts";
import { boardLengths } from "./boardLengths.ts";
import { readListedSize, type ListedSize } from "./pieceList.ts";

/** Boards of one length that can be had; the size null counts for every size. */
export interface ListedBoard {
  readonly size: ListedSize | null;
  readonly length: number;
  readonly price: number | null;
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
    const rows = headedBlock<Heading>("boards", input, REQUIRED, OPTIONAL);
    if (rows instanceof Refusal || rows instanceof CellError) return rows;
    if (rows === null) {
      const lengths = boardLengths("boards", input, reading);
      return lengths instanceof Refusal || lengths instanceof CellError
        ? lengths
        : lengths.map((length) => ({ size: null, length, price: null, count: null }));
    }
    if (rows.length > MOST)
      return new Refusal(
        "#VALUE!",
        `boards: more than ${MOST} kinds of board were given. Point to the ones that are to be had.`,
      );
    return boardTable(rows, reading);
  },
};

function boardTable(
  rows: readonly HeadedRow<Heading>[],
  reading: Reading,
): readonly ListedBoard[] | Refusal | CellError {
  // A column that is empty in every row counts as left out; a host may hand its cells over as 0.
  const filled = (heading: Heading) => rows.some(({ cells }) => !isBlank(cells[heading]) && cells[heading] !== 0);
  const priced = filled("Price");
  // Beside cells that come as empty a 0 was typed, and none is not as many as are wanted.
  const noughts = rows.filter(({ cells }) => cells.Count === 0).length;
  const counted = filled("Count") || (noughts > 0 && noughts < rows.length);
  const boards: ListedBoard[] = [];
  for (const { row, cells } of rows) {
    const at = (heading: Heading) => `boards, row ${row}: ${heading}`;
    const size = readListedSize(at("Size"), cells.Size, reading);
    if (size instanceof Refusal || size instanceof CellError) return size;
    const length = readLengthCell(at("Length"), cells.Length, reading, { example: `192 or 16' 0"` });
    if (typeof length !== "number") return length;
    const price = priced ? priceOf(at("Price"), cells.Price, reading) : null;
    if (price instanceof Refusal || price instanceof CellError) return price;
    const count = counted ? countOf(at("Count"), cells.Count, reading) : null;
    if (count instanceof Refusal || count instanceof CellError) return count;
    boards.push({ size, length, price, count });
  }
  return boards;
}

function priceOf(at: string, cell: Input, reading: Reading): number | Refusal | CellError {
  // 0 may be an empty cell: an order that takes such a board for free would be wrong without a word.
  if (isBlank(cell) || cell === 0)
    return refuse(
      at,
      `${isBlank(cell) ? "nothing was given" : "0 was read"}, but other boards have a price. Type a price for each board or for none; 0.01 for boards that are paid for.`,
    );
  return number(at, "", {
    from: 0.000001,
    to: 1_000_000,
    example: "the price of one board, such as 9.85",
    fallback: 0,
  }).read(cell, reading);
}

function countOf(at: string, cell: Input, reading: Reading): number | null | Refusal | CellError {
  if (isBlank(cell)) return null;
  if (cell === 0)
    return refuse(
      at,
      `0 was read, as some sheets hand over an empty cell. Take the row out where there are none, or type how many there are.`,
    );
  return number(at, "", {
    from: 1,
    to: 1_000_000,
    whole: true,
    example: "how many there are, or nothing for as many as are wanted",
    fallback: 0,
  }).read(cell, reading);
}

import { Failure, type Result } from "../../src/measure/result.ts";
import { isBlank } from "../../src/registry/cells.ts";
import type { Reading } from "../../src/registry/reading.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { CellError } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";

/** More than this many lengths on hand is a mistake, and would make every search slow. */
const MOST = 60;

/** No list of so few lengths is longer; a longer text is refused before it is taken apart. */
const LONGEST = 2_000;

const example = ["8'", "96"];

/**
 * Lengths of board on hand, shortest first, each once: from text such as "8' to 20' by 2'" or "8', 12', 16'", a number, or a range of them.
 *
 * Every length is read as lengths are everywhere, in the call's unit.
 */
export function boardLengths(cell: Input, reading: Reading): Result<readonly number[], ArgumentProblem> {
  const refused = (problem: BlockProblem) => refuse<BlockProblem>(reading, problem);
  if (typeof cell === "string" && cell.length > LONGEST)
    return refused({ kind: "text too long for boards", read: cell });
  // The comma parts lengths: 2,4 m would be read as 2 and as 4 m.
  if (typeof cell === "string" && /\d,\d/.test(cell) && /m/i.test(cell))
    return refused({ kind: "comma between meters", read: cell });
  const cells: Input[] = Array.isArray(cell)
    ? cell.flat()
    : typeof cell === "string"
      ? cell.split(/[,;]/).map((part) => part.trim())
      : [cell];
  const lengths: number[] = [];
  for (const one of cells) {
    if (one instanceof CellError) return one;
    if (isBlank(one)) continue;
    if (one === 0 && Array.isArray(cell)) return refused({ kind: "0 in a range" });
    const read =
      typeof one === "string" && /\bto\b/i.test(one) ? range(one, reading) : readLengthCell(one, reading, { example });
    if (read instanceof Failure) return read;
    if (typeof read === "number") lengths.push(read);
    else lengths.push(...read);
    if (lengths.length > MOST) return refused({ kind: "too many lengths of board", most: MOST });
  }
  if (lengths.length === 0) return refused({ kind: "no length of board" });
  return [...new Set(lengths)].sort((a, b) => a - b);
}

function range(text: string, reading: Reading): Result<number[], ArgumentProblem> {
  const [ends = "", by = ""] = text.split(/\bby\b/i);
  const [from = "", to = ""] = ends.split(/\bto\b/i);
  const parts = [from, to, by].map((part) => part.trim());
  if (parts.includes(""))
    return refuse<BlockProblem>(reading, { kind: "range without ends or step", read: text.trim() });
  const read = parts.map((part) => readLengthCell(part, reading, { example }));
  const wrong = read.find((one) => one instanceof Failure);
  if (wrong) return wrong;
  const [first, last, step] = read as [number, number, number];
  if (last < first) return refuse<BlockProblem>(reading, { kind: "range runs backwards", read: text.trim() });
  const count = Math.floor((last - first) / step + 1e-9) + 1;
  if (count > MOST) return refuse<BlockProblem>(reading, { kind: "too many lengths of board", most: MOST });
  return Array.from({ length: count }, (_, i) => first + i * step);
}

import { isBlank, shown } from "../../src/registry/cells.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { CellError, type Refusal } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input, Reading } from "../../src/registry/worksheetFunction.ts";

/** More than this many lengths on hand is a mistake, and would make every search slow. */
const MOST = 60;

/** No list of so few lengths is longer; a longer text is refused before it is taken apart. */
const LONGEST = 2_000;

/**
 * Lengths of board on hand, shortest first, each once: from text such as "8' to 20' by 2'" or "8', 12', 16'", a number, or a range of them.
 *
 * Every length is read as lengths are everywhere, in the call's unit.
 */
export function boardLengths(name: string, cell: Input, reading: Reading): readonly number[] | Refusal | CellError {
  if (typeof cell === "string" && cell.length > LONGEST)
    return refuse(
      name,
      `${shown(cell)} was read, which is too long for a list of lengths. Type lengths such as 8', 12', 16'.`,
    );
  // The comma parts lengths: 2,4 m would be read as 2 and as 4 m.
  if (typeof cell === "string" && /\d,\d/.test(cell) && /m/i.test(cell))
    return refuse(
      name,
      `${shown(cell)} was read. Type a decimal point instead of a decimal comma, and a blank after a comma between two lengths.`,
    );
  const cells: Input[] = Array.isArray(cell)
    ? cell.flat()
    : typeof cell === "string"
      ? cell.split(/[,;]/).map((part) => part.trim())
      : [cell];
  const lengths: number[] = [];
  for (const one of cells) {
    if (one instanceof CellError) return one;
    if (isBlank(one)) continue;
    if (one === 0 && Array.isArray(cell))
      return refuse(name, `0 was read, as some sheets hand over an empty cell. Point to the filled cells only.`);
    const read =
      typeof one === "string" && /\bto\b/i.test(one)
        ? range(name, one, reading)
        : readLengthCell(name, one, reading, { example: `8' or 96` });
    if (typeof read === "number") lengths.push(read);
    else if (Array.isArray(read)) lengths.push(...read);
    else return read as Refusal | CellError;
    if (lengths.length > MOST) return tooMany(name);
  }
  if (lengths.length === 0)
    return refuse(name, `no length of board was given. Type lengths such as 8', 12', 16', or "8' to 20' by 2'".`);
  return [...new Set(lengths)].sort((a, b) => a - b);
}

const tooMany = (name: string) =>
  refuse(name, `more than ${MOST} lengths of board were given. Type the few that are on hand.`);

function range(name: string, text: string, reading: Reading): number[] | Refusal | CellError {
  const [ends = "", by = ""] = text.split(/\bby\b/i);
  const [from = "", to = ""] = ends.split(/\bto\b/i);
  const parts = [from, to, by].map((part) => part.trim());
  if (parts.includes(""))
    return refuse(
      name,
      `${shown(text.trim())} was read. Type the shortest length, the longest and the step between them, such as ${reading.unit === "mm" ? `"2.4 m to 6 m by 0.6 m"` : `"8' to 20' by 2'"`}.`,
    );
  const read = parts.map((part) => readLengthCell(name, part, reading, { example: `8' or 96` }));
  const wrong = read.find((one) => typeof one !== "number");
  if (wrong !== undefined) return wrong as Refusal | CellError;
  const [first, last, step] = read as [number, number, number];
  if (last < first) return refuse(name, `${shown(text.trim())} runs backwards. Type the shortest length first.`);
  const count = Math.floor((last - first) / step + 1e-9) + 1;
  return count > MOST ? tooMany(name) : Array.from({ length: count }, (_, i) => first + i * step);
}

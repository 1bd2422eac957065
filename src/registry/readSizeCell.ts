import { isNominal } from "../measure/isNominal.ts";
import { readSize, type ReadSize } from "../measure/readSize.ts";
import { Failure } from "../measure/result.ts";
import { isBlank, shown } from "./cells.ts";
import type { Refusal } from "./refusal.ts";
import { COMMA, missing, refuse } from "./refuse.ts";
import type { Input, Reading } from "./worksheetFunction.ts";

/** Reads a lumber size for the argument or row of this name. */
export function readSizeCell(name: string, cell: Input, reading: Reading): ReadSize | Refusal {
  if (isBlank(cell)) return missing(name, "a lumber size, such as 2x8");
  const read = typeof cell === "string" ? readSize(cell) : null;
  if (read === null)
    return refuse(name, `${shown(cell)} was read, which is no lumber size. Type 2x8, "1.5 x 7.25" or "38 x 184".`);
  if (read instanceof Failure) {
    if (read.problem.kind === "decimal comma") return refuse(name, `${shown(cell)} was read. ${COMMA}`);
    if (read.problem.kind === "size turned round")
      return refuse(name, `${shown(cell)} was read; thickness comes first. Type ${read.problem.instead}.`);
    return read.problem.kind === "no such nominal size"
      ? refuse(
          name,
          `${shown(cell)} is no nominal size of lumber. Type a nominal size such as 2x8, or the actual one with decimals, such as "1.5 x 7.25".`,
        )
      : refuse(name, `${shown(cell)} was read, which is no lumber size. Type 2x8, "1.5 x 7.25" or "38 x 184".`);
  }
  if (reading.unit !== null && reading.unit !== read.unit && !isNominal(read)) {
    return refuse(
      name,
      `${shown(cell)} is ${read.unit === "mm" ? "millimetres" : "inches"}, but ${reading.unitFrom} is ${reading.unit === "mm" ? "metric" : "feet and inches"}. Type both in the same unit.`,
    );
  }
  if (reading.unit === null && read.unit === "mm") {
    reading.unit = "mm";
    reading.unitFrom = name;
  }
  return read;
}

import { Failure, type Result } from "../../src/measure/result.ts";
import { isBlank } from "../../src/registry/cells.ts";
import type { CellProblem } from "../../src/registry/cellProblem.ts";
import { newReading, type Reading } from "../../src/registry/reading.ts";
import { CellError } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Cell, Input, Parameter } from "../../src/registry/worksheetFunction.ts";
import type { BlockProblem } from "./blockProblem.ts";

/** One value of a list: the cell as it was typed, and what it was read as. */
export interface Listed<T> {
  readonly cell: Cell;
  readonly value: T;
}

/** A range of values, or a single one; blank cells are passed over. A refusal names the value by its place in the list. */
export function listParameter<T, const N extends string>(
  name: N,
  description: string,
  most: number,
  examples: readonly [number, readonly number[]],
  read: (cell: Input, reading: Reading) => Result<T, CellProblem>,
): Parameter<readonly Listed<T>[], N> {
  return {
    name,
    description,
    quantity: "list",
    block: true,
    read(input, reading) {
      const list: Listed<T>[] = [];
      for (const cell of Array.isArray(input) ? (input.flat() as Input[]) : [input]) {
        if (cell instanceof CellError) return cell;
        if (isBlank(cell)) continue;
        if (Array.isArray(input)) reading.within = { value: list.length + 1 };
        if (cell === 0 && Array.isArray(input)) return refuse<BlockProblem>(reading, { kind: "0 in a range" });
        if (list.length === most) return refuse<BlockProblem>(newReading(name), { kind: "too many values", most });
        const value = read(cell, reading);
        if (value instanceof Failure) return value;
        list.push({ cell: cell as Cell, value });
      }
      return list.length > 0 ? list : refuse<BlockProblem>(reading, { kind: "no values", examples });
    },
  };
}

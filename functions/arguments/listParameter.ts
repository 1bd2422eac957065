import { isBlank } from "../../src/registry/cells.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Cell, Input, Parameter, Reading } from "../../src/registry/worksheetFunction.ts";

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
  example: string,
  read: (label: string, cell: Input, reading: Reading) => T | Refusal | CellError,
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
        if (cell === 0 && Array.isArray(input))
          return new Refusal(
            "#VALUE!",
            `${name}, value ${list.length + 1}: 0 was read, as some sheets hand over an empty cell. Point to the filled cells only.`,
          );
        if (list.length === most)
          return refuse(name, `more than ${most} values were given. Point to ${most} cells at most.`);
        const value = read(Array.isArray(input) ? `${name}, value ${list.length + 1}` : name, cell, reading);
        if (value instanceof Refusal || value instanceof CellError) return value;
        list.push({ cell: cell as Cell, value });
      }
      return list.length > 0 ? list : refuse(name, `nothing was given. Type ${example}.`);
    },
  };
}

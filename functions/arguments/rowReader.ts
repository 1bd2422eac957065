import { bareNumber } from "../../src/measure/bareNumber.ts";
import { readSize, type ReadSize } from "../../src/measure/readSize.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import { MM_PER_INCH, type Unit } from "../../src/measure/unit.ts";
import { readChoiceCell } from "../../src/registry/readChoiceCell.ts";
import type { Reading } from "../../src/registry/reading.ts";
import { readLengthCell, type LengthOptions } from "../../src/registry/readLengthCell.ts";
import { readSizeCell } from "../../src/registry/readSizeCell.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { Section } from "../../src/roof/frame/roofSpec.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";

type ReadCell<T> = (cell: Input, at: Reading) => Result<T, ArgumentProblem>;

/** Reads one column of a roof block row by row. Where a row is at fault it keeps the problem and goes on with the fallback. */
export interface RowReader<R extends string> {
  has(row: R): boolean;
  cell(row: R): Input;
  /** Reads a row whether it is there or not. */
  kept<T>(row: R, fallback: T, read: ReadCell<T>): T;
  /** Reads a row that may be left out. */
  optional<T>(row: R, fallback: T, read: ReadCell<T>): T;
  length<T extends number | null>(row: R, fallback: T, options: LengthOptions): T | number;
  /** An overhang whose blank is the level fascia: no overhang is the word none. */
  levelOverhang(row: R): number | null;
  word<T extends string>(row: R, choices: readonly T[]): T;
  size(row: R, name: string): Section;
}

/** A reader of one column; `problems` takes what is wrong, one for a row. `wing` is the column's letter, none for the main roof's. */
export function rowReader<R extends string>(
  rows: ReadonlyMap<R, Input>,
  reading: Reading,
  problems: Map<R, Failure<ArgumentProblem>>,
  wing?: string,
): RowReader<R> {
  const reader: RowReader<R> = {
    has: (row) => rows.has(row),
    cell: (row) => rows.get(row),
    kept(row, fallback, read) {
      if (problems.has(row)) return fallback;
      reading.within = wing === undefined ? { row } : { row, wing };
      const value = read(rows.get(row), reading);
      if (!(value instanceof Failure)) return value;
      problems.set(row, value);
      return fallback;
    },
    optional: (row, fallback, read) => (rows.has(row) ? reader.kept(row, fallback, read) : fallback),
    length: (row, fallback, options) =>
      reader.optional<typeof fallback | number>(row, fallback, (cell, at) =>
        cell === 0 && !options.zero
          ? refuse<BlockProblem>(at, { kind: "row of 0" })
          : readLengthCell(cell, at, options),
      ),
    levelOverhang: (row) =>
      reader.optional<number | null>(row, null, (cell, at) => {
        if (isNone(cell)) return 0;
        const read = readLengthCell(cell, at, { zero: true, example: "16" });
        return read === 0 && isBare(cell) ? refuse<BlockProblem>(at, { kind: "overhang of 0" }) : read;
      }),
    word: (row, choices) => reader.optional(row, choices[0]!, (cell, at) => readChoiceCell(cell, at, choices)),
    size: (row, name) =>
      sectionIn(
        reading.unit ?? "in",
        reader.optional(row, readSize(name) as ReadSize, (cell, at) => readSizeCell(cell, { ...at, unit: null })),
      ),
  };
  return reader;
}

/** A number without a mark. */
export const isBare = (cell: Input) =>
  typeof cell === "number" || (typeof cell === "string" && bareNumber(cell.trim()) !== null);

export const isNone = (cell: Input) => typeof cell === "string" && cell.trim().toLowerCase() === "none";

function sectionIn(unit: Unit, { name, thickness, depth, unit: own }: ReadSize): Section {
  if (own === unit) return { name, thickness, depth };
  // Dressed lumber is sold to whole millimeters: 1.5 x 5.5 in is 38 x 140.
  const metric = (inches: number) => Math.round(inches * MM_PER_INCH);
  return { name, thickness: metric(thickness), depth: metric(depth) };
}

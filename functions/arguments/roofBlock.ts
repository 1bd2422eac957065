import { bareNumber } from "../../src/measure/bareNumber.ts";
import { deeperSize } from "../../src/measure/deeperSize.ts";
import { isNominal } from "../../src/measure/isNominal.ts";
import { readLength } from "../../src/measure/readLength.ts";
import { readSize, type ReadSize } from "../../src/measure/readSize.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import { MM_PER_INCH, type Unit } from "../../src/measure/unit.ts";
import { labelledBlock } from "../../src/registry/labelledBlock.ts";
import { readChoiceCell } from "../../src/registry/readChoiceCell.ts";
import { newReading, type Reading } from "../../src/registry/reading.ts";
import { readLengthCell, type LengthOptions } from "../../src/registry/readLengthCell.ts";
import { readNumberCell } from "../../src/registry/readNumberCell.ts";
import { readPitchCell } from "../../src/registry/readPitchCell.ts";
import { readSizeCell } from "../../src/registry/readSizeCell.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { RoofSpec, Section } from "../../src/roof/frame/roofSpec.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";
import { boardLengths } from "./boardLengths.ts";

/** The rows of the roof block, in the order in which the pane writes them. */
export const ROWS = [
  "Span",
  "Length",
  "Pitch",
  "End pitch",
  "Ends",
  "Spacing",
  "Overhang",
  "End overhang",
  "Rafter",
  "Hip",
  "Ridge",
  "Seat",
  "Heel",
  "Set out from",
  "Hip top",
  "Hip head",
  "Correction",
  "End correction",
  "Boards",
  "Waste",
  "Spares",
  "Unit",
] as const;
export type Row = (typeof ROWS)[number];

/** Rows whose value is a length and so may say in which unit the block is. */
const LENGTHS: readonly Row[] = [
  "Span",
  "Length",
  "Spacing",
  "Overhang",
  "End overhang",
  "Seat",
  "Heel",
  "Correction",
  "End correction",
];
const SIZES: readonly Row[] = ["Rafter", "Hip", "Ridge"];

/** Rows in which no 0 can be meant: it is an empty cell there, as some hosts hand it over. */
const NEVER_ZERO: readonly Row[] = [
  "End pitch",
  "Ends",
  ...SIZES,
  "Set out from",
  "Hip top",
  "Hip head",
  "Boards",
  "Unit",
];

/** What stands in a roof block's optional rows when they are blank. */
export const DEFAULTS = {
  in: { spacing: 24, seat: 3.5, rafter: "2x6", least: 60, boards: [96, 120, 144, 168, 192, 216, 240] },
  mm: {
    spacing: 600,
    seat: 89,
    rafter: "38 x 140 mm",
    least: 1500,
    boards: [2400, 3000, 3600, 4200, 4800, 5400, 6000],
  },
} as const;

/** Inches: no hip roof spans 250 ft on rafters, and none is narrower than 3 m by much. */
const WIDEST = 3000;

/** A roof block read row by row. */
export interface BlockReading {
  /** A row that is wrong counts as left out. */
  readonly spec: RoofSpec;
  /** What is wrong, one problem for a row. */
  readonly problems: ReadonlyMap<Row, Failure<ArgumentProblem>>;
}

/** Reads a roof block: two columns, label and value, in one unit. The first row at fault refuses it. */
export function readRoofBlock(name: string, input: Input): Result<RoofSpec, ArgumentProblem> {
  const read = readRows(name, input);
  if (read instanceof Failure) return read;
  const [first] = read.problems.values();
  return first ?? read.spec;
}

/** Reads every row of a roof block. The unit is the row Unit, else inches unless every length text is metric. */
export function readRows(name: string, input: Input): Result<BlockReading, ArgumentProblem> {
  const reading = newReading(name);
  const rows = labelledBlock(input, reading, ROWS);
  if (rows instanceof Failure) return rows;
  for (const row of NEVER_ZERO) if (rows.get(row) === 0) rows.delete(row);
  const problems = new Map<Row, Failure<ArgumentProblem>>();
  const kept: Kept = (row, fallback, read) => {
    if (problems.has(row)) return fallback;
    reading.within = { row };
    const value = read(rows.get(row), reading);
    if (!(value instanceof Failure)) return value;
    problems.set(row, value);
    return fallback;
  };
  return { spec: roofSpec(rows, reading, kept), problems };
}

/** Reads a row; where it is at fault, keeps the problem and goes on with the fallback. */
type Kept = <T>(row: Row, fallback: T, read: (cell: Input, at: Reading) => Result<T, ArgumentProblem>) => T;

const EXAMPLES = { Span: ["24'", "288"], Length: ["36'", "432"] } as const;

function roofSpec(rows: ReadonlyMap<Row, Input>, reading: Reading, kept: Kept): RoofSpec {
  const optional: Kept = (row, fallback, read) => (rows.has(row) ? kept(row, fallback, read) : fallback);
  const unit = blockUnit(rows, reading, kept, optional);
  for (const row of ["Span", "Length", "Pitch"] as const)
    if (!rows.has(row)) kept(row, null, (_, at) => refuse<BlockProblem>(at, { kind: "row missing", row }));
  const preset = DEFAULTS[unit];
  const length = <T extends number | null>(row: Row, fallback: T, options: LengthOptions): T | number =>
    optional<T | number>(row, fallback, (cell, at) =>
      cell === 0 && !options.zero ? refuse<BlockProblem>(at, { kind: "row of 0" }) : readLengthCell(cell, at, options),
    );
  const word = <T extends string>(row: Row, choices: readonly T[]) =>
    optional(row, choices[0]!, (cell, at) => readChoiceCell(cell, at, choices));
  const size = (row: Row, name: string) =>
    sectionIn(
      unit,
      optional(row, readSize(name) as ReadSize, (cell, at) => readSizeCell(cell, { ...at, unit: null })),
    );

  const pitch = kept("Pitch", 0.5, readPitchCell);
  const endPitch = optional<number | null>("End pitch", null, readPitchCell);
  const rafter = size("Rafter", preset.rafter);
  const deeper = deeperSize(rafter.name);
  const hip = size("Hip", deeper);
  if (rows.has("Seat") && rows.has("Heel"))
    kept("Heel", null, (_, at) => refuse<BlockProblem>(at, { kind: "heel beside seat" }));
  const waste = optional("Waste", 0, readWaste);
  return {
    unit,
    span: kept("Span", preset.least, (cell, at) => readSpan("Span", cell, at, rows.has("Unit"))),
    length: kept("Length", preset.least, (cell, at) => readSpan("Length", cell, at, rows.has("Unit"))),
    pitch,
    endPitch,
    ends: word("Ends", ["hip and hip", "hip and gable", "gable and hip"]),
    spacing: length("Spacing", preset.spacing, { example: "24" }),
    overhang: length("Overhang", 0, { zero: true, example: "16" }),
    endOverhang: length("End overhang", null, { zero: true, example: "16" }),
    rafter,
    hip,
    valley: hip,
    ridge: isNone(rows.get("Ridge")) ? null : size("Ridge", deeper),
    seat: rows.has("Heel") && !rows.has("Seat") ? null : length("Seat", preset.seat, { example: "3.5" }),
    heel: length("Heel", null, { example: "4.4" }),
    setOutFrom: word("Set out from", ["king common", "corner"]),
    hipTop: word("Hip top", ["dropped", "backed", "shifted"]),
    hipHead: word("Hip head", ["king commons", "ridge"]),
    correction: length("Correction", 0, { zero: true, negative: true, example: "0.25" }),
    endCorrection: length("End correction", 0, { zero: true, negative: true, example: "0.25" }),
    boards: optional<readonly number[]>("Boards", preset.boards, (cell, at) => readBoards(cell, at, preset.least)),
    waste,
    spares: optional("Spares", 0, (cell, at) =>
      readNumberCell(cell, at, { from: 0, to: 1000, whole: true, example: "spares" }),
    ),
    wings: [],
  };
}

/** A percent typed as text, "10%", is the number before its sign; one below 1 is what a sheet makes of it, 0.07 of 7%. */
function readWaste(cell: Input, at: Reading): Result<number, ArgumentProblem> {
  const bare =
    typeof cell === "string" && cell.length < 32 && cell.trim().endsWith("%") ? cell.trim().slice(0, -1) : cell;
  const waste = readNumberCell(bare, at, { from: 0, to: 100, example: "waste" });
  if (waste instanceof Failure || waste === 0 || waste >= 1) return waste;
  return refuse<BlockProblem>(at, { kind: "part for percent", waste });
}

/** A number without a mark. */
const isBare = (cell: Input) =>
  typeof cell === "number" || (typeof cell === "string" && bareNumber(cell.trim()) !== null);

/** A bare number that is far too small for its row is feet taken for inches, and one far too large for a span is millimeters. */
function readSpan(row: "Span" | "Length", cell: Input, at: Reading, unitRow: boolean): Result<number, ArgumentProblem> {
  const value = readLengthCell(cell, at, { example: EXAMPLES[row] });
  if (value instanceof Failure || !isBare(cell)) return value;
  if (value < DEFAULTS[at.unit ?? "in"].least)
    return refuse<BlockProblem>(at, { kind: "too short in this unit", read: cell, value });
  if (row === "Span" && value >= WIDEST && at.unit === "in" && !unitRow)
    return refuse<BlockProblem>(at, { kind: "too long in this unit", read: cell, value });
  return value;
}

/** Bare numbers that are all far too small for a roof's boards, under half the least span, are feet or meters. */
function readBoards(cell: Input, at: Reading, least: number): Result<readonly number[], ArgumentProblem> {
  const read = boardLengths(cell, at);
  if (read instanceof Failure || read.at(-1)! >= least / 2 || Array.isArray(cell)) return read;
  const parts = String(cell).split(/[\s,;]|to|by/i);
  if (!parts.every((part) => part === "" || isBare(part))) return read;
  return refuse<BlockProblem>(at, { kind: "boards too short in this unit", read: cell });
}

/** The unit of the whole block. Rows in the other one are at fault. */
function blockUnit(rows: ReadonlyMap<Row, Input>, reading: Reading, kept: Kept, optional: Kept): Unit {
  const given = optional<Unit | null>("Unit", null, (cell, at) => readChoiceCell<Unit>(cell, at, ["in", "mm"]));
  const texts: { row: Row; unit: Unit }[] = [];
  for (const row of [...LENGTHS, ...SIZES]) {
    const cell = rows.get(row);
    if (typeof cell !== "string") continue;
    const read = SIZES.includes(row) ? readSize(cell) : readLength(cell);
    if (read instanceof Failure || read.unit === null) continue;
    // A nominal size is a name, in any unit; only an actual one says in which.
    if (SIZES.includes(row) && isNominal(read as ReadSize)) continue;
    texts.push({ row, unit: read.unit });
  }
  const unit = given ?? (texts.length > 0 && texts.every((text) => text.unit === "mm") ? "mm" : "in");
  const unitRow = rows.has("Unit");
  reading.unit = unit;
  reading.unitFrom = unitRow ? { argument: reading.argument, row: "Unit" } : "block";
  for (const stray of texts)
    if (stray.unit !== unit)
      kept(stray.row, null, (read, at) =>
        refuse<BlockProblem>(at, { kind: "row in other unit", read, unit: stray.unit, unitRow }),
      );
  return unit;
}

function sectionIn(unit: Unit, { name, thickness, depth, unit: own }: ReadSize): Section {
  if (own === unit) return { name, thickness, depth };
  // Dressed lumber is sold to whole millimeters: 1.5 x 5.5 in is 38 x 140.
  const metric = (inches: number) => Math.round(inches * MM_PER_INCH);
  return { name, thickness: metric(thickness), depth: metric(depth) };
}

function isNone(cell: Input): boolean {
  return typeof cell === "string" && cell.trim().toLowerCase() === "none";
}

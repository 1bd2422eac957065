import { deeperSize } from "../../src/measure/deeperSize.ts";
import { isNominal } from "../../src/measure/isNominal.ts";
import { readLength } from "../../src/measure/readLength.ts";
import { readSize, type ReadSize } from "../../src/measure/readSize.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { labelledBlock } from "../../src/registry/labelledBlock.ts";
import { isBlank } from "../../src/registry/cells.ts";
import { readChoiceCell } from "../../src/registry/readChoiceCell.ts";
import { newReading, type Reading } from "../../src/registry/reading.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { readNumberCell } from "../../src/registry/readNumberCell.ts";
import { readPitchCell } from "../../src/registry/readPitchCell.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";
import { boardLengths } from "./boardLengths.ts";
import { readTrim, YES_NO } from "./endTrim.ts";
import { readEaves } from "./eaveRows.ts";
import { jobName } from "./jobName.ts";
import { isBare, isNone, rowReader, type RowReader } from "./rowReader.ts";
import { wingColumns } from "./wingColumns.ts";
import { readWing, WINGS_OWN, type WingReading, type WingRow } from "./wingRows.ts";

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
  "Valley",
  "Seat",
  "Heel",
  "Set out from",
  "Hip top",
  "Hip head",
  "Correction",
  "End correction",
  "Tail cut",
  "Fascia",
  "Sub-fascia",
  "Blocking",
  "Boards",
  "End trim",
  "Allow crown down",
  "Waste",
  "Spares",
  "Unit",
  "Job name",
] as const;
export type Row = (typeof ROWS)[number];

/** A row of any column. */
export type BlockRow = Row | WingRow;
const LABELS: readonly BlockRow[] = [...ROWS, ...WINGS_OWN];

/** Rows whose value is a length and so may say in which unit the block is. */
const LENGTHS: readonly BlockRow[] = [
  "From left corner",
  "Out from wall",
  "Span",
  "Length",
  "Spacing",
  "Overhang",
  "End overhang",
  "Seat",
  "Heel",
  "Correction",
  "End correction",
  "End trim",
  "Sheathing",
];
const SIZES: readonly BlockRow[] = ["Rafter", "Hip", "Valley", "Ridge", "Fascia", "Sub-fascia"];

/** Rows in which no 0 can be meant: it is an empty cell there, as some hosts hand it over. */
const NEVER_ZERO: readonly BlockRow[] = [
  ...WINGS_OWN,
  "End pitch",
  "Ends",
  ...SIZES,
  "Set out from",
  "Hip top",
  "Hip head",
  "Tail cut",
  "Blocking",
  "Boards",
  "Allow crown down",
  "Unit",
  "Job name",
];

/** What stands in a roof block's optional rows when they are blank. */
export const DEFAULTS = {
  in: { spacing: 24, seat: 3.5, rafter: "2x6", least: 60, boards: [96, 120, 144, 168, 192, 216, 240], trim: 0.5 },
  mm: {
    spacing: 600,
    seat: 89,
    rafter: "38 x 140 mm",
    least: 1500,
    boards: [2400, 3000, 3600, 4200, 4800, 5400, 6000],
    trim: 12,
  },
} as const;

/** Inches: no hip roof spans 250 ft on rafters, and none is narrower than 3 m by much. */
const WIDEST = 3000;

/** No wing stands out less than this, typed without a mark. */
const LEAST_OUT = { in: 24, mm: 600 } as const;

/** A roof block read row by row. */
export interface BlockReading {
  /** A row that is wrong counts as left out. */
  readonly spec: RoofSpec;
  /** What papers call the job; empty where it has no name. */
  readonly job: string;
  /** What is wrong with the main roof's column, one problem for a row. */
  readonly problems: ReadonlyMap<BlockRow, Failure<ArgumentProblem>>;
  /** From the left; each with what is wrong with it. */
  readonly wings: readonly WingReading<BlockRow>[];
}

/** Reads a roof block: labels, a column of values, and one for each wing, in one unit. The first row at fault refuses it. */
export function readRoofBlock(name: string, input: Input): Result<RoofSpec, ArgumentProblem> {
  const read = readWholeBlock(name, input);
  return read instanceof Failure ? read : read.spec;
}

/** The same, with what stands in the block beside the roof. */
export function readWholeBlock(name: string, input: Input): Result<BlockReading, ArgumentProblem> {
  const read = readRows(name, input);
  if (read instanceof Failure) return read;
  const [first] = [read, ...read.wings].flatMap(({ problems }) => [...problems.values()]);
  return first ?? read;
}

/** Reads every row of a roof block. The unit is the row Unit, else inches unless every length text is metric. */
export function readRows(name: string, input: Input): Result<BlockReading, ArgumentProblem> {
  const reading = newReading(name);
  const block = labelledBlock(input, reading, LABELS);
  if (block instanceof Failure) return block;
  const columns = wingColumns(block, reading);
  if (columns instanceof Failure) return columns;
  const rows = new Map<BlockRow, Input>();
  for (const [row, [cell]] of block.rows)
    if (!isBlank(cell) && !(cell === 0 && NEVER_ZERO.includes(row))) rows.set(row, cell);
  const problems = new Map<BlockRow, Failure<ArgumentProblem>>();
  const main = { read: rowReader(rows, reading, problems), rows };
  const wings = columns.map((column) => {
    const wrong = new Map<BlockRow, Failure<ArgumentProblem>>();
    return { column, wrong, rows: column.rows, read: rowReader(column.rows, reading, wrong, column.letter) };
  });
  blockUnit(reading, [main, ...wings]);
  const spec = mainSpec(main.read, reading, wings.length > 0);
  const { pitch, ridge } = spec;
  const part = { pitch, ridge, readSpan: spanReader("Span", main.read.has("Unit")), readOut };
  const read = wings.map(({ column, wrong }) => readWing(column, reading, part, wrong));
  const job = jobName(main.read.cell("Job name"));
  return { spec: { ...spec, wings: read.map((wing) => wing.spec) }, job, problems, wings: read };
}

const EXAMPLES = { Span: ["24'", "288"], Length: ["36'", "432"] } as const;

function mainSpec(read: RowReader<BlockRow>, reading: Reading, winged: boolean): RoofSpec {
  const { kept, optional, length, word, size, has } = read;
  const unit = reading.unit ?? "in";
  for (const row of WINGS_OWN)
    optional(row, null, (cell, at) => refuse<BlockProblem>(at, { kind: "row of a wing", row, read: cell }));
  for (const row of ["Span", "Length", "Pitch"] as const)
    if (!has(row)) kept(row, null, (_, at) => refuse<BlockProblem>(at, { kind: "row missing", row }));
  const preset = DEFAULTS[unit];
  const pitch = kept("Pitch", 0.5, readPitchCell);
  const endPitch = optional<number | null>("End pitch", null, readPitchCell);
  const rafter = size("Rafter", preset.rafter);
  const deeper = deeperSize(rafter.name);
  const hip = size("Hip", deeper);
  if (has("Seat") && has("Heel")) kept("Heel", null, (_, at) => refuse<BlockProblem>(at, { kind: "heel beside seat" }));
  const ridgeless = isNone(read.cell("Ridge"));
  if (ridgeless && winged) kept("Ridge", null, (_, at) => refuse<BlockProblem>(at, { kind: "wings need a ridge" }));
  const waste = optional("Waste", 0, readWaste);
  const boards = optional<readonly number[]>("Boards", preset.boards, (cell, at) => readBoards(cell, at, preset.least));
  return {
    unit,
    span: kept("Span", preset.least, spanReader("Span", has("Unit"))),
    length: kept("Length", preset.least, spanReader("Length", has("Unit"))),
    pitch,
    endPitch,
    ends: word("Ends", ["hip and hip", "hip and gable", "gable and hip"]),
    spacing: length("Spacing", preset.spacing, { example: "24" }),
    overhang: length("Overhang", 0, { zero: true, example: "16" }),
    endOverhang: read.levelOverhang("End overhang"),
    rafter,
    hip,
    valley: has("Valley") ? size("Valley", hip.name) : hip,
    ridge: ridgeless ? null : size("Ridge", deeper),
    seat: has("Heel") && !has("Seat") ? null : length("Seat", preset.seat, { example: "3.5" }),
    heel: length("Heel", null, { example: "4.4" }),
    setOutFrom: word("Set out from", ["king common", "corner"]),
    hipTop: word("Hip top", ["dropped", "backed", "shifted"]),
    hipHead: word("Hip head", ["king commons", "ridge"]),
    correction: length("Correction", 0, { zero: true, negative: true, example: "0.25" }),
    endCorrection: length("End correction", 0, { zero: true, negative: true, example: "0.25" }),
    ...readEaves(read),
    boards,
    endTrim: optional("End trim", preset.trim, (cell, at) => readTrim(cell, at, boards[0]!)),
    crownDown: word("Allow crown down", YES_NO) === "yes",
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

/** A bare number that is far too small for its row is feet taken for inches, and one far too large for a span is millimeters. */
function spanReader(
  row: "Span" | "Length",
  unitRow: boolean,
): (cell: Input, at: Reading) => Result<number, ArgumentProblem> {
  return (cell, at) => {
    const value = readLengthCell(cell, at, { example: EXAMPLES[row] });
    if (value instanceof Failure || !isBare(cell)) return value;
    if (value < DEFAULTS[at.unit ?? "in"].least)
      return refuse<BlockProblem>(at, { kind: "too short in this unit", read: cell, value });
    if (row === "Span" && value >= WIDEST && at.unit === "in" && !unitRow)
      return refuse<BlockProblem>(at, { kind: "too long in this unit", read: cell, value });
    return value;
  };
}

/** How far a wing stands out: a bare number that is no more than a step from the wall is feet taken for inches. */
function readOut(cell: Input, at: Reading): Result<number, ArgumentProblem> {
  const value = readLengthCell(cell, at, { example: ["10'", "120"] });
  return !(value instanceof Failure) && isBare(cell) && value < LEAST_OUT[at.unit ?? "in"]
    ? refuse<BlockProblem>(at, { kind: "too short in this unit", read: cell, value })
    : value;
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
function blockUnit(
  reading: Reading,
  columns: readonly { read: RowReader<BlockRow>; rows: ReadonlyMap<BlockRow, Input> }[],
): void {
  const main = columns[0]!.read;
  const given = main.optional<Unit | null>("Unit", null, (cell, at) => readChoiceCell<Unit>(cell, at, ["in", "mm"]));
  const texts: { read: RowReader<BlockRow>; row: BlockRow; unit: Unit }[] = [];
  for (const { read: column, rows } of columns)
    for (const row of [...LENGTHS, ...SIZES]) {
      const cell = rows.get(row);
      if (typeof cell !== "string") continue;
      const read = SIZES.includes(row) ? readSize(cell) : readLength(cell);
      if (read instanceof Failure || read.unit === null) continue;
      // A nominal size is a name, in any unit; only an actual one says in which.
      if (SIZES.includes(row) && isNominal(read as ReadSize)) continue;
      texts.push({ read: column, row, unit: read.unit });
    }
  const unit = given ?? (texts.length > 0 && texts.every((text) => text.unit === "mm") ? "mm" : "in");
  const unitRow = main.has("Unit");
  reading.unit = unit;
  reading.unitFrom = unitRow ? { argument: reading.argument, row: "Unit" } : "block";
  for (const stray of texts)
    if (stray.unit !== unit)
      stray.read.kept(stray.row, null, (read, at) =>
        refuse<BlockProblem>(at, { kind: "row in other unit", read, unit: stray.unit, unitRow }),
      );
}

import { Failure, type Result } from "../../src/measure/result.ts";
import type { Reading } from "../../src/registry/reading.ts";
import { readChoiceCell } from "../../src/registry/readChoiceCell.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { readPitchCell } from "../../src/registry/readPitchCell.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { Section, WingSpec } from "../../src/roof/frame/roofSpec.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";
import { isNone, rowReader } from "./rowReader.ts";
import type { WingColumn } from "./wingColumns.ts";

/** Rows that only a wing's column has. */
export const WINGS_OWN = [
  "Wall",
  "From left corner",
  "Out from wall",
  "Long valley",
  "Wing framing",
  "Sheathing",
] as const;

/** The rows of a wing's column, in the order in which the pane writes them. */
export const WING_ROWS = [
  "Wall",
  "From left corner",
  "Out from wall",
  "Span",
  "Ends",
  "Pitch",
  "End pitch",
  "Overhang",
  "End overhang",
  "Ridge",
  "Long valley",
  "Wing framing",
  "Sheathing",
] as const;
export type WingRow = (typeof WING_ROWS)[number];

/** Rows of a wing that no wing can do without. */
export const WING_NEEDED = ["Wall", "From left corner", "Out from wall", "Span", "Ends"] as const;

/** Thickness of sheathing where the row is blank. */
export const SHEATHING = { in: 0.5, mm: 12 } as const;

/** A wing's column read row by row. */
export interface WingReading<L extends string> {
  readonly letter: string;
  /** A row that is wrong counts as left out. */
  readonly spec: WingSpec;
  /** What is wrong, one problem for a row. */
  readonly problems: ReadonlyMap<L | WingRow, Failure<ArgumentProblem>>;
}

/** The main roof's part that a wing's blank rows stand for, and how its spans are read. */
export interface MainPart {
  readonly pitch: number;
  readonly ridge: Section | null;
  readSpan(cell: Input, at: Reading): Result<number, ArgumentProblem>;
  readOut(cell: Input, at: Reading): Result<number, ArgumentProblem>;
}

/** Reads a wing's column. `problems` holds what is wrong already, and takes the rest. */
export function readWing<L extends string>(
  { letter, rows }: WingColumn<L>,
  reading: Reading,
  main: MainPart,
  problems: Map<L | WingRow, Failure<ArgumentProblem>>,
): WingReading<L> {
  const read = rowReader<L | WingRow>(rows, reading, problems, letter);
  const none = [...rows].filter(([row]) => !(WING_ROWS as readonly string[]).includes(row));
  for (const [row] of none)
    read.kept(row, null, (cell, at) => refuse<BlockProblem>(at, { kind: "row of the main roof", row, read: cell }));
  for (const row of WING_NEEDED)
    if (!rows.has(row as L & WingRow))
      read.kept(row, null, (_, at) => refuse<BlockProblem>(at, { kind: "wing without", row }));
  const framing = read.word("Wing framing", ["framed in", "laid over"]);
  const ridge = main.ridge ?? { name: "2x8", thickness: 0, depth: 0 };
  const spec: WingSpec = {
    letter,
    wall: read.optional("Wall", "front", readWall),
    from: read.optional<WingSpec["from"]>("From left corner", 0, readFrom),
    out: read.optional("Out from wall", 0, main.readOut),
    span: read.optional("Span", 0, main.readSpan),
    end: read.word("Ends", ["hip", "gable"]),
    pitch: read.optional("Pitch", main.pitch, readPitchCell),
    endPitch: read.optional<number | null>("End pitch", null, readPitchCell),
    overhang: read.levelOverhang("Overhang"),
    endOverhang: read.levelOverhang("End overhang"),
    ridge: isNone(read.cell("Ridge"))
      ? read.kept("Ridge", ridge, (_, at) => refuse<BlockProblem>(at, { kind: "wings need a ridge" }))
      : read.has("Ridge")
        ? read.size("Ridge", ridge.name)
        : ridge,
    longValley: read.optional<WingSpec["longValley"]>("Long valley", null, (cell, at) =>
      readChoiceCell(cell, at, ["left", "right"] as const),
    ),
    framing,
    sheathing:
      framing === "laid over" || read.has("Sheathing")
        ? read.length("Sheathing", SHEATHING[reading.unit ?? "in"], { example: "1/2" })
        : null,
  };
  return { letter, spec, problems };
}

function readWall(cell: Input, at: Reading): Result<WingSpec["wall"], ArgumentProblem> {
  const end = readChoiceCell(cell, at, ["left", "right"] as const);
  return end instanceof Failure
    ? readChoiceCell(cell, at, ["front", "back"] as const)
    : refuse<BlockProblem>(at, { kind: "wing on an end", read: cell });
}

function readFrom(cell: Input, at: Reading): Result<WingSpec["from"], ArgumentProblem> {
  const flush = readChoiceCell(cell, at, ["flush left", "flush right"] as const);
  if (!(flush instanceof Failure)) return flush;
  const from = readLengthCell(cell, at, { zero: true, example: "96" });
  // A word that is no length was meant for one of the two.
  const none = from instanceof Failure ? from.problem.kind === "not a length" : from === 0;
  return none ? refuse<BlockProblem>(at, { kind: "no place on the wall", read: cell }) : from;
}

import { readSize, type ReadSize } from "../../src/measure/readSize.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import { isBlank } from "../../src/registry/cells.ts";
import { headedBlock, type HeadedRow } from "../../src/registry/headedBlock.ts";
import { plainLabel } from "../../src/registry/labelledBlock.ts";
import { readAngle } from "../../src/registry/readAngle.ts";
import { readChoiceCell } from "../../src/registry/readChoiceCell.ts";
import { inCell, type Reading } from "../../src/registry/reading.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { readNumberCell } from "../../src/registry/readNumberCell.ts";
import { readPitchCell } from "../../src/registry/readPitchCell.ts";
import { readSizeCell } from "../../src/registry/readSizeCell.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input, Parameter } from "../../src/registry/worksheetFunction.ts";
import type { Hand } from "../../src/roof/frame/piece.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";
import { ROWS } from "./roofBlock.ts";
import { roof, type RoofModel } from "./roofModel.ts";

/** A size as it stands on a list: lumber, or any other name, whose section is then not known. */
export interface ListedSize {
  readonly name: string;
  readonly read: ReadSize | null;
}

/** One row of a user's own list of pieces. */
export interface ListedPiece {
  readonly row: number;
  readonly name: string;
  readonly size: ListedSize;
  readonly length: number;
  readonly count: number;
  readonly hand: Hand;
  /** Rise over run of its plumb cuts; 0 for square ends. */
  readonly slope: number;
  /** Degrees from square that its head and its foot are sawn at; 0 where square across, minus where the long point is on the face that is not of its hand. */
  readonly tilt: number;
  readonly footTilt: number;
  /** Where it may be joined if it is longer than every board, from its first end. */
  readonly joints: readonly number[];
}

/** What `pieces` was given as. */
export type PieceSource = { readonly roof: RoofModel } | { readonly list: readonly ListedPiece[] };

const REQUIRED = ["Piece", "Size", "Length", "Count"] as const;
const OPTIONAL = ["Hand", "Pitch", "Saw tilt", "Join", "Foot tilt"] as const;
type Heading = (typeof REQUIRED)[number] | (typeof OPTIONAL)[number];

/** Longer names have no room on a board. */
const LONGEST_NAME = 40;

/** `pieces`: a list with headings, or a roof block, whose members they then are. */
export const piecesParameter: Parameter<PieceSource, "pieces"> = {
  name: "pieces",
  quantity: "pieces",
  block: true,
  description:
    "A roof block, or a list with the headings Piece, Size, Length, Count. With Pitch (jacks: Hand, Saw tilt; feet on a valley: Foot tilt) pieces share slanting cuts, Length along the top edge, tail to long point. Join: where a piece too long is joined.",
  read(input, reading) {
    const rows = headedBlock<Heading>(input, reading, REQUIRED, OPTIONAL);
    if (rows instanceof Failure) return rows;
    if (rows === null) return roofPieces(input, reading);
    const list: ListedPiece[] = [];
    for (const row of rows) {
      const piece = readPiece(row, reading);
      if (piece instanceof Failure) return piece;
      list.push(piece);
    }
    return { list };
  },
};

const LABELS: ReadonlySet<string> = new Set(ROWS.map(plainLabel));

function roofPieces(input: Input, reading: Reading): Result<PieceSource> {
  const labelled =
    Array.isArray(input) &&
    input.some(
      (row) =>
        Array.isArray(row) && typeof row[0] === "string" && row[0].length <= 64 && LABELS.has(plainLabel(row[0])),
    );
  if (!labelled)
    return refuse<BlockProblem>(reading, { kind: "neither list nor roof", read: input, headings: REQUIRED });
  const model = roof("pieces").read(input, reading);
  return model instanceof Failure ? model : { roof: model };
}

function readPiece({ row, cells }: HeadedRow<Heading>, reading: Reading): Result<ListedPiece, ArgumentProblem> {
  const at = (heading: Heading) => inCell(reading, row, heading);
  const name = readName(cells.Piece, at("Piece"));
  if (name instanceof Failure) return name;
  const size = readListedSize(cells.Size, at("Size"));
  if (size instanceof Failure) return size;
  const length = readLengthCell(cells.Length, at("Length"), { example: ["96", `8' 0"`] });
  if (length instanceof Failure) return length;
  const count = readNumberCell(cells.Count, at("Count"), { from: 0, to: 1_000_000, whole: true, example: "pieces" });
  if (count instanceof Failure) return count;
  const slope = isBlank(cells.Pitch) || cells.Pitch === 0 ? 0 : readPitchCell(cells.Pitch, at("Pitch"));
  if (slope instanceof Failure) return slope;
  const tilt = readTilt(cells["Saw tilt"], at("Saw tilt"));
  if (tilt instanceof Failure) return tilt;
  const footTilt = readTilt(cells["Foot tilt"], at("Foot tilt"));
  if (footTilt instanceof Failure) return footTilt;
  const hand = readHand(cells.Hand, at("Hand"));
  if (hand instanceof Failure) return hand;
  const tilted = tilt !== 0 || footTilt !== 0;
  if (tilted && hand === "plain") return refuse<BlockProblem>(reading, { kind: "tilt without hand" });
  if (size.read === null && (slope > 0 || tilted))
    return refuse<BlockProblem>(at("Size"), { kind: "slant of unknown size", read: cells.Size });
  const joints = readJoints(cells.Join, at("Join"));
  if (joints instanceof Failure) return joints;
  return { row, name, size, length, count, hand, slope, tilt, footTilt, joints };
}

/** The most places that are read. */
const MOST_JOINTS = 1000;

/** Places apart by commas, or one of them as a number. */
function readJoints(cell: Input, reading: Reading): Result<readonly number[], ArgumentProblem> {
  if (isBlank(cell) || cell === 0) return [];
  const texts = typeof cell === "string" ? cell.split(",") : [cell];
  if (texts.length > MOST_JOINTS) return refuse<BlockProblem>(reading, { kind: "too many joints", most: MOST_JOINTS });
  const joints: number[] = [];
  for (const text of texts) {
    const at = readLengthCell(text, reading, { example: ["96", `8' 0"`] });
    if (at instanceof Failure) return at;
    joints.push(at);
  }
  return joints;
}

function readName(cell: Input, reading: Reading): Result<string, BlockProblem> {
  const text = typeof cell === "number" ? String(cell) : typeof cell === "string" ? cell.trim() : "";
  if (text === "") return refuse<BlockProblem>(reading, { kind: "piece without name", read: cell });
  if (text.length <= LONGEST_NAME) return text;
  return refuse<BlockProblem>(reading, { kind: "name too long", read: text, most: LONGEST_NAME });
}

/** A size read as lumber where it is one; text that is no pair of measures is a name of the user's own. */
export function readListedSize(cell: Input, reading: Reading): Result<ListedSize, ArgumentProblem> {
  if (typeof cell === "string" && cell.trim() !== "" && cell.trim().length <= LONGEST_NAME) {
    const read = readSize(cell);
    if (read instanceof Failure && read.problem.kind === "not a size")
      return { name: cell.trim().replace(/\s+/g, " "), read: null };
  }
  const size = readSizeCell(cell, reading);
  return size instanceof Failure ? size : { name: size.name, read: size };
}

function readTilt(cell: Input, reading: Reading): Result<number, BlockProblem> {
  if (isBlank(cell)) return 0;
  const value = typeof cell === "string" ? readAngle(cell) : cell;
  if (typeof value === "number" && value > -85 && value < 85) return value;
  return refuse<BlockProblem>(reading, { kind: "tilt out of range", read: cell });
}

const HANDS = ["plain", "left", "right", "L", "R"] as const;

function readHand(cell: Input, reading: Reading): Result<Hand, ArgumentProblem> {
  const hand = isBlank(cell) || cell === 0 ? "plain" : readChoiceCell(cell, reading, HANDS);
  return hand === "L" ? "left" : hand === "R" ? "right" : hand;
}

import { readSize, type ReadSize } from "../../src/measure/readSize.ts";
import { Failure } from "../../src/measure/result.ts";
import { isBlank, shown } from "../../src/registry/cells.ts";
import { headedBlock, type HeadedRow } from "../../src/registry/headedBlock.ts";
import { plainLabel } from "../../src/registry/labelledBlock.ts";
import { choice, number } from "../../src/registry/parameters.ts";
import { readAngle } from "../../src/registry/readAngle.ts";
import { readLengthCell } from "../../src/registry/readLengthCell.ts";
import { readPitchCell } from "../../src/registry/readPitchCell.ts";
import { readSizeCell } from "../../src/registry/readSizeCell.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input, Parameter, Reading } from "../../src/registry/worksheetFunction.ts";
import type { Hand } from "../../src/roof/frame/piece.ts";
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
  /** Degrees from square that its head is sawn at; 0 for a head square across. */
  readonly tilt: number;
}

/** What `pieces` was given as. */
export type PieceSource = { readonly roof: RoofModel } | { readonly list: readonly ListedPiece[] };

const REQUIRED = ["Piece", "Size", "Length", "Count"] as const;
const OPTIONAL = ["Hand", "Pitch", "Saw tilt"] as const;
type Heading = (typeof REQUIRED)[number] | (typeof OPTIONAL)[number];

/** Longer names have no room on a board. */
const LONGEST_NAME = 40;

/** `pieces`: a list with headings, or a roof block, whose members they then are. */
export const piecesParameter: Parameter<PieceSource, "pieces"> = {
  name: "pieces",
  quantity: "pieces",
  block: true,
  description:
    "A roof block, or a list with the headings Piece, Size, Length, Count; with Pitch (and for jacks Hand and Saw tilt) pieces share slanting cuts, and Length is along the top edge, tail to long point.",
  read(input, reading) {
    const rows = headedBlock<Heading>("pieces", input, REQUIRED, OPTIONAL);
    if (rows instanceof Refusal || rows instanceof CellError) return rows;
    if (rows === null) return roofPieces(input, reading);
    const list: ListedPiece[] = [];
    for (const row of rows) {
      const piece = readPiece(row, reading);
      if (piece instanceof Refusal || piece instanceof CellError) return piece;
      list.push(piece);
    }
    return { list };
  },
};

const LABELS: ReadonlySet<string> = new Set(ROWS.map(plainLabel));

function roofPieces(input: Input, reading: Reading): PieceSource | Refusal | CellError {
  const labelled =
    Array.isArray(input) &&
    input.some(
      (row) =>
        Array.isArray(row) && typeof row[0] === "string" && row[0].length <= 64 && LABELS.has(plainLabel(row[0])),
    );
  if (!labelled) {
    const was = isBlank(input)
      ? "nothing was given"
      : Array.isArray(input)
        ? "this block is neither"
        : `${shown(input)} was read, which is neither`;
    return new Refusal(
      "#VALUE!",
      `pieces: ${was}. Point to a list with the headings ${REQUIRED.join(", ")}, or to a roof block (Span, Length, Pitch and so on).`,
    );
  }
  const model = roof("pieces").read(input, reading);
  return model instanceof Refusal || model instanceof CellError ? model : { roof: model };
}

function readPiece({ row, cells }: HeadedRow<Heading>, reading: Reading): ListedPiece | Refusal | CellError {
  const at = (heading: Heading) => `pieces, row ${row}: ${heading}`;
  const name = nameOf(at("Piece"), cells.Piece);
  if (name instanceof Refusal) return name;
  const size = readListedSize(at("Size"), cells.Size, reading);
  if (size instanceof Refusal || size instanceof CellError) return size;
  const length = readLengthCell(at("Length"), cells.Length, reading, { example: `96 or 8' 0"` });
  if (typeof length !== "number") return length;
  const count = isBlank(cells.Count)
    ? refuse(at("Count"), `nothing was given. Type how many, such as 4.`)
    : number(at("Count"), "", {
        from: 0,
        to: 1_000_000,
        whole: true,
        example: "how many, such as 4",
        fallback: 0,
      }).read(cells.Count, reading);
  if (typeof count !== "number") return count;
  const slope = isBlank(cells.Pitch) || cells.Pitch === 0 ? 0 : readPitchCell(at("Pitch"), cells.Pitch);
  if (typeof slope !== "number") return slope;
  const tilt = tiltOf(at("Saw tilt"), cells["Saw tilt"]);
  if (typeof tilt !== "number") return tilt;
  const hand = handOf(at("Hand"), cells.Hand, reading);
  if (typeof hand !== "string") return hand;
  if (tilt > 0 && hand === "plain")
    return refuse(at("Hand"), `a head with a saw tilt is left or right. Type left or right.`);
  if (size.read === null && (slope > 0 || tilt > 0))
    return refuse(
      at("Size"),
      `${shown(cells.Size)} is no lumber size, and a slanting cut needs thickness and depth. Type 2x8, "1.5 x 7.25" or "38 x 184".`,
    );
  return { row, name, size, length, count, hand, slope, tilt };
}

function nameOf(at: string, cell: Input): string | Refusal {
  const text = typeof cell === "number" ? String(cell) : typeof cell === "string" ? cell.trim() : "";
  if (text === "")
    return refuse(
      at,
      `${isBlank(cell) ? "nothing was given" : `${shown(cell)} was read`}. Type what is written on the piece, such as J1.`,
    );
  return text.length <= LONGEST_NAME
    ? text
    : refuse(at, `${shown(text)} is too long for a board. Type ${LONGEST_NAME} letters at most.`);
}

/** A size read as lumber where it is one; text that is no pair of measures is a name of the user's own. */
export function readListedSize(at: string, cell: Input, reading: Reading): ListedSize | Refusal | CellError {
  if (typeof cell === "string" && cell.trim() !== "" && cell.trim().length <= LONGEST_NAME) {
    const read = readSize(cell);
    if (read instanceof Failure && read.problem.kind === "not a size")
      return { name: cell.trim().replace(/\s+/g, " "), read: null };
  }
  const size = readSizeCell(at, cell, reading);
  return size instanceof Refusal || size instanceof CellError ? size : { name: size.name, read: size };
}

function tiltOf(at: string, cell: Input): number | Refusal {
  if (isBlank(cell)) return 0;
  const value = typeof cell === "string" ? readAngle(cell) : cell;
  if (typeof value === "number" && value >= 0 && value < 85) return value;
  return refuse(
    at,
    `${shown(cell)} was read; it is the saw's tilt from square, from 0 to 85 degrees. Type 45 for a regular jack.`,
  );
}

function handOf(at: string, cell: Input, reading: Reading): Hand | Refusal | CellError {
  const hand = choice(at, "", ["plain", "left", "right", "L", "R"] as const, "plain").read(
    cell === 0 ? "" : cell,
    reading,
  );
  return hand === "L" ? "left" : hand === "R" ? "right" : hand;
}

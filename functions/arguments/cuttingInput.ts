import type { StockBoard, StockPiece } from "../../src/cutting/stock.ts";
import { nominalOf } from "../../src/measure/nominalOf.ts";
import { readSize } from "../../src/measure/readSize.ts";
import { Failure } from "../../src/measure/result.ts";
import { MM_PER_INCH, type Unit } from "../../src/measure/unit.ts";
import { pieceParts } from "../../src/roof/members/pieceParts.ts";
import { jointsIn, type RidgeBoard } from "../../src/roof/members/ridgeJoints.ts";
import { stockPieces, type JoinedPiece } from "../../src/roof/tables/stockPieces.ts";
import type { ListedBoard } from "./boardTable.ts";
import type { ListedPiece, ListedSize, PieceSource } from "./pieceList.ts";

/** A piece in parts. A list does not say what its joints stand over. */
export interface Joined extends Pick<JoinedPiece, "name" | "size" | "joints" | "among"> {
  readonly over: JoinedPiece["over"] | null;
}

/** What is cut, and from what; lengths in the unit of the call. */
export interface CuttingInput {
  readonly pieces: readonly StockPiece[];
  readonly boards: readonly StockBoard[];
  /** Depths by size, where they are known. */
  readonly depths: ReadonlyMap<string, number>;
  /** What is longer than every board, and where it is joined, from its first end. */
  readonly joined: readonly Joined[];
  /** For each piece its row in the user's own list; empty for a roof. */
  readonly rows: readonly number[];
}

/** The lists that the cutting room plans from: sizes that are the same lumber under one name, slants and turns from pitches and tilts. What is longer than every board, `trim` off each, is joined where it may be. */
export function cuttingInput(
  source: PieceSource,
  listed: readonly ListedBoard[],
  unit: Unit | null,
  trim: number,
): CuttingInput {
  const names = new Map<string, string>();
  return "roof" in source ? ofRoof(source, listed, names, trim) : ofList(source.list, listed, unit, names, trim);
}

function ofRoof(
  { roof: { frame, pieces: framed, eaves } }: Extract<PieceSource, { roof: unknown }>,
  listed: readonly ListedBoard[],
  names: Map<string, string>,
  trim: number,
): CuttingInput {
  const pieces = [...framed, ...eaves];
  const order = stockPieces(frame, pieces, (name) => lengthsOf(listed, keyOf(name)), trim);
  // A size may be written in two ways in one block, 2x8 and 1.5 x 7.25: it is one stock of boards.
  const stock = order.pieces.map((piece): StockPiece => ({
    ...piece,
    size: nameIn(names, keyOf(piece.size), piece.size),
  }));
  const depths = new Map(
    pieces.map(({ section }) => [nameIn(names, keyOf(section.name), section.name), section.depth]),
  );
  return {
    pieces: stock,
    boards: boardsOf(listed, names),
    depths,
    joined: order.joined.map((one) => ({ ...one, size: nameIn(names, keyOf(one.size), one.size) })),
    rows: [],
  };
}

function ofList(
  list: readonly ListedPiece[],
  listed: readonly ListedBoard[],
  unit: Unit | null,
  names: Map<string, string>,
  trim: number,
): CuttingInput {
  const joined: Joined[] = [];
  const rows: number[] = [];
  const depths = new Map<string, number>();
  const pieces = list.flatMap((piece): StockPiece[] => {
    const { name, size, length, count, hand, slope, tilt, footTilt } = piece;
    const { thickness, depth } = sectionOf(size, unit);
    if (depth > 0) depths.set(nameIn(names, sizeKey(size), size.name), depth);
    const along = Math.sqrt(1 + slope * slope);
    const [turn, footTurn] = [tilt, footTilt].map((angle) => (angle * Math.PI) / 180) as [number, number];
    const slant = (angle: number): number => (hand === "left" ? 1 : -1) * thickness * Math.tan(angle) * along;
    const own = nameIn(names, sizeKey(size), size.name);
    const joints = slope === 0 ? jointsIn(length, piece.joints, lengthsOf(listed, sizeKey(size)), trim) : [];
    if (joints.length > 0) joined.push({ name, size: own, joints, over: null });
    return pieceParts(name, length, joints).map((part) => {
      rows.push(piece.row);
      return {
        ...part,
        size: own,
        count,
        hand,
        lean: depth * slope,
        slant: `slope ${slope}`,
        slants: [slant(-footTurn), slant(turn)] as const,
        spread: along / Math.cos(Math.max(Math.abs(turn), Math.abs(footTurn))),
      };
    });
  });
  return { pieces, boards: boardsOf(listed, names), depths, joined, rows };
}

/** Thickness and depth in the unit of the call; dressed lumber is sold to whole millimeters. */
function sectionOf({ read }: ListedSize, unit: Unit | null): { thickness: number; depth: number } {
  if (read === null) return { thickness: 0, depth: 0 };
  const metric = (inches: number) => Math.round(inches * MM_PER_INCH);
  return read.unit === "in" && unit === "mm" ? { thickness: metric(read.thickness), depth: metric(read.depth) } : read;
}

function boardsOf(listed: readonly ListedBoard[], names: ReadonlyMap<string, string>): StockBoard[] {
  return [...names].flatMap(([key, size]) =>
    listed
      .filter((board) => board.size === null || sizeKey(board.size) === key)
      .map(({ length, price, count }): StockBoard => ({
        size,
        length,
        ...(price === null ? {} : { price }),
        ...(count === null ? {} : { count }),
      })),
  );
}

/** What a part of a piece of one size can be cut from. */
function lengthsOf(listed: readonly ListedBoard[], key: string): RidgeBoard[] {
  return boardsOf(listed, new Map([[key, key]])).map(({ length, price }) => ({ length, cost: price ?? length }));
}

/** The name under which a size goes: as it was written first. */
function nameIn(names: Map<string, string>, key: string, name: string): string {
  const known = names.get(key) ?? name;
  names.set(key, known);
  return known;
}

/** Two sizes with the same key are the same lumber: 2x8, 1.5 x 7.25 and 38 x 184 mm. */
function sizeKey({ name, read }: ListedSize): string {
  const nominal = read === null ? null : nominalOf(read);
  return nominal ? `${nominal.nominalThickness}x${nominal.nominalDepth}` : (read?.name ?? name.toLowerCase());
}

function keyOf(name: string): string {
  const read = readSize(name);
  return sizeKey({ name, read: read instanceof Failure ? null : read });
}

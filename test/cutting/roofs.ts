import { boardsParameter } from "../../functions/arguments/boardTable.ts";
import { cuttingInput } from "../../functions/arguments/cuttingInput.ts";
import { piecesParameter } from "../../functions/arguments/pieceList.ts";
import { Failure } from "../../src/measure/result.ts";
import { newReading } from "../../src/registry/reading.ts";
import { wingedBlocks } from "../snapshot/wingedBlocks.ts";
import { chance } from "../solids/chance.ts";
import type { Instance } from "./instances.ts";

type Block = (readonly [string, string | number])[];

/** A roof block by chance: spans of 16 to 40 ft, any pitch and spacing, half of them of two pitches. Invented. */
function block(random: () => number, widest: number): Block {
  const one = <T>(...of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
  const whole = (low: number, high: number): number => Math.round((low + random() * (high - low)) * 4) / 4;
  const pitch = one(4, 5, 6, 7, 8, 9, 10, 12);
  const endPitch = random() < 0.5 ? one(4, 6, 7, 8, 9, 12) : pitch;
  const span = whole(192, widest);
  const ends = one("hip and hip", "hip and hip", "hip and gable");
  const length = (span * pitch) / endPitch + whole(24, 480);
  return [
    ["Span", span],
    ["Length", length],
    ["Pitch", pitch],
    ["End pitch", endPitch],
    ["Ends", ends],
    ["Spacing", one(12, 16, 19.2, 24)],
    ["Overhang", whole(8, 24)],
    ["Rafter", "2x10"],
    ["Hip", one("2x10", "2x12")],
    ["Ridge", "2x12"],
    ["Set out from", one("king common", "corner")],
    ["Hip head", one("king commons", "ridge")],
    ["Hip top", one("dropped", "backed")],
  ];
}

/** The pieces of a block and its boards as LUMBERORDER hands them to the search; null where the roof cannot be framed or its hip is longer than every board. */
function listOf(cells: Block, longest: number, priced: () => number | null, trim: number): Instance | null {
  const source = piecesParameter.read(cells, newReading("pieces"));
  if (source instanceof Failure) return null;
  const feet = Array.from({ length: (longest - 8) / 2 + 1 }, (_, n) => 8 + 2 * n);
  const table = [
    ["Size", "Length", "Price"],
    ...["2x10", "2x12"].flatMap((size) => feet.map((long) => [size, long * 12, priced() ?? ""])),
  ];
  const listed = boardsParameter.read(table, newReading("boards"));
  if (listed instanceof Failure) throw new Error(JSON.stringify(listed.problem));
  const { pieces, boards } = cuttingInput(source, listed, "in", trim);
  const most = Math.max(...pieces.map(({ length, lean = 0 }) => length + lean));
  return most + trim > longest * 12 ? null : { pieces: [...pieces], boards: [...boards], kerf: 0.125, trim };
}

/**
 * So many roofs by chance, framed by the program and ordered together, as one roof or as an estimator's whole street; of every other one the boards have prices.
 *
 * @param widest the widest span in inches; boards come as long as such a roof's hips.
 */
export function realRoofs(seed: number, roofs: number, widest = 480): Instance {
  const random = chance(seed * 7919);
  const longest = widest > 480 ? 60 : 40;
  const pricedNow = seed % 2 === 0;
  const trim = seed % 3 === 0 ? 0 : 0.5;
  const pieces: Instance["pieces"] = [];
  let first: Instance | null = null;
  for (let n = 0; n < roofs;) {
    let feet = 0;
    const price = (): number | null => {
      feet = feet >= longest ? 8 : Math.max(8, feet + 2);
      return pricedNow ? Math.round((feet * 0.9 + feet * feet * 0.012 + random() * 2) * 100) / 100 : null;
    };
    const list = listOf(block(random, widest), longest, price, trim);
    if (list === null) continue;
    first ??= list;
    pieces.push(...list.pieces.map((piece) => ({ ...piece, name: `${n} ${piece.name}` })));
    n++;
  }
  const boards = first!.boards;
  const sizes = new Set(boards.map(({ size }) => size));
  for (const { size } of pieces)
    if (!sizes.has(size)) {
      sizes.add(size);
      boards.push(
        ...first!.boards.filter((board) => board.size === boards[0]!.size).map((board) => ({ ...board, size })),
      );
    }
  return { pieces, boards, kerf: first!.kerf, trim };
}

/** A roof with wings by chance, its boards of 8 to 40 ft, of every other one with prices; null where the roof is refused. Invented. */
export function wingedRoof(seed: number): Instance | null {
  const source = piecesParameter.read(wingedBlocks(1, 50_000 + seed)[0]!, newReading("pieces"));
  if (source instanceof Failure) return null;
  const feet = Array.from({ length: 17 }, (_, n) => 8 + 2 * n);
  const listed = feet.map((long) => ({ size: null, length: long * 12, price: null, zeroPrice: false, count: null }));
  const pieces = [...cuttingInput(source, listed, "in", 0.5).pieces];
  const price = (long: number): number =>
    Math.round((long * 0.9 + long * long * 0.012 + ((long * 37) % 11) / 6) * 100) / 100;
  const boards = [...new Set(pieces.map(({ size }) => size))].flatMap((size) =>
    feet.map((long) => ({ size, length: long * 12, ...(seed % 2 === 0 ? { price: price(long) } : {}) })),
  );
  return { pieces, boards, kerf: 0.125, trim: 0.5 };
}

/** How many distinct lengths a list has, sizes and slants apart. */
export function lengthsOf({ pieces }: Instance): number {
  return new Set(pieces.map(({ size, slant, length }) => `${size} ${slant} ${length.toFixed(6)}`)).size;
}

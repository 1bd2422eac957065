import { planCuts } from "../src/cutting/planCuts.ts";
import type { CutPlan, PlannedBoard, StockBoard, StockPiece } from "../src/cutting/stock.ts";
import { lengthText } from "../src/measure/lengthText.ts";
import { nominalOf } from "../src/measure/nominalOf.ts";
import { readSize } from "../src/measure/readSize.ts";
import { Reason } from "../src/measure/reason.ts";
import { MM_PER_INCH, type Unit } from "../src/measure/unit.ts";
import type { Refusal } from "../src/registry/refusal.ts";
import { optionalLength } from "../src/registry/parameters.ts";
import type { Reading } from "../src/registry/worksheetFunction.ts";
import { stockPieces } from "../src/roof/stockPieces.ts";
import type { ListedBoard } from "./boardStock.ts";
import { orderRefusal } from "./orderRefusal.ts";
import type { ListedPiece, ListedSize, PieceSource } from "./pieceList.ts";

/** A plan and what it was made from; lengths in the unit of the call. */
export interface CutOrder {
  readonly plan: CutPlan;
  readonly pieces: readonly StockPiece[];
  readonly boards: readonly StockBoard[];
  /** Depths by size, where they are known. */
  readonly depths: ReadonlyMap<string, number>;
  readonly unit: Unit | null;
  readonly kerf: number;
  readonly priced: boolean;
  /** Where a roof's ridge is joined, from its first end, and of what size it is; null where it is whole or there is none. */
  readonly ridge: { readonly size: string; readonly joints: readonly number[] } | null;
  /** Per cent that a roof block adds. */
  readonly waste: number;
}

/** Width of the saw cut when it is not given: an eighth of an inch, or 3 mm (common practice, no source). */
export const KERF = { in: 0.125, mm: 3 } as const;

export const kerfParameter = optionalLength("kerf", "Width of the saw cut; 0 is allowed.", "1/8 in, or 3 mm where the lengths are metric", { zero: true, example: `1/8"` });

/** The plan for what was read: the least that was found, and the bound below which no plan is. */
export async function cutOrder(source: PieceSource, listed: readonly ListedBoard[], kerf: number | null, { unit }: Pick<Reading, "unit">): Promise<CutOrder | Refusal> {
  const cut = kerf ?? KERF[unit ?? "in"];
  const names = new Map<string, string>();
  const { pieces, boards, ridge, depths } = "roof" in source ? ofRoof(source, listed, names) : ofList(source.list, listed, unit, names);
  const plan = await shared(pieces, boards, cut);
  if (plan instanceof Reason) return orderRefusal(plan.tag === "noBoards" ? noBoardFor(pieces) : plan, source, unit);
  return { plan, pieces, boards, depths, unit, kerf: cut, priced: listed.some(({ price }) => price !== null), ridge, waste: "roof" in source ? source.roof.frame.spec.waste : 0 };
}

/** With no board of any size that is asked for, the first piece names what is missing. */
function noBoardFor(pieces: readonly StockPiece[]): Reason {
  const first = pieces.findIndex(({ count }) => count > 0);
  return new Reason("noBoardOfSize", { row: first + 1, name: pieces[first]!.name, size: pieces[first]!.size });
}

type Lists = Pick<CutOrder, "pieces" | "boards" | "ridge" | "depths">;

function ofRoof({ roof: { frame, pieces } }: Extract<PieceSource, { roof: unknown }>, listed: readonly ListedBoard[], names: Map<string, string>): Lists {
  const size = frame.spec.ridge?.name ?? "";
  const ridgeBoards = boardsOf(listed, new Map([[keyOf(size), size]])).map(({ length, price }) => ({ length, cost: price ?? length }));
  const order = stockPieces(frame, pieces, ridgeBoards);
  // A size may be written in two ways in one block, 2x8 and 1.5 x 7.25: it is one stock of boards.
  const stock = order.pieces.map((piece): StockPiece => ({ ...piece, size: nameIn(names, keyOf(piece.size), piece.size) }));
  const depths = new Map(pieces.map(({ section }) => [nameIn(names, keyOf(section.name), section.name), section.depth]));
  return { pieces: stock, boards: boardsOf(listed, names), depths, ridge: order.joints.length === 0 ? null : { size: nameIn(names, keyOf(size), size), joints: order.joints } };
}

function ofList(list: readonly ListedPiece[], listed: readonly ListedBoard[], unit: Unit | null, names: Map<string, string>): Lists {
  const depths = new Map<string, number>();
  const pieces = list.map((piece): StockPiece => {
    const { name, size, length, count, hand, slope, tilt } = piece;
    const { thickness, depth } = sectionOf(size, unit);
    if (depth > 0) depths.set(nameIn(names, sizeKey(size), size.name), depth);
    const along = Math.sqrt(1 + slope * slope);
    const turn = (tilt * Math.PI) / 180;
    return {
      name, size: nameIn(names, sizeKey(size), size.name), length, count, hand, lean: depth * slope, slant: `slope ${slope}`,
      turn: thickness * Math.tan(turn) * along, spread: along / Math.cos(turn),
    };
  });
  return { pieces, boards: boardsOf(listed, names), depths, ridge: null };
}

/** Thickness and depth in the unit of the call; dressed lumber is sold to whole millimetres. */
function sectionOf({ read }: ListedSize, unit: Unit | null): { thickness: number; depth: number } {
  if (read === null) return { thickness: 0, depth: 0 };
  const metric = (inches: number) => Math.round(inches * MM_PER_INCH);
  return read.unit === "in" && unit === "mm" ? { thickness: metric(read.thickness), depth: metric(read.depth) } : read;
}

function boardsOf(listed: readonly ListedBoard[], names: ReadonlyMap<string, string>): StockBoard[] {
  return [...names].flatMap(([key, size]) => listed.filter((board) => board.size === null || sizeKey(board.size) === key).map(({ length, price, count }): StockBoard => ({
    size, length, ...(price === null ? {} : { price }), ...(count === null ? {} : { count }),
  })));
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
  return sizeKey({ name, read: read instanceof Reason ? null : read });
}

/** How many plans are kept; a sheet seldom asks for more. */
const KEPT = 16;
const plans = new Map<string, Promise<CutPlan | Reason>>();

/** Calls on the same lists share one search, which is most of the work. */
function shared(pieces: readonly StockPiece[], boards: readonly StockBoard[], kerf: number): Promise<CutPlan | Reason> {
  const key = JSON.stringify([pieces, boards, kerf]);
  const known = plans.get(key);
  if (known) return known;
  const plan = planCuts(pieces, boards, { kerf });
  if (plans.size >= KEPT) plans.delete(plans.keys().next().value!);
  plans.set(key, plan);
  return plan;
}

/** Boards to be bought over and above the plan, for waste. */
export interface WasteBoards extends Pick<PlannedBoard, "size" | "length" | "price"> {
  readonly count: number;
  /** How many more the per cent asks than there are. */
  readonly short: number;
}

/**
 * A roof's Waste per cent as whole boards: of every size that part of the length ordered, in boards of the longest length ordered, of which any piece of the
 * size can be cut again.
 */
export function wasteBoards({ plan, boards, waste }: CutOrder): WasteBoards[] {
  if (waste === 0) return [];
  return plan.sizes.map(({ size }): WasteBoards => {
    const own = plan.boards.filter((board) => board.size === size);
    const longest = own.reduce((a, b) => (b.length > a.length ? b : a));
    const ordered = own.reduce((sum, { length, repeat }) => sum + length * repeat, 0);
    const wanted = Math.ceil((ordered * waste) / 100 / longest.length - 1e-9);
    const had = boards.filter((board) => board.size === size && board.length === longest.length && (board.price ?? board.length) === longest.price);
    const used = own.filter(({ length, price }) => length === longest.length && price === longest.price).reduce((sum, { repeat }) => sum + repeat, 0);
    const left = had.reduce((sum, { count }) => sum + (count ?? Infinity), 0) - used;
    const count = Math.max(0, Math.min(wanted, left));
    return { size, length: longest.length, price: longest.price, count, short: wanted - count };
  });
}

/** Where a ridge longer than every board is joined, in words, for the boards of its size; empty for every other. */
export function ridgeNote({ ridge, unit }: Pick<CutOrder, "ridge" | "unit">, size: string): string {
  if (ridge?.size !== size) return "";
  const where = ridge.joints.slice(0, 8).map((at) => lengthText(at, unit)).join(", ");
  return `ridge longer than every board: in ${ridge.joints.length + 1} parts, joined over rafters at ${where}${ridge.joints.length > 8 ? " and so on" : ""} from its first end; hold the joints as the local code says`;
}

import { Failure } from "../../src/measure/result.ts";
import { newReading } from "../../src/registry/reading.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import { boardsParameter } from "../../functions/arguments/boardTable.ts";
import { cutOrder } from "../../functions/arguments/cutOrder.ts";
import type { CutOrder } from "../../functions/arguments/cutOrder.ts";
import { piecesParameter } from "../../functions/arguments/pieceList.ts";
import type { PlacedPiece, PlannedBoard } from "../../src/cutting/stock.ts";
import type { Framed, Roof } from "./assemble.ts";
import { beyond, opposite } from "./half.ts";
import type { Half } from "./half.ts";
import { seenFrom } from "./frame.ts";
import { measured, rowFor, rowsOf } from "./schedule.ts";
import { add, dot, plan as fromAbove, scale, size, unit } from "./vector.ts";
import { blockOf } from "./roofPlan.ts";
import type { RoofPlan } from "./roofPlan.ts";
import type { Shop, Solid } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** Wood that may be shared, cubic inches: what rounding leaves where faces touch. */
const SHARED = 1e-5;

/** Even feet from 8 to 30: long enough for every piece of the cases, so that all of them are laid. */
export const BOARDS = [[`8' to 30' by 2'`]];

/** The order for a roof, from the same cells that a sheet would hand over. */
export async function orderFor(
  plan: RoofPlan,
  kerf: number,
  boards: readonly (readonly unknown[])[] = BOARDS,
  crownDown = false,
): Promise<CutOrder> {
  const reading = newReading("pieces");
  const source = piecesParameter.read(blockOf(plan), reading);
  if (source instanceof Failure) throw new Error(JSON.stringify(source));
  const listed = boardsParameter.read(boards, reading);
  if (listed instanceof Failure) throw new Error(JSON.stringify(listed));
  const order = await cutOrder({ pieces: source, boards: listed, kerf, trim: 0, crownDown }, reading);
  if (order instanceof Failure) throw new Error(messageOf(order));
  return order;
}

/** The piece of the roof, framed in its place, that a name on the plan and a hand stand for. */
export type Find = (placed: Pick<PlacedPiece, "name" | "hand">) => Framed;

/** Names of pieces by what they measure, as MEMBERS names them. */
export async function finder(shop: Shop, roof: Roof, order: CutOrder): Promise<Find> {
  const rows = await rowsOf("MEMBERS", roof.plan);
  const known = new Map<string, Framed>();
  for (const piece of roof.members) {
    const row = rowFor(rows, measured(shop, piece));
    if (!row) throw new Error(`${piece.name} has no row.`);
    const name = String(row["Piece"]);
    known.set(`${name} ${Number(row["Plain"]) > 0 ? "plain" : piece.hand}`, piece);
    if (piece.kind === "ridge")
      ridgeParts(shop, piece, order).forEach((part, i, all) =>
        known.set(`${name} ${i + 1} of ${all.length} plain`, part),
      );
  }
  return ({ name, hand }) => {
    const piece = known.get(`${name} ${hand}`);
    if (!piece) throw new Error(`There is no ${name} ${hand} in the roof.`);
    return piece;
  };
}

function ridgeParts(shop: Shop, ridge: Framed, { joined: [joined] }: CutOrder): Framed[] {
  if (!joined) return [];
  const { along } = ridge.frame;
  const first = Math.min(...shop.corners(ridge.solid).map((c) => dot(along, c)));
  const stops = [-Infinity, ...joined.joints, Infinity];
  const cut = (at: number, side: (half: Half) => Half): Half[] =>
    Number.isFinite(at) ? [side({ normal: along, offset: first + at })] : [];
  return stops
    .slice(1)
    .map((to, i) => ({
      ...ridge,
      solid: shop.trim(ridge.solid, ...cut(stops[i]!, (half) => half), ...cut(to, opposite)),
    }));
}

/** A piece where it lies in its board: along the board, through its thickness from the near face, up from its bottom edge. */
export interface Laid {
  readonly name: string;
  readonly solid: Solid;
  /** The planes that its end cuts follow, the piece behind them. */
  readonly cuts: readonly Half[];
  /** Starts a part of the board that shares nothing with the part before. */
  readonly apart: boolean;
}

/** Takes a piece off the roof and lays it into a board as the plan says: as it is, or turned end for end about the axis through its side faces. */
export function lay(find: Find, shop: Shop, { start, flipped, shares, ...named }: PlacedPiece): Laid {
  const piece = find(named);
  const { frame, thickness, depth, solid } = piece;
  const slope = frame.along[2] / size(fromAbove(frame.along));
  // Along the top edge, with everything brought up to it along the plumb line.
  const plumbUp = ([s, , top]: Vec): number => s - top * slope;
  const along = shop.corners(solid).map((c) => plumbUp(seenFrom(frame, c)));
  const [tail, head] = [Math.min(...along), Math.max(...along)];
  const way = flipped ? -1 : 1;
  const shift: Vec = [start + (flipped ? head : -tail), thickness / 2, flipped ? 0 : depth];
  const turn = (v: Vec): Vec => [way * v[0], v[1], way * v[2]];
  const put = (v: Vec): Vec => add(turn(seenFrom(frame, v)), shift);
  const axes = [0, 1, 2].map((k) => turn([frame.along[k]!, frame.left[k]!, frame.top[k]!]));
  const laid = solid.transform([...axes[0]!, 0, ...axes[1]!, 0, ...axes[2]!, 0, ...put([0, 0, 0]), 1]);

  const square = (out: 1 | -1, at: number): Half => {
    const normal = turn(unit([out, 0, -out * slope]));
    return beyond(normal, add(turn([at, 0, 0]), shift));
  };
  const headFace =
    piece.kind === "jack"
      ? piece.bears!.face
      : piece.kind === "hip" && piece.heads!.length === 1
        ? piece.heads![0]!
        : null;
  const compound = (face: Half): Half => {
    const normal = scale(unit(face.normal), -1);
    return beyond(
      turn([dot(normal, frame.along), dot(normal, frame.left), dot(normal, frame.top)]),
      put(scale(face.normal, face.offset / dot(face.normal, face.normal))),
    );
  };
  return {
    name: `${named.name} ${named.hand}`,
    solid: laid,
    cuts: [square(-1, tail), headFace ? compound(headFace) : square(1, head)],
    apart: shares === "none",
  };
}

/** Everything that is wrong with a board as it is to be cut, in words: pieces that do not fit in it, that overlap, or that a saw cut runs into. */
export function boardFaults(
  shop: Shop,
  board: Pick<PlannedBoard, "length">,
  section: { thickness: number; depth: number },
  laid: readonly Laid[],
  kerf: number,
): string[] {
  const level = {
    at: [0, section.thickness / 2, section.depth] as Vec,
    along: [1, 0, 0] as Vec,
    left: [0, 1, 0] as Vec,
    top: [0, 0, 1] as Vec,
  };
  const stick = shop.board(level, section.thickness, section.depth, 0, board.length);
  const found: string[] = [];
  const groups: Laid[][] = [];
  for (const one of laid) {
    if (one.apart || groups.length === 0) groups.push([]);
    groups.at(-1)!.push(one);
    const out = one.solid.volume() - shop.overlap(one.solid, stick);
    if (!(out < SHARED)) found.push(`${one.name} stands ${out} cubic inches out of the board`);
  }
  laid.forEach((one, i) => {
    for (const two of laid.slice(i + 1)) {
      const shared = shop.overlap(one.solid, two.solid);
      if (!(shared < SHARED)) found.push(`${one.name} and ${two.name} overlap by ${shared} cubic inches`);
    }
  });
  if (kerf === 0) return found;
  const into = (cut: Half, what: string, others: readonly Laid[]): void => {
    const dust = shop.trim(stick, cut, opposite({ normal: cut.normal, offset: cut.offset + kerf * size(cut.normal) }));
    for (const other of others) {
      const lost = shop.overlap(dust, other.solid);
      if (!(lost < SHARED)) found.push(`the saw cut ${what} takes ${lost} cubic inches of ${other.name}`);
    }
  };
  for (const group of groups) for (const one of group) for (const cut of one.cuts) into(cut, `at ${one.name}`, group);
  // Parts of different slant come apart by a square cut before their own end cuts are made.
  groups
    .slice(1)
    .forEach((_, i) =>
      into(
        { normal: [1, 0, 0], offset: Math.max(...groups[i]!.map(({ solid }) => solid.boundingBox().max[0])) },
        "between two slants",
        laid,
      ),
    );
  return found;
}

/** Lays every board of an order and says what is wrong; `spoil` may move or swap pieces before. */
export async function nestingFaults(
  shop: Shop,
  roof: Roof,
  order: CutOrder,
  spoil: (pieces: readonly PlacedPiece[]) => readonly PlacedPiece[] = (pieces) => pieces,
): Promise<string[]> {
  const find = await finder(shop, roof, order);
  return order.plan.boards.flatMap((board) => {
    const section = find(board.pieces[0]!);
    const laid = spoil(board.pieces).map((placed) => lay(find, shop, placed));
    const found = boardFaults(shop, board, section, laid, order.kerf);
    for (const { solid } of laid) solid.delete();
    return found.map(
      (words) =>
        `${board.length} of ${board.size} (${board.pieces.map(({ name, hand }) => `${name} ${hand}`).join(", ")}): ${words}`,
    );
  });
}

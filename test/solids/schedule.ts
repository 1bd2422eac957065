import { spilled } from "./answers.ts";
import { inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { centerLine, extent, lengthsFromPlate, markOnHip, sawCut } from "./measure.ts";
import { inside } from "./rafter.ts";
import { sideOf } from "./settingOut.ts";
import { dot, sub } from "./vector.ts";
import { blockOf } from "./roofPlan.ts";
import type { Framed, Roof } from "./assemble.ts";
import type { HeadCut } from "./sawn.ts";
import type { RoofPlan } from "./roofPlan.ts";
import type { Shop } from "./shop.ts";

/** A row of a spilled table by its headings. */
export type Row = Readonly<Record<string, string | number | boolean>>;

/** The rows of a table of the roof, by heading. */
export async function rowsOf(
  table: "MEMBERS" | "JACKTABLE" | "PLATEMARKS" | "TAKEOFF",
  plan: RoofPlan,
): Promise<Row[]> {
  const [headings, ...rows] = await spilled(table, blockOf(plan));
  return rows.map((row) => Object.fromEntries(row.map((cell, i) => [String(headings![i]), cell])));
}

/** A piece as it was measured. */
export interface Measured {
  readonly piece: Framed;
  readonly longPoint: number;
  readonly shortPoint: number;
  readonly board: number;
  readonly tape: number;
  readonly tilt: number;
}

const on = (row: Row, heading: string): number => Number(row[heading]);

const known = new WeakMap<Framed, Measured>();

/** What a piece measures, whatever it is; measured once. A hip is measured on its top's center line from the corner's plumb line. */
export function measured(shop: Shop, piece: Framed): Measured {
  const before = known.get(piece);
  if (before) return before;
  const found = measure(shop, piece);
  known.set(piece, found);
  return found;
}

function measure(shop: Shop, piece: Framed): Measured {
  const corners = shop.corners(piece.solid);
  const board = extent(piece, corners);
  if (piece.kind === "ridge") return { piece, longPoint: board, shortPoint: board, board, tape: 0, tilt: 0 };
  const at = piece.at!;
  if (piece.kind === "hip") {
    // Squared across from over the corner: a shifted hip's own center line need not reach back that far.
    const length = markOnHip(shop, piece, at.corner.at, centerLine(shop, piece).high);
    return { piece, longPoint: length, shortPoint: length, board, tape: 0, tilt: 0 };
  }
  const { longPoint, shortPoint, tape } = lengthsFromPlate(shop, piece, inside(at.corner, sideOf(at)));
  return {
    piece,
    longPoint,
    shortPoint,
    board,
    tape,
    tilt: piece.bears ? sawCut(piece, corners, piece.bears.face).tilt : 0,
  };
}

/** The row of a table that a measured piece belongs to: the same member and side, and the same length within a millionth. */
export function rowFor(rows: readonly Row[], { piece, longPoint }: Measured): Row | undefined {
  return rows.find(
    (row) =>
      (row["Member"] ?? "jack") === piece.kind &&
      ["Both", piece.side].includes(String(row["Side"])) &&
      Math.abs(on(row, "Long point") - longPoint) < 1e-6,
  );
}

/** Every piece of the roof against its row of MEMBERS: lengths, and how many there are of each hand. */
export async function membersCheck(shop: Shop, roof: Roof): Promise<{ agreements: Agreement[]; strays: string[] }> {
  const rows = await rowsOf("MEMBERS", roof.plan);
  const counted = new Map<Row, Measured[]>();
  const strays: string[] = [];
  for (const one of roof.members.map((piece) => measured(shop, piece))) {
    const row = rowFor(rows, one);
    if (row) counted.set(row, [...(counted.get(row) ?? []), one]);
    else strays.push(`${one.piece.name}: no row of MEMBERS is ${one.longPoint} long`);
  }
  const agreements = rows.flatMap((row) => {
    const found = counted.get(row) ?? [];
    const name = String(row["Piece"]);
    const count = (hand: string): number => found.filter(({ piece }) => piece.hand === hand).length;
    const plain = on(row, "Plain") > 0;
    const hands = plain
      ? [inches(`${name}: pieces`, found.length, on(row, "Plain"))]
      : [
          inches(`${name}: left`, count("left"), on(row, "Left")),
          inches(`${name}: right`, count("right"), on(row, "Right")),
        ];
    return [
      ...hands,
      ...found.flatMap((one) => [
        inches(`${one.piece.name}: board`, one.board, on(row, "Shortest board")),
        inches(`${one.piece.name}: short point`, one.shortPoint, on(row, "Short point")),
      ]),
    ];
  });
  return { agreements, strays };
}

/** Every jack of the roof against its row of JACKTABLE: where it stands, its marks, its lengths and its cut. */
export async function jackTableCheck(shop: Shop, roof: Roof): Promise<{ agreements: Agreement[]; strays: string[] }> {
  const rows = await rowsOf("JACKTABLE", roof.plan);
  const agreements: Agreement[] = [];
  const strays: string[] = [];
  for (const one of roof.members.filter(({ kind }) => kind === "jack").map((piece) => measured(shop, piece))) {
    const { piece } = one;
    const row = rowFor(rows, one);
    if (!row) {
      strays.push(`${piece.name}: no row of JACKTABLE is ${one.longPoint} long`);
      continue;
    }
    const { plate } = sideOf(piece.at!);
    const { at } = piece.at!.corner;
    const hip = piece.bears!.on[0]!;
    const fromCorner = shop.corners(piece.solid).map((c) => dot(plate, sub(c, at)));
    const say = (heading: string, value: number): Agreement =>
      inches(`${piece.name}: ${heading}`, value, on(row, heading));
    agreements.push(
      say("Offset", piece.at!.offset),
      say("Plate mark", Math.min(...fromCorner)),
      say("Hip mark", markOnHip(shop, hip, at, centerLine(shop, piece).high)),
      say("Long point", one.longPoint),
      say("Short point", one.shortPoint),
      say("Tape", one.tape),
      say("Shortest board", one.board),
      { ...say("Saw tilt", one.tilt), within: 1e-7 },
    );
  }
  return { agreements, strays };
}

/** Cuts every rafter to the numbers of MEMBERS and JACKTABLE, jacks by where they stand. */
export async function toTheTables(
  plan: RoofPlan,
): Promise<(piece: { kind: string; side: string; hand: string; offset: number }) => HeadCut> {
  const [members, jacks] = [await rowsOf("MEMBERS", plan), await rowsOf("JACKTABLE", plan)];
  return ({ kind, side, hand, offset }) => {
    const row =
      kind === "jack"
        ? jacks.find((r) => ["Both", side].includes(String(r["Side"])) && Math.abs(on(r, "Offset") - offset) < 1e-6)
        : members.find((r) => r["Member"] === kind && ["Both", side].includes(String(r["Side"])));
    if (!row) throw new Error(`The tables have no ${kind} on the ${side} side at ${offset}.`);
    return { longPoint: on(row, "Long point"), tilt: on(row, "Saw tilt"), long: hand === "left" ? "left" : "right" };
  };
}

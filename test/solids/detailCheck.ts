import { degrees, inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { beyond, depthIn, opposite } from "./half.ts";
import { heading, seenFrom } from "./frame.ts";
import { arris, centerLine, edgeAngle, lengthsFromPlate, markOnHip, ON, sawCut } from "./measure.ts";
import { member } from "./member.ts";
import { inside } from "./rafter.ts";
import { measured, rowFor, rowsOf } from "./schedule.ts";
import { sideOf } from "./settingOut.ts";
import { angle, distance, dot, plan as fromAbove, sub } from "./vector.ts";
import type { Framed, Roof } from "./assemble.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** What MEMBERS says of a piece beside its lengths, as the wood shows it; by heading. */
type Details = Readonly<Record<string, number>>;

/** How far a point lies in from a plate line, level. */
const depthFrom = (corner: Vec, inward: Vec, point: Vec): number => dot(inward, sub(point, corner));

/** The plumb cut on the side face: from square to the top edge to the plumb edge of the head. */
function plumbCut(piece: Framed, corners: readonly Vec[]): number {
  const top = arris(piece, corners, "left").high;
  const foot = corners
    .filter((c) => distance(fromAbove(c), fromAbove(top)) < ON)
    .reduce((a, b) => (b[2] < a[2] ? b : a));
  return angle(sub(top, foot), piece.frame.top);
}

/** The apex over the place where a rafter's line ends. */
const apexOver = ({ plan, apex }: Roof, { corner }: { corner: { at: Vec } }): Vec => [
  corner.at[0] === 0 ? apex : plan.length - apex,
  plan.span / 2,
  0,
];

function rafterDetails(shop: Shop, roof: Roof, piece: Framed): Details {
  const at = piece.at!;
  const { inward } = sideOf(at);
  const corner = at.corner.at;
  const corners = shop.corners(piece.solid);
  const plateLine = inside(at.corner, sideOf(at));
  const opened = arris(piece, shop.corners(shop.trim(piece.solid, plateLine)), "left");
  const lengths = lengthsFromPlate(shop, piece, plateLine);
  const seatCorner = corners.find((c) => Math.abs(c[2]) < ON && Math.abs(depthFrom(corner, inward, c)) < ON)!;
  // A jack's line ends over the hip's, a common's over the ridge's.
  const lineEnd =
    piece.kind === "jack" ? beyond(piece.bears!.face.normal, corner) : opposite(beyond(inward, apexOver(roof, at)));
  const line = member(shop, piece.frame, piece, { ends: [plateLine, lineEnd] });
  return {
    "Line length": centerLine(shop, line).length,
    Tape: lengths.tape,
    Tail: arris(piece, corners, "left").length - lengths.left,
    Heel: opened.low[2],
    Seat: Math.max(...corners.filter((c) => Math.abs(c[2]) < ON).map((c) => depthFrom(corner, inward, c))),
    Notch: piece.depth + seenFrom(piece.frame, seatCorner)[2],
    "Head cut": plumbCut(piece, corners),
    ...(piece.kind === "jack"
      ? { "Edge angle": edgeAngle(piece, corners), "Saw tilt": sawCut(piece, corners, piece.bears!.face).tilt }
      : {}),
  };
}

function hipDetails(shop: Shop, roof: Roof, piece: Framed): Details {
  const corner = piece.at!.corner.at;
  const ahead = heading(piece.frame);
  const corners = shop.corners(piece.solid);
  // The same hip's board, sawn square across plumb over the corner: its top there is the height above plate.
  const board = member(shop, piece.frame, piece, {
    ends: [beyond(ahead, corner), opposite(beyond(ahead, apexOver(roof, piece.at!)))],
  });
  const plateCorner = corners.find((c) => distance(c, corner) < ON)!;
  return {
    "Line length": markOnHip(shop, piece, corner, apexOver(roof, piece.at!)),
    Heel: centerLine(shop, board).low[2],
    Seat: Math.max(...corners.filter((c) => Math.abs(c[2]) < ON).map((c) => depthFrom(corner, ahead, c))),
    Notch: piece.depth + seenFrom(piece.frame, plateCorner)[2],
    "Head cut": plumbCut(board as Framed, shop.corners(board.solid)),
  };
}

/** Saw tilts of the cheeks that a hip's head really has, against the text of its row. */
function cheeks(shop: Shop, piece: Framed, said: string): string[] {
  const corners = shop.corners(piece.solid);
  const real = piece
    .heads!.filter((face) => corners.filter((c) => Math.abs(depthIn(face, c)) < ON).length > 2)
    .map((face) => sawCut(piece, corners, face).tilt);
  const told = said.split(" / ").map(Number);
  const sorted = (all: readonly number[]): number[] => [...all].sort((a, b) => a - b);
  const [measuredTilts, toldTilts] = [sorted(real), sorted(told)];
  const agrees =
    measuredTilts.length === toldTilts.length &&
    measuredTilts.every((tilt, i) => Math.abs(tilt - toldTilts[i]!) < 0.005 + 1e-7);
  return agrees ? [] : [`${piece.name}: its cheeks measure ${measuredTilts.join(" / ")}, the row says ${said}`];
}

/** Heels, seats, notches, tails, line lengths, plumb cuts, edge angles and tilts of every piece against its row of MEMBERS. */
export async function detailCheck(shop: Shop, roof: Roof): Promise<{ agreements: Agreement[]; strays: string[] }> {
  const rows = await rowsOf("MEMBERS", roof.plan);
  const agreements: Agreement[] = [];
  const strays: string[] = [];
  for (const piece of roof.members.filter(({ kind }) => kind !== "ridge")) {
    const row = rowFor(rows, measured(shop, piece));
    if (!row) continue;
    if (piece.kind === "hip") strays.push(...cheeks(shop, piece, String(row["Saw tilt"])));
    const details = piece.kind === "hip" ? hipDetails(shop, roof, piece) : rafterDetails(shop, roof, piece);
    for (const [heading, value] of Object.entries(details)) {
      const angular = ["Head cut", "Edge angle", "Saw tilt"].includes(heading);
      agreements.push((angular ? degrees : inches)(`${piece.name}: ${heading}`, value, Number(row[heading])));
    }
  }
  return { agreements, strays };
}

import { heading, seenFrom } from "./frame.ts";
import { angle, cross, distance, dot, plan, size, sub, unit } from "./vector.ts";
import { member } from "./member.ts";
import type { Member } from "./member.ts";
import type { Shop } from "./shop.ts";
import type { Half } from "./half.ts";
import { beyond, depthIn, opposite } from "./half.ts";
import type { Vec } from "./vector.ts";

/** Corners this close to a face belong to it. Far above the kernel's rounding, far below any cut. */
export const ON = 1e-7;

export type Hand = "left" | "right";
const sign = (hand: Hand): number => (hand === "left" ? 1 : -1);

/** The two ends of a top edge. */
export interface Edge {
  readonly low: Vec;
  readonly high: Vec;
  readonly length: number;
}

/** The top edge of a member on one of its side faces, or on its center line when it is cut open there. */
export function topEdge({ frame }: Member, corners: readonly Vec[], across: number): Edge {
  const on = corners
    .map((point) => ({ point, seen: seenFrom(frame, point) }))
    .filter(({ seen }) => Math.abs(seen[1] - across) < ON && Math.abs(seen[2]) < ON)
    .sort((a, b) => a.seen[0] - b.seen[0]);
  if (on.length < 2) throw new Error(`No top edge ${across} in from the center line.`);
  const low = on[0]!.point;
  const high = on.at(-1)!.point;
  return { low, high, length: distance(low, high) };
}

/** The top center line of a piece: the edge that appears when it is sawn in two along it. */
export function centerLine(shop: Shop, piece: Member): Edge {
  return topEdge(piece, shop.corners(shop.trim(piece.solid, beyond(piece.frame.left, piece.frame.at))), 0);
}

/** The top edge on the face at someone's left or right who looks up the slope. */
export const arris = (piece: Member, corners: readonly Vec[], hand: Hand): Edge =>
  topEdge(piece, corners, (sign(hand) * piece.thickness) / 2);

/** How far up a hip's top a point is squared across from over the corner: the same hip, cut plumb and square at both, on its top. */
export function markOnHip(shop: Shop, { frame, thickness, depth }: Member, corner: Vec, point: Vec): number {
  const ahead = heading(frame);
  const marked = member(
    shop,
    frame,
    { thickness, depth },
    { ends: [beyond(ahead, corner), opposite(beyond(ahead, point))] },
  );
  return arris(marked, shop.corners(marked.solid), "left").length;
}

/** The length of board that a finished piece takes up: its extent along its own top edge. */
export function extent({ frame }: Member, corners: readonly Vec[]): number {
  const along = corners.map((c) => dot(frame.along, c));
  return Math.max(...along) - Math.min(...along);
}

/** What a saw is set to for a flat cut. */
export interface SawCut {
  /** From square, about the plumb line, degrees. */
  readonly tilt: number;
  /** How far the cut leans from plumb, degrees: 0 for a cut along the plumb line. */
  readonly lean: number;
}

/** The cut that lies in a plane, read off the corners of its face. */
export function sawCut({ frame }: Member, corners: readonly Vec[], plane: Half): SawCut {
  const face = corners.filter((c) => Math.abs(depthIn(plane, c)) < ON);
  const first = face[0];
  if (!first) throw new Error("No corner of the piece lies in the plane of the cut.");
  const edges = face.map((c) => sub(c, first));
  const longest = (vectors: readonly Vec[]): Vec => vectors.reduce((a, b) => (size(b) > size(a) ? b : a));
  // A plumb cut is one line seen from above, and its plane's normal is level.
  const across = longest(edges.map(plan));
  const normal = unit(longest(edges.flatMap((one) => edges.map((two) => cross(one, two)))));
  const tilt = angle(across, frame.left);
  return { tilt: Math.min(tilt, 180 - tilt), lean: (Math.asin(Math.abs(normal[2])) * 180) / Math.PI };
}

/** The angle that a head cut leaves across the top edge, from square, degrees. */
export function edgeAngle(piece: Member, corners: readonly Vec[]): number {
  return angle(sub(arris(piece, corners, "left").high, arris(piece, corners, "right").high), piece.frame.left);
}

/** The top edges of a jack or common from the plumb line over its plate line, and the tape from the seat corner. */
export interface Lengths {
  readonly left: number;
  readonly right: number;
  readonly long: Hand;
  readonly longPoint: number;
  readonly shortPoint: number;
  readonly tape: number;
}

/** Lengths of a finished piece that crosses a plate line: it is cut open plumb over that line and measured from there. */
export function lengthsFromPlate(shop: Shop, piece: Member, plateLine: Half): Lengths {
  const finished = shop.corners(piece.solid);
  const corners = shop.corners(shop.trim(piece.solid, plateLine));
  const [left, right] = [arris(piece, corners, "left"), arris(piece, corners, "right")];
  const long: Hand = left.length > right.length ? "left" : "right";
  const edge = long === "left" ? left : right;
  // The seat corner lies level with the plate's top, plumb under the edge.
  const seat = finished.find((c) => Math.abs(c[2]) < ON && distance(plan(c), plan(edge.low)) < ON);
  if (!seat) throw new Error("The piece has no seat corner under its long point's face.");
  return {
    left: left.length,
    right: right.length,
    long,
    longPoint: edge.length,
    shortPoint: (long === "left" ? right : left).length,
    tape: distance(seat, edge.high),
  };
}

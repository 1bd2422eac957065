import { slopeAngle } from "../../geometry/angle.ts";
import { hipsIn, valleysIn, type Frame } from "./frame.ts";
import { fromPlane, planesOf, type RoofPlane } from "./blocks.ts";
import { faceOn, sideOn, type Hip } from "./bearers.ts";
import { LEVEL_PIECE } from "./eaveBoards.ts";
import type { Note } from "./note.ts";
import { SQUARE, type Hand, type Piece } from "./piece.ts";
import { offsetFrom } from "./facings.ts";
import { isOnPlate } from "./rafterLines.ts";

/** Less than this is no difference at all, in any unit. */
const NONE = 1e-6;

/** The blocks over the plates that the row Blocking asks for: those between rafters, then those beside hips, each kind longest first. */
export function plateBlocks(frame: Frame): readonly Piece[] {
  const { blocking } = frame.spec;
  return [
    ...(blocking === "plate" || blocking === "both" ? bayBlocks(frame) : []),
    ...(blocking === "corner" || blocking === "both" ? cornerBlocks(frame) : []),
  ];
}

/** A block beside a hip: its longer face is the outer one, flush with the plate's edge. Level lengths. */
interface CornerBlock {
  readonly long: number;
  readonly short: number;
}

/**
 * The block between a hip and the rafter nearest to its corner, over one plate; null where a wing's piece or nothing stands there.
 *
 * With f the plan angle between hip and plate line, the hip's face crosses the plate line its distance over sin f from the corner, and is t / tan f farther along at the block's inner face.
 */
export function cornerBlock(frame: Frame, hip: Hip, plane: RoofPlane): CornerBlock | null {
  const side = sideOn(hip, plane);
  if (hip.start > 0 || !side) return null;
  const { thickness } = frame.spec.rafter;
  const offsets = frame.rafters
    .filter((one) => one.plane === plane && one.foot.bearer === null)
    .map(({ station }) => offsetFrom(hip, plane, station))
    .filter((offset) => offset > NONE);
  const nearest = Math.min(...offsets);
  const valley = innerCorners(frame, plane).map((at) => offsetFrom(hip, plane, at));
  if (valley.some((at) => at > NONE && at < nearest + NONE) || nearest === Infinity) return null;
  const long = nearest - thickness / 2 - side.face / side.sin;
  const short = long - thickness / side.tan;
  return short > NONE ? { long, short } : null;
}

/** Where along a plane's plate line inner corners lie, from its left end. */
function innerCorners(frame: Frame, plane: RoofPlane): number[] {
  return valleysIn(frame)
    .map(({ foot }) => fromPlane(plane, foot))
    .filter(({ y }) => Math.abs(y) < NONE)
    .map(({ x }) => x);
}

interface Block extends CornerBlock {
  readonly plane: RoofPlane;
  readonly hand: Hand;
  readonly tan: number | null;
}

function cornerBlocks(frame: Frame): Piece[] {
  const blocks = hipsIn(frame).flatMap((hip) =>
    [hip.near, hip.far].flatMap((side): Block[] => {
      const block = cornerBlock(frame, hip, side.plane);
      if (!block) return [];
      return [{ plane: side.plane, hand: faceOn(hip, side), tan: side.tan, ...block }];
    }),
  );
  return piecesOf(frame, "BC", blocks);
}

/** One in each bay between two rafters that stand on a plate side by side, whatever stands off it in between; none where a wing runs in. */
function bayBlocks(frame: Frame): Piece[] {
  const { thickness } = frame.spec.rafter;
  const planes = [...new Set(frame.blocks.flatMap(planesOf))];
  const blocks = planes.flatMap((plane) => {
    const standing = frame.rafters
      .filter((one) => one.plane === plane && isOnPlate(one))
      .sort((a, b) => a.station - b.station);
    // No plate stands in the mouth of a wing that is framed in.
    const mouths = frame.blocks.flatMap(({ wing }) => (wing?.wall === plane && !wing.laid ? [wing] : []));
    return standing.slice(1).flatMap((rafter, i): Block[] => {
      const [left, right] = [standing[i]!.station, rafter.station];
      const long = right - left - thickness;
      const middle = (left + right) / 2;
      // Beside a mouth the last one stands on the plate and the valley.
      const wing = mouths.some(({ from, to }) => (middle > from && middle < to) || (from > left && to < right));
      // Side by side they need none.
      return wing || long < thickness ? [] : [{ long, short: long, plane, hand: "plain", tan: null }];
    });
  });
  return piecesOf(frame, "BP", blocks);
}

/** Blocks of one length and one plane's slope are one piece. */
function piecesOf(frame: Frame, stem: string, blocks: readonly Block[]): Piece[] {
  const groups = new Map<string, Block[]>();
  for (const block of blocks) {
    const key = [block.long, block.short, block.plane.pitch].map((value) => value.toFixed(4)).join(" ");
    const known = groups.get(key);
    if (known) known.push(block);
    else groups.set(key, [block]);
  }
  const sorted = [...groups.values()].sort((a, b) => b[0]!.long - a[0]!.long);
  return sorted.map((own, i) => blockPiece(frame, sorted.length > 1 ? `${stem}${i + 1}` : stem, own));
}

function blockPiece(frame: Frame, mark: string, own: readonly Block[]): Piece {
  const { rafter } = frame.spec;
  const [{ long, short, plane, tan }] = own as [Block, ...Block[]];
  const count = (hand: Hand) => own.filter((one) => one.hand === hand).length;
  const notes: Note[] = [{ kind: "block top", height: frame.heel, bevel: slopeAngle(plane.pitch) }];
  const open = frame.heel - rafter.depth;
  if (open > NONE) notes.push({ kind: "block open", by: open });
  if (tan === null && frame.spec.wings.length > 0) notes.push({ kind: "valley bays" });
  return {
    mark,
    member: "block",
    planes: own.map((one) => one.plane),
    left: count("left"),
    right: count("right"),
    plain: count("plain"),
    section: rafter,
    longRun: long,
    shortRun: short,
    lineLength: long,
    longPoint: long,
    shortPoint: short,
    shortestBoard: long,
    // From square to the hip's face, which leans towards the plate line by f.
    head: { ...SQUARE, tilts: tan === null ? [] : [slopeAngle(1 / tan)] },
    notes,
    ...LEVEL_PIECE,
  };
}

import {
  hipsOf,
  ridgeOf,
  ridgePast,
  type Bearer,
  type BrokenFoot,
  type Hip,
  type HipCorner,
  type Valley,
  type ValleyBoard,
} from "./bearers.ts";
import { endBeside, type Block, type RoofPlane } from "./blocks.ts";
import { brokenFoot, wingRidgeHeads } from "./joints.ts";
import { laidRidgeEnd, slidOff, valleyBoardOf } from "./laidOver.ts";
import { rafterLines, type Jack, type JackRow, type Rafter } from "./rafterLines.ts";
import { offsetFrom } from "./facings.ts";
import type { RoofSpec } from "./roofSpec.ts";
import {
  blockStations,
  boardEnds,
  mainCommons,
  slidClear,
  thinned,
  wingCommons,
  type SetOut,
  type Station,
} from "./stations.ts";
import { surface, type Surface } from "./surface.ts";
import { innerSides, valleyOf } from "./valleys.ts";
import type { WingFrame } from "./wingFrame.ts";

/** Where the commons of a block stand along its ridge, from its first end's plate line, and the bays that are no whole spacing. */
export interface CommonRow {
  readonly block: Block;
  readonly stations: readonly number[];
  /** Center to center, from the last common to what stands after it, where that is no whole spacing; else null. */
  readonly lastBay: number | null;
  /** Hips on the ridge: center to center over the apex, from the longest jack to the first common; null with king commons. */
  readonly apexBay: number | null;
}

/** What a frame is made of: blocks, what is seen of their planes, the boards on its edges, and the rafters between them. */
export interface Layers {
  /** The main roof, then its wings. */
  readonly blocks: readonly Block[];
  readonly surface: Surface;
  readonly bearers: readonly (Bearer | Hip | Valley | ValleyBoard)[];
  readonly rows: readonly JackRow[];
  readonly commons: CommonRow;
  readonly rafters: readonly Rafter[];
}

/** The layers of a roof whose blocks have passed every check. */
export function layersOf(
  spec: RoofSpec,
  main: Block,
  corner: HipCorner,
  wings: readonly WingFrame[],
  heel: number,
): Layers {
  const blocks = [main, ...wings.map(({ block }) => block)];
  const seen = surface(blocks);
  const ridge = mainRidge(spec, main, corner, wings, heel, seen);
  const broken = (side: RoofPlane, end: RoofPlane): BrokenFoot | null => {
    const wing = wings.find(
      ({ block: { wing } }) =>
        !wing.level && wing.flush && wing.wall === side && endBeside(main, side, wing.flush) === end,
    );
    if (!wing) return null;
    return {
      wing: wing.block.wing.letter,
      start: wing.block.wing.reach / corner.at.near.sin,
      tail: brokenFoot({ ...wing.meeting, near: corner.at.near }),
    };
  };
  const hips = hipsOf(main, seen, corner, spec, heel, broken);
  const setOut: SetOut = { block: main, ridge, corner };
  const places = mainCommons(setOut, spec);
  const all = blockStations(setOut, places, spec);
  const bearers: Layers["bearers"][number][] = [...(ridge ? [ridge] : []), ...hips];
  for (const wing of wings) {
    const own = wingBearers(spec, wing, hips, heel, seen);
    bearers.push(...own);
    const its = { block: wing.block, ridge: own[0], corner: wing.corner };
    all.push(...blockStations(its, wingCommons(its, spec), spec));
  }
  const blocksOfWings = wings.map(({ block }) => block);
  const stations = thinned(all, blocksOfWings, spec);
  const ends = new Map<RoofPlane, readonly number[]>();
  const endsOn = (plane: RoofPlane) => {
    const known = ends.get(plane) ?? boardEnds(plane, blocksOfWings, bearers, ridge?.near.face ?? 0);
    ends.set(plane, known);
    return known;
  };
  const clear =
    wings.length === 0
      ? stations
      : stations.map((one) => slidOff(slidClear(one, endsOn(one.plane), spec), blocksOfWings, spec));
  const rafters = rafterLines(clear, { blocks, bearers, spec });
  const rows = bearers
    .filter((one): one is Hip => one.kind === "hip")
    .flatMap((hip) => [hip.near, hip.far].map(({ plane }) => rowOf(hip, plane, blocks[hip.block]!, rafters, clear)));
  return { blocks, surface: seen, bearers, rows, commons: commonRow(main, ridge, places, rows[0]!, spec), rafters };
}

function rowOf(
  hip: Hip,
  plane: RoofPlane,
  block: Block,
  rafters: readonly Rafter[],
  stations: readonly Station[],
): JackRow {
  const jacks = rafters.filter(
    (one): one is Jack => one.plane === plane && one.member === "jack" && one.head.bearer === hip,
  );
  const least = jacks.at(-1)?.offset ?? Infinity;
  const own = ({ at, offset, of }: Station) =>
    of === block.index && offset !== null && Math.abs(offsetFrom(hip, plane, at) - offset) <= NONE * block.length;
  return {
    hip,
    plane,
    king: plane === hip.near.plane ? hip.far.plane.run : block.span / 2,
    jacks,
    dropped: stations.filter((one) => one.plane === plane && own(one) && one.offset! < least).length,
  };
}

/** Of a length: what the last bits of a double are. */
const NONE = 1e-9;

/** The ridge of the main roof; it reaches behind the ridge of a level flush wing, which stands where a king common would. */
function mainRidge(
  spec: RoofSpec,
  main: Block,
  corner: HipCorner,
  wings: readonly WingFrame[],
  heel: number,
  { edges }: Surface,
): Bearer | null {
  const [right, left] = main.sides;
  if (
    !edges.some(
      ({ kind, left: one, right: other }) =>
        kind === "ridge" && [one, other].includes(right) && [one, other].includes(left),
    )
  )
    return null;
  const [first, last] = main.ends;
  const run = main.length - first!.run - (last?.run ?? 0);
  const past = (end: RoofPlane): number => {
    const behind = wings
      .filter(({ block: { wing } }) => wing.level && wing.flush && endBeside(main, wing.wall, wing.flush) === end)
      .map(({ block: { wing } }) => wing.spec.ridge.thickness / 2);
    const own = ridgePast(spec, spec.ridge, corner);
    return spec.hipHead === "king commons" ? own : Math.max(own, ...behind);
  };
  return ridgeOf(main, spec.ridge, heel, {
    run,
    tail: past(first!),
    head: [{ at: run + (last === null ? 0 : past(last)), per: 0 }],
  });
}

/** The boards of a wing: its ridge, its hips and its valleys, left before right. */
function wingBearers(
  spec: RoofSpec,
  { block, corner, at, meeting, long }: WingFrame,
  mainHips: readonly Hip[],
  heel: number,
  seen: Surface,
): [Bearer, ...(Hip | Valley | ValleyBoard)[]] {
  const { wing } = block;
  const { spec: own, reach, flush, level, laid, letter } = wing;
  const crossing = own.out + reach - (block.ends[0]?.run ?? 0);
  const joint = level ? "level" : flush ? "flush" : "lower";
  const broken = mainHips.find((hip) => hip.wing === letter);
  const end = laidRidgeEnd(block, at);
  const ridge = ridgeOf(block, own.ridge, heel, {
    run: crossing,
    tail: corner ? ridgePast(spec, own.ridge, corner) : 0,
    ...(laid
      ? { head: [{ at: crossing - reach + end.at, per: 0 }], headLean: end.lean }
      : { head: wingRidgeHeads[joint](meeting, crossing, broken?.far.face ?? 0) }),
  });
  const hips = corner ? hipsOf(block, seen, corner, spec, heel) : [];
  if (laid) return [ridge, ...hips, ...innerSides(block).map((side) => valleyBoardOf(block, side, at, spec, heel))];
  const valleys = innerSides(block).map((side) =>
    valleyOf(
      block,
      side,
      level ? "level" : flush ? "flush" : side === long ? "supporting" : "shortened",
      at,
      meeting,
      spec,
      heel,
    ),
  );
  return [ridge, ...hips, ...valleys];
}

/** The bays of the commons of the main roof: what stands after the last one is a king common, the gable's pair, or past an apex without one the longest jack. */
function commonRow(
  block: Block,
  ridge: Bearer | null,
  stations: readonly number[],
  row: JackRow,
  { spacing, rafter, hipHead }: RoofSpec,
): CommonRow {
  if (ridge === null) return { block, stations, lastBay: null, apexBay: null };
  const kings = hipHead === "king commons";
  const pastApex = kings ? 0 : row.king - (row.jacks[0]?.offset ?? 0);
  const gable = block.ends[1] === null;
  const reach = gable ? ridge.run - rafter.thickness / 2 : ridge.run;
  const last = gable ? stations.at(-2) : stations.at(-1);
  const bay = reach - (last === undefined ? 0 : last - row.king) + (gable ? 0 : pastApex);
  return {
    block,
    stations,
    lastBay: Math.abs(bay - spacing) <= 1e-9 * block.length ? null : bay,
    apexBay: kings || stations.length === 0 ? null : stations[0]! - row.king + pastApex,
  };
}

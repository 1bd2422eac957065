import { alongBlock, fromPlane, inBlock, onPlane, type Block, type RoofPlane, type Wing } from "./blocks.ts";
import type { Bearer, HipCorner, Valley } from "./bearers.ts";
import { hipsReach } from "./hipCorner.ts";
import type { RoofSpec } from "./roofSpec.ts";
import { commonStations, jackOffsets } from "./setOut.ts";
import { sidePlane } from "./valleys.ts";

/** Where a rafter stands: its center, along a plane's plate line from the left end. */
export interface Station {
  readonly plane: RoofPlane;
  readonly at: number;
  /** The block that it is set out from. */
  readonly of: number;
  /** A king common's: it meets an apex. One of an end butts the end of the ridge. */
  readonly king: boolean;
  /** Beside a corner that a hip stands over, its distance from it; else null. */
  readonly offset: number | null;
  /** How far it was moved along the plate line to clear the end of a board; 0 mostly. */
  readonly slid: number;
}

/** Distances of the commons of a block along its ridge, from its first end's plate line. */
export type CommonPlaces = readonly number[];

/** What the stations of a block follow from. */
export interface SetOut {
  readonly block: Block;
  /** null where its hips meet in a point. */
  readonly ridge: Bearer | null;
  /** null where it has no hipped end. */
  readonly corner: HipCorner | null;
}

/** Of a length: what the last bits of a double are. */
const NONE = 1e-9;

/** How far hips on the ridge reach along it on the inner side of the apex: commons keep clear of their heads. 0 with king commons. */
function hipReach({ ridge, corner }: SetOut, { hipHead }: RoofSpec): number {
  return hipHead === "king commons" || corner === null ? 0 : hipsReach(corner, ridge?.near.face ?? 0);
}

/** The commons of the main roof, between its king commons or up to a gable, the pair at the gable last. */
export function mainCommons(setOut: SetOut, spec: RoofSpec): CommonPlaces {
  const { block, ridge } = setOut;
  if (ridge === null) return [];
  const { thickness } = spec.rafter;
  const gable = block.ends[1] === null;
  // At a gable the last pair stands inside the gable's plate line, its outer face flush with it.
  const reach = gable ? ridge.run - thickness / 2 : ridge.run;
  const clear = gable ? thickness : Math.max(thickness, hipReach(setOut, spec) + thickness / 2);
  const places = commonStations(spec.spacing, reach, clear).map((along) => block.ends[0]!.run + along);
  return gable ? [...places, block.length - thickness / 2] : places;
}

/** The commons of a wing from its outer end in to the crossing: behind its king common, or from the pair at its gable. */
export function wingCommons(setOut: SetOut & { block: Wing }, spec: RoofSpec): CommonPlaces {
  const { block } = setOut;
  const { thickness } = spec.rafter;
  const last = block.wing.spec.out + block.wing.reach;
  const apex = block.ends[0]?.run ?? 0;
  const clear = block.ends[0] ? Math.max(thickness, hipReach(setOut, spec) + thickness / 2) : 1.5 * thickness;
  const places = Array.from(
    { length: Math.floor((last - apex) / spec.spacing + NONE) },
    (_, k) => (k + 1) * spec.spacing,
  )
    .filter((along) => along >= clear * (1 - NONE))
    .map((along) => apex + along);
  return block.ends[0] ? places : [thickness / 2, ...places];
}

/** Commons, then king commons of sides and ends, then jacks from the longest on: of one block. */
export function blockStations({ block, ridge }: SetOut, commons: CommonPlaces, spec: RoofSpec): Station[] {
  const kings = spec.hipHead === "king commons";
  const setOut = { setOutFrom: spec.setOutFrom, spacing: spec.spacing, thickness: spec.rafter.thickness };
  const { sides, ends, length } = block;
  const last = block.wing ? block.wing.spec.out + block.wing.reach : length;
  const jacks = (king: number) => jackOffsets(setOut, king);
  const stations: Station[] = [];
  const add = (plane: RoofPlane, at: number, king: boolean, offset: number | null = null) => {
    if (block.wing === null || plane.end || king || depthOf(block, plane, at) <= last * (1 + NONE))
      stations.push({ plane, at, of: block.index, king, offset, slid: 0 });
  };
  // A flush side's plate line runs on as the end's, so its stations are found through the plan.
  const along = (plane: RoofPlane, i: number, from: number) =>
    plane.block === block.index ? (i === 0 ? from : plane.width - from) : fromPlane(plane, inBlock(block, from, 0)).x;
  const addOnSides = (from: number, king: boolean, offset: number | null = null) => {
    add(sides[0], along(sides[0], 0, from), king, offset);
    add(sides[1], along(sides[1], 1, from), king, offset);
  };
  const hipped = ends.filter((end) => end !== null);
  const first = ends[0]?.run ?? 0;
  // Two apexes in one point have one pair of king commons.
  const apexes = [...(ends[0] ? [first] : []), ...(ends[1] === null || ridge === null ? [] : [length - ends[1].run])];
  for (const from of commons) addOnSides(from, false);
  if (kings) {
    for (const from of apexes) addOnSides(from, true);
    for (const plane of hipped) add(plane, plane.width / 2, true);
  }
  const sideJacks = hipped.map((end) => jacks(end.run));
  const most = Math.max(0, ...sideJacks.map((own) => own.length));
  for (let i = 0; i < most; i++)
    for (const [k, own] of sideJacks.entries()) {
      const offset = own[i];
      if (offset !== undefined) addOnSides(hipped[k] === ends[0] ? offset : length - offset, false, offset);
    }
  for (const offset of jacks(block.span / 2))
    for (const plane of hipped) {
      // The corner on the right of the ridge first: at a first end that is the plate's right end.
      const [right, left] = [plane.width - offset, offset];
      for (const at of plane === ends[0] ? [right, left] : [left, right]) add(plane, at, false, offset);
    }
  return stations;
}

/** Whether a plane is the one that a wing shares with an end. */
const isShared = (wing: Wing, plane: RoofPlane): boolean =>
  wing.wing.flush !== null && plane === sidePlane(wing, wing.wing.flush);

/** How far along its block a place on a side's plate line is. */
const depthOf = (block: Block, plane: RoofPlane, at: number): number => alongBlock(block, onPlane(plane, at, 0));

/**
 * On a plane that a wing shares with an end, the wing's stations run up to the crossing and the end's on from there, two thicknesses apart.
 *
 * Where the two crowd each other the wing's stays, but for the end's king common.
 */
export function thinned(all: readonly Station[], wings: readonly Wing[], { rafter }: RoofSpec): readonly Station[] {
  if (wings.every(({ wing }) => wing.flush === null)) return all;
  const apart = 2 * rafter.thickness * (1 - NONE);
  const beside = ({ plane }: Station) => wings.filter((wing) => isShared(wing, plane));
  const inWing = (one: Station) =>
    beside(one).some((wing) => depthOf(wing, one.plane, one.at) <= (wing.wing.spec.out + wing.wing.reach) * (1 + NONE));
  return all.filter((one) => {
    if (one.king || beside(one).length === 0) return true;
    if (one.of === 0 && inWing(one)) return false;
    const near = all.filter(
      ({ plane, of, at }) => plane === one.plane && of !== one.of && Math.abs(at - one.at) < apart,
    );
    return one.of === 0 ? !near.some(inWing) : !near.some(({ king }) => king);
  });
}

/** Where along a plane's plate line a board ends under its rafters, so that the two faces of one could meet two boards. */
export function boardEnds(
  plane: RoofPlane,
  wings: readonly Wing[],
  bearers: readonly Bearer[],
  ridgeFace: number,
): number[] {
  return wings.flatMap((wing): number[] => {
    const { wall, from, to, level, letter } = wing.wing;
    if (wall === plane) {
      const long = bearers.find(
        (one): one is Valley => one.kind === "valley" && one.wing === letter && (one as Valley).role === "supporting",
      );
      if (!long) return [];
      const along = (wall.run - ridgeFace) / long.near.tan + long.far.face / long.near.sin;
      return [long.side === "left" ? from + along : to - along];
    }
    if (level || !isShared(wing, plane)) return [];
    const ridge = bearers.find((one) => one.kind === "ridge" && one.wing === letter)!;
    const end = (wing.ends[0]?.run ?? 0) + ridge.head[0]!.at;
    return [fromPlane(plane, inBlock(wing, end, 0)).x];
  });
}

/** A station moved to the nearer clear side of where a board ends, at most half a thickness. */
export function slidClear(station: Station, ends: readonly number[], { rafter }: RoofSpec): Station {
  const half = rafter.thickness / 2;
  for (const end of ends) {
    const past = station.at - end;
    if (Math.abs(past) >= half * (1 - NONE)) continue;
    const slid = (past < 0 ? -half : half) - past;
    return { ...station, at: station.at + slid, slid };
  }
  return station;
}

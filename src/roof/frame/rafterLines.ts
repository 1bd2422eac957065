import type { Point } from "../../geometry/point.ts";
import { Failure } from "../../measure/result.ts";
import { jackRuns } from "../members/jack.ts";
import { endReach, type PlumbCut } from "../members/plumbEnd.ts";
import { sideOn, type Bearer, type Hip } from "./bearers.ts";
import { inBlock, onPlane, type Block, type RoofPlane } from "./blocks.ts";
import type { RoofSpec } from "./roofSpec.ts";
import { commonStations, jackOffsets } from "./setOut.ts";

/** An end of a rafter: the bearer that it meets, or null for a plate or another rafter; level from the plate line on its own line, and how much farther for each unit across to the left. */
export interface RafterEnd extends PlumbCut {
  readonly bearer: Bearer | null;
  /** Level to the bearer's own line. */
  readonly line: number;
}

/** One rafter: where it stands on a plane, and what it runs from and to. */
export interface Rafter {
  readonly kind: "rafter";
  readonly member: "common" | "king common" | "jack";
  readonly plane: RoofPlane;
  /** Its center, along the plate line from the left end; and the same point in plan. */
  readonly station: number;
  readonly spot: Point;
  readonly foot: RafterEnd;
  readonly head: RafterEnd;
}

/** The jacks of one plane at one corner, farthest from it first. */
export interface JackRow {
  readonly hip: Hip;
  readonly plane: RoofPlane;
  /** Offset of the king common from the corner (of the apex, where hips meet the ridge). */
  readonly king: number;
  readonly jacks: readonly Jack[];
  /** Positions nearer the corner whose head would land over their own seat: left out. */
  readonly dropped: number;
}

/** A jack: a rafter, and its offset from the corner. */
export interface Jack extends Rafter {
  readonly member: "jack";
  readonly offset: number;
}

/** The foot of a rafter that stands on the plate. */
const PLATE: RafterEnd = { bearer: null, line: 0, at: 0, per: 0 };

/** Level runs of a rafter from its foot to its head on its longer and its shorter face: one formula for all of them. */
export function headRuns({ foot, head }: Rafter, thickness: number): { readonly long: number; readonly short: number } {
  const [one, other] = [thickness / 2, -thickness / 2].map(
    (across) => endReach([head], across) - endReach([foot], across),
  ) as [number, number];
  return { long: Math.max(one, other), short: Math.min(one, other) };
}

/** Which way a rafter's long point is, looking up it: that hand; plain where both sides are alike. */
export const handOf = ({ head }: Rafter): "left" | "right" | "plain" =>
  head.per > 0 ? "left" : head.per < 0 ? "right" : "plain";

/** The jacks beside a hip on one of its planes: those whose short point is clear of their own seat. */
export function jackRow(hip: Hip, plane: RoofPlane, king: number, spec: RoofSpec): JackRow {
  const { thickness } = spec.rafter;
  const side = sideOn(hip, plane)!;
  // Seen from outside, a plane lies to the right of the hip at the left end of its plate.
  const fromLeft = (side === hip.near) === (hip.hand === "right");
  const offsets = jackOffsets({ ...spec, thickness }, king);
  const jacks: Jack[] = [];
  for (const offset of offsets) {
    const runs = jackRuns(side, offset, { face: side.face, thickness });
    if (runs instanceof Failure || runs.short < plane.seat) continue;
    jacks.push({
      kind: "rafter",
      member: "jack",
      plane,
      station: fromLeft ? offset : plane.width - offset,
      spot: {
        x: hip.foot.x + (fromLeft ? offset : -offset) * plane.right.x,
        y: hip.foot.y + (fromLeft ? offset : -offset) * plane.right.y,
      },
      foot: PLATE,
      offset,
      head: {
        bearer: hip,
        line: runs.line,
        at: runs.line - side.face / side.cos,
        per: fromLeft ? -side.tan : side.tan,
      },
    });
  }
  return { hip, plane, king, jacks, dropped: offsets.length - jacks.length };
}

/** Where the commons of a block stand along its ridge, from its first end's plate line, and the bays that are no whole spacing. */
export interface CommonRow {
  readonly block: Block;
  readonly stations: readonly number[];
  /** Center to center, from the last common to what stands after it, where that is no whole spacing; else null. */
  readonly lastBay: number | null;
  /** Hips on the ridge: center to center over the apex, from the longest jack to the first common; null with king commons. */
  readonly apexBay: number | null;
}

/**
 * The commons between the king commons of a block, and the last pair at a gable.
 *
 * What stands after the last one is a king common at its apex, the gable's pair, or past an apex without one the longest jack.
 */
export function commonRow(block: Block, ridge: Bearer | null, row: JackRow, spec: RoofSpec): CommonRow {
  if (ridge === null) return { block, stations: [], lastBay: null, apexBay: null };
  const { spacing, rafter, hipHead } = spec;
  const kings = hipHead === "king commons";
  const { near } = row.hip;
  // Without king commons the hips' heads reach along the ridge on the inner side of the apex: commons keep clear of them.
  const hipReach = kings ? 0 : near.face / near.sin - (ridge.near.face * near.cos) / near.sin;
  const pastApex = kings ? 0 : row.king - (row.jacks[0]?.offset ?? 0);
  const gable = block.ends[1] === null;
  // At a gable the last pair stands inside the gable's plate line, its outer face flush with it.
  const reach = gable ? ridge.run - rafter.thickness / 2 : ridge.run;
  const clear = gable ? rafter.thickness : Math.max(rafter.thickness, hipReach + rafter.thickness / 2);
  const along = commonStations(spacing, reach, clear);
  const bay = reach - (along.at(-1) ?? 0) + (gable ? 0 : pastApex);
  const stations = along.map((station) => row.king + station);
  if (gable) stations.push(block.length - rafter.thickness / 2);
  return {
    block,
    stations,
    lastBay: Math.abs(bay - spacing) <= 1e-9 * block.length ? null : bay,
    apexBay: kings || stations.length === 0 ? null : stations[0]! - row.king + pastApex,
  };
}

/** Commons, then king commons of sides and ends, then jacks: each kind from the first corner on. */
export function rafterLines(
  block: Block,
  ridge: Bearer | null,
  rows: readonly JackRow[],
  commons: CommonRow,
  spec: RoofSpec,
): Rafter[] {
  const kings = spec.hipHead === "king commons";
  const { sides, ends, length, span } = block;
  const square = (member: Rafter["member"], plane: RoofPlane, station: number, short: number, spot: Point): Rafter => ({
    kind: "rafter",
    member,
    plane,
    station,
    spot,
    foot: PLATE,
    head: { bearer: ridge, line: plane.run, at: plane.run - short, per: 0 },
  });
  const onSides = (member: Rafter["member"], from: number) =>
    sides.map((plane, i) =>
      square(
        member,
        plane,
        i === 0 ? from : length - from,
        ridge?.near.face ?? 0,
        inBlock(block, from, i === 0 ? 0 : span),
      ),
    );
  const hipped = ends.filter((end) => end !== null);
  // Two apexes in one point have one pair of king commons.
  const apexes = [ends[0].run, ...(ends[1] === null || ridge === null ? [] : [length - ends[1].run])];
  const longestFirst = (plane: "near" | "far") => {
    const own = rows.filter((row) => row.plane === row.hip[plane].plane);
    return Array.from({ length: Math.max(...own.map(({ jacks }) => jacks.length)) }, (_, i) =>
      own.flatMap(({ jacks }) => jacks.slice(i, i + 1)),
    ).flat();
  };
  return [
    ...commons.stations.flatMap((from) => onSides("common", from)),
    ...(kings
      ? [
          ...apexes.flatMap((from) => onSides("king common", from)),
          // An end king common butts the ridge's end, or the side of a king common.
          ...hipped.map((plane) =>
            square(
              "king common",
              plane,
              plane.width / 2,
              spec.rafter.thickness / 2,
              onPlane(plane, plane.width / 2, 0),
            ),
          ),
        ]
      : []),
    ...longestFirst("near"),
    ...longestFirst("far"),
  ];
}

import { alongSlope } from "../../geometry/alongSlope.ts";
import { edges, type Edge } from "../../geometry/edges.ts";
import { faces } from "../../geometry/faces.ts";
import type { Point } from "../../geometry/point.ts";
import { levelsOf, polygonArea, type Level } from "../../geometry/polygon.ts";
import { fromPlane, outlineOf, planesOf, type Block, type RoofPlane } from "./blocks.ts";

/** An edge of the roof's surface between two of its planes, from fascia to apex or crossing. */
export interface RoofEdge {
  readonly kind: "ridge" | "hip" | "valley";
  readonly left: RoofPlane;
  readonly right: RoofPlane;
  readonly from: Point;
  readonly to: Point;
  /** Level length, and rise over it. */
  readonly run: number;
  readonly slope: number;
}

/** What is seen of a plane, overhangs included. Between two levels of a part its ends run straight. */
export interface RoofFace {
  readonly plane: RoofPlane;
  /** Convex parts by their levels: `at` up from the eave, `from` and `to` along it. Level distances. */
  readonly parts: readonly (readonly Level[])[];
  /** Square units in plan, and along the slope: the plan over the cosine of the pitch. */
  readonly plan: number;
  readonly sloped: number;
  /** Level, from its eave to its highest point. */
  readonly top: number;
  /** Level length of its eave. */
  readonly eave: number;
  /** Along the slope: its edges at a gable, and those at corners where the fascias do not meet level. */
  readonly gableRake: number;
  readonly cornerRake: number;
}

/** The surface of a roof: what is seen of each plane, and the edges in which they meet. */
export interface Surface {
  readonly faces: readonly RoofFace[];
  readonly edges: readonly RoofEdge[];
}

/** Of a block's size: no edge is that short, and corners that near are one; the last bits of a double. */
const NONE = 1e-9;

/** The surface over some blocks: at every point the highest block's lowest plane. */
export function surface(blocks: readonly Block[]): Surface {
  // A plane that a wing shares is there once.
  const planes = [...new Set(blocks.flatMap(planesOf))];
  const slack = NONE * (blocks[0]!.length + blocks[0]!.span);
  const parts = faces(
    planes,
    blocks.map((block) => ({ outline: outlineOf(block), planes: planesOf(block).map(({ index }) => index) })),
  );
  return {
    faces: planes.map((plane, i) => faceOf(blocks, plane, parts[i]!, slack)),
    edges: edges(planes, parts, slack).map((edge) => roofEdge(planes, edge)),
  };
}

function roofEdge(planes: readonly RoofPlane[], { left, right, from, to, convex }: Edge): RoofEdge {
  const run = Math.hypot(to.x - from.x, to.y - from.y);
  const plane = planes[left]!;
  const rise = plane.x * (to.x - from.x) + plane.y * (to.y - from.y);
  const level = rise <= NONE * run;
  return {
    kind: convex ? (level ? "ridge" : "hip") : "valley",
    left: plane,
    right: planes[right]!,
    from,
    to,
    run,
    slope: level ? 0 : rise / run,
  };
}

function faceOf(
  blocks: readonly Block[],
  plane: RoofPlane,
  polygons: readonly (readonly Point[])[],
  slack: number,
): RoofFace {
  const { overhang, pitch } = plane;
  const own = polygons.map((polygon) =>
    polygon.map((point) => {
      const { x, y } = fromPlane(plane, point);
      // The eave is at 0, whatever the last bits of a double.
      const up = y + overhang;
      return { x, y: Math.abs(up) <= slack ? 0 : up };
    }),
  );
  const along = alongSlope(pitch);
  const plan = own.reduce((sum, polygon) => sum + polygonArea(polygon), 0);
  const gables = blocks.flatMap((block) => gableLines(block, plane));
  let eave = 0;
  // Sides that run straight up the slope, by where they stand: two parts of a face that lie side by side have the one between them in both directions.
  const up = new Map<number, number>();
  for (const polygon of own) {
    for (const [k, b] of polygon.entries()) {
      const a = polygon.at(k - 1)!;
      if (a.y === 0 && b.y === 0) eave += Math.abs(b.x - a.x);
      else if (Math.abs(b.x - a.x) <= slack && Math.abs(b.y - a.y) > slack) {
        const known = [...up.keys()].find((x) => Math.abs(x - a.x) <= slack) ?? a.x;
        up.set(known, (up.get(known) ?? 0) + (b.y - a.y));
      }
    }
  }
  let [gableRake, cornerRake] = [0, 0];
  for (const [x, length] of up) {
    if (Math.abs(length) <= slack) continue;
    if (gables.some((gable) => Math.abs(gable - x) <= slack)) gableRake += Math.abs(length) * along;
    else cornerRake += Math.abs(length) * along;
  }
  return {
    plane,
    parts: own.map((polygon) => levelsOf(polygon, slack)),
    top: Math.max(0, ...own.flatMap((polygon) => polygon.map(({ y }) => y))),
    plan,
    sloped: plan * along,
    eave,
    gableRake,
    cornerRake,
  };
}

/** Where along a plane's plate line the roof of a block that it is a side of ends over a gable. */
function gableLines(block: Block, plane: RoofPlane): number[] {
  if (!block.sides.includes(plane)) return [];
  const outline = outlineOf(block).map((point) => fromPlane(plane, point).x);
  const [low, high] = [Math.min(...outline), Math.max(...outline)];
  const leftFirst = plane === block.sides[0];
  return [
    ...(block.ends[0] === null ? [leftFirst ? low : high] : []),
    ...(block.ends[1] === null && block.wing === null ? [leftFirst ? high : low] : []),
  ];
}

/** The width of a plane at a level distance up from its eave: the sum over the parts of its face. */
export function faceWidth({ parts }: Pick<RoofFace, "parts">, up: number): number {
  return parts.reduce((sum, levels) => {
    const { from, to } = partAt(levels, up);
    return sum + (to - from);
  }, 0);
}

/** How far a face reaches along its eave between two levels: one stretch, or where a wing parts it more, from the left. */
export function faceStretches({ parts }: Pick<RoofFace, "parts">, low: number, high: number): Omit<Level, "at">[] {
  const hulls: { from: number; to: number }[] = [];
  for (const levels of parts) {
    const [first, last] = [levels[0]!.at, levels.at(-1)!.at];
    if (first >= high || last <= low) continue;
    let { from, to } = partAt(levels, Math.max(first, low));
    const reach = (level: Omit<Level, "at">) => {
      from = Math.min(from, level.from);
      to = Math.max(to, level.to);
    };
    for (const level of levels) if (level.at > low && level.at < high) reach(level);
    reach(partAt(levels, Math.min(last, high)));
    hulls.push({ from, to });
  }
  hulls.sort((a, b) => a.from - b.from);
  return hulls.reduce<{ from: number; to: number }[]>((joined, next) => {
    const last = joined.at(-1);
    if (last && next.from <= last.to * (1 + NONE) + NONE) last.to = Math.max(last.to, next.to);
    else joined.push({ ...next });
    return joined;
  }, []);
}

/** How far a face's part reaches at a level distance up from the eave; nothing past its top. */
export function partAt(levels: readonly Level[], at: number): Level {
  const i = levels.findIndex((level) => level.at >= at);
  if (i < 0 || (i === 0 && levels[0]!.at > at)) return { at, from: 0, to: 0 };
  const [low, high] = [levels[Math.max(0, i - 1)]!, levels[i]!];
  const part = high.at === low.at ? 1 : (at - low.at) / (high.at - low.at);
  return { at, from: low.from + (high.from - low.from) * part, to: low.to + (high.to - low.to) * part };
}

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
  const planes = blocks.flatMap(planesOf);
  const slack = NONE * (blocks[0]!.length + blocks[0]!.span);
  const parts = faces(
    planes,
    blocks.map((block) => ({ outline: outlineOf(block), planes: planesOf(block).map(({ index }) => index) })),
  );
  return {
    faces: planes.map((plane, i) => faceOf(blocks[plane.block]!, plane, parts[i]!, slack)),
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

function faceOf(block: Block, plane: RoofPlane, polygons: readonly (readonly Point[])[], slack: number): RoofFace {
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
  let [eave, gableRake, cornerRake] = [0, 0, 0];
  const outline = outlineOf(block);
  for (const polygon of polygons) {
    for (const [k, b] of polygon.entries()) {
      const a = polygon.at(k - 1)!;
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      const border = outline.findIndex((from, i) => onLine(from, outline[(i + 1) % 4]!, [a, b], slack));
      if (border < 0 || length <= slack) continue;
      if (Math.abs((b.x - a.x) * plane.inward.x + (b.y - a.y) * plane.inward.y) <= slack) eave += length;
      else if (border % 2 === 1 && block.ends[border === 3 ? 0 : 1] === null) gableRake += length * along;
      else cornerRake += length * along;
    }
  }
  return {
    plane,
    parts: own.map((polygon) => levelsOf(polygon, slack)),
    plan,
    sloped: plan * along,
    eave,
    gableRake,
    cornerRake,
  };
}

/** Whether points lie on the line through two others. */
function onLine(from: Point, to: Point, points: readonly Point[], slack: number): boolean {
  const [x, y] = [to.x - from.x, to.y - from.y];
  return points.every((point) => Math.abs((point.y - from.y) * x - (point.x - from.x) * y) <= slack * Math.hypot(x, y));
}

/** The width of a plane at a level distance up from its eave: the sum over the parts of its face. */
export function faceWidth({ parts }: Pick<RoofFace, "parts">, up: number): number {
  return parts.reduce((sum, levels) => {
    const { from, to } = partAt(levels, up);
    return sum + (to - from);
  }, 0);
}

/** How far a face's part reaches at a level distance up from the eave; nothing past its top. */
export function partAt(levels: readonly Level[], at: number): Level {
  const i = levels.findIndex((level) => level.at >= at);
  if (i < 0 || (i === 0 && levels[0]!.at > at)) return { at, from: 0, to: 0 };
  const [low, high] = [levels[Math.max(0, i - 1)]!, levels[i]!];
  const part = high.at === low.at ? 1 : (at - low.at) / (high.at - low.at);
  return { at, from: low.from + (high.from - low.from) * part, to: low.to + (high.to - low.to) * part };
}

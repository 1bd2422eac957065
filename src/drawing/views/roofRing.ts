import type { Point } from "../../geometry/point.ts";
import { onPlane, planeOver, type Wing } from "../../roof/frame/blocks.ts";
import type { Frame } from "../../roof/frame/frame.ts";

/** How far the eaves reach past the plates of the main roof: at the left and right end where those are hipped, and in front and back. */
export function overhangsOf({ spec: { ends }, blocks: [main] }: Pick<Frame, "spec" | "blocks">): {
  west: number;
  east: number;
  side: number;
} {
  const end = main!.ends[0]!.overhang;
  return {
    west: ends === "gable and hip" ? 0 : end,
    east: ends === "hip and gable" ? 0 : end,
    side: main!.sides[0].overhang,
  };
}

/** The wings on the front and the back wall of the main roof, each wall's from left to right. */
export function wallsOf({ blocks }: Pick<Frame, "blocks">): Readonly<Record<"front" | "back", readonly Wing[]>> {
  const on = (wall: "front" | "back") =>
    blocks.filter((block): block is Wing => block.wing?.spec.wall === wall).sort((a, b) => a.wing.from - b.wing.from);
  return { front: on("front"), back: on("back") };
}

/** The line round all plates, or round all eaves, closed, counterclockwise from the front's left corner. */
export function roofRing(frame: Pick<Frame, "spec" | "blocks">, of: "plates" | "eaves"): Point[] {
  const part = of === "plates" ? 0 : 1;
  const { west, east, side } = overhangsOf(frame);
  const wings = wallsOf(frame);
  const points = (["front", "back"] as const).flatMap((name) => {
    const wall = planeOver(frame.blocks[0]!, name);
    const [left, right] = name === "front" ? [west, east] : [east, west];
    const at = (along: number, up: number) => onPlane(wall, along, up);
    return [
      at(-left * part, -side * part),
      ...wings[name].flatMap(({ wing: { spec, from, to }, sides, ends, gableOverhang }) => {
        const [near, far] = [from - sides[1].overhang * part, to + sides[0].overhang * part];
        const out = spec.out + (ends[0]?.overhang ?? gableOverhang) * part;
        return [at(near, -side * part), at(near, -out), at(far, -out), at(far, -side * part)];
      }),
      at(wall.width + right * part, -side * part),
    ];
  });
  return [...points, points[0]!];
}

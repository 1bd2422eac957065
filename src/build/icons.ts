import { mkdirSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { png, type Pixel } from "./png.ts";

/** The sizes that Excel asks for, in pixels. */
export const ICON_SIZES = [16, 32, 64, 80, 128] as const;

type Colour = readonly [number, number, number];
/** The four planes of a hip roof from above, lit from the top left: top, right, bottom, left. */
const PLANES: readonly Colour[] = [
  [94, 142, 168],
  [44, 84, 108],
  [33, 66, 87],
  [70, 116, 142],
];
const RIDGE: Colour = [238, 243, 246];
const HIP: Colour = [244, 162, 58];
/** Where the jacks stand along the lower plate. */
const JACKS = [0.23, 0.35, 0.47];
/** Samples a side in each pixel, for smooth edges. */
const FINE = 8;

/** Longpoint's mark: a square hip roof seen from above, its hips as lines, one hip heavier, with the jacks that meet it. */
export function icon(size: number): Buffer {
  return png(size, (x, y) => {
    let sum = [0, 0, 0, 0];
    for (let i = 0; i < FINE; i++)
      for (let j = 0; j < FINE; j++) {
        const [r, g, b, a] = at((x + (i + 0.5) / FINE) / size, (y + (j + 0.5) / FINE) / size, size);
        sum = [sum[0]! + r * a, sum[1]! + g * a, sum[2]! + b * a, sum[3]! + a];
      }
    const cover = sum[3]!;
    return [0, 1, 2]
      .map((k) => (cover ? Math.round(sum[k]! / cover) : 0))
      .concat(Math.round((cover / FINE ** 2) * 255)) as unknown as Pixel;
  });
}

/** The mark in the unit square, y downwards; the last figure is 1 inside and 0 outside. */
function at(x: number, y: number, size: number): readonly [number, number, number, 0 | 1] {
  const edge = Math.floor(0.04 * size) / size;
  if (x < edge || y < edge || x > 1 - edge || y > 1 - edge) return [0, 0, 0, 0];
  const rising = Math.abs(x + y - 1) / Math.SQRT2;
  const falling = Math.abs(x - y) / Math.SQRT2;
  if (rising < 0.075 && x <= y) return [...HIP, 1];
  if (rising < 0.022 || falling < 0.022) return [...RIDGE, 1];
  // Jacks from the plate up to the heavy hip, where there are pixels enough to tell them apart.
  if (size >= 64 && x + y > 1 && JACKS.some((jack) => Math.abs(x - jack) < 0.022)) return [...RIDGE, 1];
  const plane = y < x ? (x + y < 1 ? 0 : 1) : x + y < 1 ? 3 : 2;
  return [...PLANES[plane]!, 1];
}

/** Draws the committed icons anew. */
export function writeIcons(folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const size of ICON_SIZES) writeFileSync(`${folder}/icon-${size}.png`, icon(size));
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) writeIcons("manifest");

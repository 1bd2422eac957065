import type { RoofSpec } from "./roofSpec.ts";

/**
 * Offsets of the jacks along one plate line from its corner, farthest first, before any is dropped for landing on its seat.
 *
 * From the king common: its offset less 1, 2, 3 ... spacings. From the corner: at 1, 2, 3 ... spacings, as long as a clear
 * thickness is left before the king common's face.
 *
 * @example
 * jackOffsets({ setOutFrom: "king common", spacing: 24, thickness: 1.5 }, 60) // => [36, 12]
 * jackOffsets({ setOutFrom: "corner", spacing: 24, thickness: 1.5 }, 60) // => [48, 24]
 */
export function jackOffsets(
  { setOutFrom, spacing, thickness }: Pick<RoofSpec, "setOutFrom" | "spacing"> & { thickness: number },
  king: number,
): number[] {
  const offsets: number[] = [];
  if (setOutFrom === "king common") {
    // One that only the last bits of a run keep from the corner itself stands on it, and is none.
    for (let k = 1; king - k * spacing > 1e-9 * king; k++) offsets.push(king - k * spacing);
  } else {
    for (let k = Math.floor((king - 2 * thickness) / spacing + 1e-9); k >= 1; k--) offsets.push(k * spacing);
  }
  return offsets;
}

/**
 * Distances of the commons from the king common along the ridge, both ends left out.
 *
 * Every spacing, as long as the piece clears what stands at the other end by `clear`, center to center.
 *
 * @example
 * commonStations(24, 100, 1.5) // => [24, 48, 72, 96]
 */
export function commonStations(spacing: number, length: number, clear: number): number[] {
  const stations: number[] = [];
  for (let k = 1; k * spacing <= length - clear + 1e-9 * length; k++) stations.push(k * spacing);
  return stations;
}

import type { Kinds } from "../../measure/result.ts";

/** Lengths in the roof's unit, angles in degrees. */
interface Notes {
  /** Added to the long point. */
  corrected: { by: number };
  "tilt over 45": { tilt: number };
  "tilt over 60": { tilt: number };
  "tail tilt over 45": { tilt: number };
  "tail tilt over 60": { tilt: number };
  "proud of hip": { by: number };
  "toe below hip": { by: number };
  "corner bay": { width: number };
  /** A shorter jack would land on its seat. */
  "corner bay, seat": { width: number };
  "king bay": { width: number };
  "odd bay": { width: number };
  "apex bay": { width: number };
  "last bay": { width: number };
  "gable pair": object;
  "at gable": object;
  "above end plane": { by: number };
  "above main plane": { by: number };
  "kings meet": object;
  butts: { by: number };
  "ridge runs on": { by: number };
  "ridge thinner than rafters": { least: number };
  "ridge to gable": object;
  /** Both ways by the same angle. */
  backed: { main: number };
  "backed, two": { main: number; end: number };
  dropped: { by: number };
  /** Level from the corner line to its two faces. */
  shifted: { main: number; end: number };
  "jacks proud": { by: number; backMain: number; backEnd: number };
  "farthest point": { by: number };
  "hip too shallow": { least: number };
  "short overhang": { overhang: number };
  /** The end overhang that would make them level. */
  "fascia not level": { levelEnd: number };
}

/** Something people must be told about a piece. */
export type Note<K extends keyof Notes = keyof Notes> = Kinds<Notes, K>;

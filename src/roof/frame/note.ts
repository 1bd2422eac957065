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
  /** The wing's overhang that would make them level with the main roof's. */
  "wing fascia not level": { wing: string; level: number };
  "runs on to ridge": object;
  /** Past the crossing both sides are main plane: by how much the wing-side corner stands above it. */
  "proud past crossing": { by: number };
  "butts long valley": object;
  "toe below long valley": { by: number };
  "valley to corner of ridges": object;
  "valley to broken hip": object;
  "valley too shallow": { least: number };
  "broken hip stands on ridge": object;
  "ridge butts main ridge": object;
  "ridge pointed into valleys": object;
  "ridge past crossing": { by: number };
  /** A valley board: on the slope from the valley's line to its square outer edge, or that edge's bevel; across its flat, the cuts of its lower and its upper end. */
  "valley board": { setBack: number; bevel: number; lower: number; upper: number };
  /** A jack on a valley board: its seat is laid out level; the saw leans by the main pitch. */
  "seat on valley board": { wing: string; tilt: number };
  /** It ends in a wedge, less deep at its head than its board. */
  wedge: object;
  "ridge on sheathing": { cut: number };
  "through mouth": { wing: string };
  /** Moved along the plate, so that both faces meet one board. */
  moved: { by: number };
  /** Level along the eave line, from the last piece's center to where the wing's ridge line meets the main roof. */
  "crossing bay": { wing: string; width: number };
  "inner corner": { wing: string };
  "over inner corner": { wing: string };
  /** Tails are square, or level and not at one height: a tail at a corner is cut where it stands. */
  "tail in place": object;
  /** Plumb depth of a hip's tail above its level cut. */
  "level hip tail": { plumb: number };
  /** How far a board's outer top edge stands below the top of the tails. */
  "eave board lower": { by: number };
  "inside corner": object;
  /** Over the plates beside a valley. */
  "valley bays": object;
  "eave corners in place": object;
  "joined over tails": object;
  /** Height of its outer face, and the bevel of its top. */
  "block top": { height: number; bevel: number };
  "block open": { by: number };
  /** As the corner bay, with a block for it among the pieces. */
  "corner bay blocked": { width: number; long: number };
  /** Along the top edge, on the longer and the shorter face; the tilt of its cut. */
  "tail on valley": { wing: string; long: number; short: number; tilt: number };
}

/** Something people must be told about a piece. */
export type Note<K extends keyof Notes = keyof Notes> = Kinds<Notes, K>;

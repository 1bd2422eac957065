import { chance, seed } from "./chance.ts";
import { hasHip, roofCorner } from "./corner.ts";
import type { RoofCorner } from "./corner.ts";
import type { Section } from "./member.ts";

/** A pitch as a cell holds it and as rise over run. */
export interface Pitch {
  readonly cell: number | string;
  readonly slope: number;
}
export const rise = (cell: number): Pitch => ({ cell, slope: cell / 12 });
export const slopeDegrees = (degrees: number): Pitch => ({
  cell: `${degrees} deg`,
  slope: Math.tan((degrees * Math.PI) / 180),
});

/** A corner and everything framed at it. Lengths in inches. */
export interface CornerCase {
  readonly pitches: readonly [Pitch, Pitch];
  readonly angle: number;
  readonly heel: number;
  readonly hip: Section;
  readonly jack: Section;
  readonly ridge: number;
  readonly overhang: number;
  readonly offset: number;
  readonly run: number;
}

export const cornerIn = ({ pitches, angle, heel }: CornerCase): RoofCorner =>
  roofCorner({ pitches: [pitches[0].slope, pitches[1].slope], angle, heel });

/** The case as it looks from its other side. */
export const turned = (one: CornerCase): CornerCase => ({ ...one, pitches: [one.pitches[1], one.pitches[0]] });

export const worded = ({ pitches, angle, hip, jack, offset }: CornerCase): string =>
  `${pitches[0].cell} and ${pitches[1].cell} at ${angle} degrees, hip ${hip.thickness} x ${hip.depth}, jack ${jack.thickness} x ${jack.depth} at ${offset}`;

const RISES = [3, 4.5, 6, 8, 12, 18];
const CORNERS = [60, 75, 90, 105, 120, 135, 150];
const SECTIONS = [
  [1.5, 5.5],
  [1.5, 7.25],
  [3, 5.5],
  [2.25, 9.25],
  [0.75, 3.5],
] as const;

/** Every pair of pitches at every corner that makes a hip, with thicknesses, depths, overhangs and offsets that differ from case to case. */
export function gridCases(): CornerCase[] {
  const cases: CornerCase[] = [];
  const pick = <T>(list: readonly T[], step: number): T => list[Math.floor(cases.length / step) % list.length]!;
  for (const angle of CORNERS)
    for (const one of RISES)
      for (const two of RISES) {
        const [thickness, depth] = pick(SECTIONS, 1);
        const [hipThickness, hipDepth] = pick(SECTIONS, 3);
        const made: CornerCase = {
          pitches: [rise(one), rise(two)],
          angle,
          heel: depth * pick([0.5, 0.75, 0.9], 2),
          jack: { thickness, depth },
          hip: { thickness: hipThickness, depth: hipDepth + 2 },
          ridge: pick([1.5, 0.75, 0, 2.5], 1),
          overhang: pick([0, 12, 16.5, 24], 1),
          offset: pick([24, 48, 31.75, 96], 1),
          run: pick([144, 108.5, 216], 1),
        };
        if (hasHip(cornerIn(made))) cases.push(made);
      }
  return cases;
}

/** Cases by chance, the same for the same seed and stream; the seed is printed so that a find can be had again. */
export function fuzzedCases(count: number, stream: number): CornerCase[] {
  process.stdout.write(`${count} corners by chance, LONGPOINT_SEED=${seed}, stream ${stream}\n`);
  const next = chance(seed + stream);
  const between = (low: number, high: number): number => low + (high - low) * next();
  const anyPitch = (): Pitch => (next() < 0.5 ? rise(between(3, 18)) : slopeDegrees(between(14, 56)));
  const cases: CornerCase[] = [];
  while (cases.length < count) {
    const depth = between(3.5, 11.25);
    const made: CornerCase = {
      pitches: [anyPitch(), anyPitch()],
      angle: between(60, 150),
      heel: depth * between(0.3, 0.95),
      jack: { thickness: between(0.75, 3), depth },
      hip: { thickness: between(0.75, 3.5), depth: depth + between(1, 4) },
      ridge: between(0, 3),
      overhang: next() < 0.2 ? 0 : between(2, 36),
      offset: between(16, 160),
      run: between(90, 260),
    };
    if (hasHip(cornerIn(made))) cases.push(made);
  }
  return cases;
}

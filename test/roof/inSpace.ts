/**
 * A roof corner by its planes alone, solved as linear equations: no tangent or cosine of a plan angle, no formula of src/roof.
 *
 * The corner of the plate lines is the origin, one heel under the line in which the roof planes meet. The near plate line runs along x, and its
 * building side is y > 0; the far plate line runs at the corner's angle from it.
 */
export type Vec = readonly [number, number, number];
/** All points p with normal . p = offset. */
export interface Plane {
  readonly normal: Vec;
  readonly offset: number;
}

export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const sub = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const far = (a: Vec, b: Vec): number => Math.hypot(...sub(a, b));

/** The one point of three planes, by Cramer's rule. */
export function meet(a: Plane, b: Plane, c: Plane): Vec {
  const det = dot(a.normal, cross(b.normal, c.normal));
  const [p, q, r] = [cross(b.normal, c.normal), cross(c.normal, a.normal), cross(a.normal, b.normal)];
  return [0, 1, 2].map((i) => (a.offset * p[i]! + b.offset * q[i]! + c.offset * r[i]!) / det) as unknown as Vec;
}

export const atX = (x: number): Plane => ({ normal: [1, 0, 0], offset: x });
export const atY = (y: number): Plane => ({ normal: [0, 1, 0], offset: y });

export interface Space {
  /** The two roof planes, z up from the corner's heel. */
  readonly near: Plane;
  readonly far: Plane;
  /** A direction of the plan line over which the planes meet, of length 1, away from the corner. */
  readonly along: readonly [number, number];
  /** Plumb rise of the meeting line over a unit of its plan. */
  readonly rise: number;
  /** The plumb plane parallel to the meeting line, at a level distance to the near side (below 0: to the far side). */
  face(toNear: number): Plane;
  /** Height of a roof plane, from the heel, over a plan point. */
  heightOf(plane: Plane, x: number, y: number): number;
}

/** Pitches as rises in 12, the corner in degrees. */
export function space(nearRise: number, farRise: number, corner = 90): Space {
  const turn = (corner * Math.PI) / 180;
  const near: Plane = { normal: [0, -nearRise / 12, 1], offset: 0 };
  // A point's level distance inside the far plate line, times the pitch.
  const distant: Plane = { normal: [(-Math.sin(turn) * farRise) / 12, (Math.cos(turn) * farRise) / 12, 1], offset: 0 };
  const raw = cross(near.normal, distant.normal);
  const length = Math.hypot(raw[0], raw[1]) * Math.sign(raw[1]);
  const along = [raw[0] / length, raw[1] / length] as const;
  return {
    near,
    far: distant,
    along,
    rise: raw[2] / length,
    face: (toNear) => ({ normal: [along[1], -along[0], 0], offset: toNear }),
    heightOf: ({ normal, offset }, x, y) => (offset - normal[0] * x - normal[1] * y) / normal[2],
  };
}

/** The long and the short point of a jack of the near plane, their lengths up the slope from the plumb line over the plate line, and its center's. */
export function jackInSpace(
  at: Space,
  offset: number,
  hipThickness: number,
  jackThickness: number,
): { long: number; short: number; center: number; longPoint: Vec; shortPoint: Vec } {
  const face = at.face(hipThickness / 2);
  const [longPoint, shortPoint, centerPoint] = [offset + jackThickness / 2, offset - jackThickness / 2, offset].map(
    (x) => meet(atX(x), at.near, face),
  ) as [Vec, Vec, Vec];
  const up = (point: Vec) => Math.sign(point[1]) * far(point, [point[0], 0, 0]);
  return { long: up(longPoint), short: up(shortPoint), center: up(centerPoint), longPoint, shortPoint };
}

/** How far each roof plane lies, plumb, under the meeting line at the faces of a hip centered on it. */
export function falls(at: Space, thickness: number): { near: number; far: number } {
  const [ux, uy] = at.along;
  const s = 100;
  const under = (plane: Plane, side: number) =>
    at.rise * s - at.heightOf(plane, s * ux + (side * uy * thickness) / 2, s * uy - (side * ux * thickness) / 2);
  return { near: under(at.near, 1), far: under(at.far, -1) };
}

/** A point or a direction in space, inches; z is up and 0 is the top of the plate. */
export type Vec = readonly [number, number, number];

export const UP: Vec = [0, 0, 1];

export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec, k: number): Vec => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: Vec): number => Math.hypot(...a);
export const unit = (a: Vec): Vec => scale(a, 1 / size(a));
export const distance = (a: Vec, b: Vec): number => size(sub(a, b));
/** What is left of a direction seen from above. */
export const plan = (a: Vec): Vec => [a[0], a[1], 0];
/** Quarter turn to the left, seen from above. */
export const leftOf = (a: Vec): Vec => [-a[1], a[0], 0];
/** Angle between two directions in degrees; by both products, because an arc cosine alone loses half the digits near 0. */
export const angle = (a: Vec, b: Vec): number => (Math.atan2(size(cross(a, b)), dot(a, b)) * 180) / Math.PI;

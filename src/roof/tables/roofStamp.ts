import type { RoofSpec } from "../frame/roofSpec.ts";

/** Digits and letters of which none is taken for another. */
const SIGNS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
const LONG = 5;

/**
 * Five signs that tell papers of one roof from those of another: an old card beside a new plan is seen.
 *
 * A checksum (FNV-1a, 32 bits) of all that the roof is made from, and of the width of the saw cut.
 */
export function roofStamp(spec: RoofSpec, kerf: number): string {
  let sum = 0x811c9dc5;
  for (const letter of JSON.stringify([spec, kerf])) sum = Math.imul(sum ^ letter.codePointAt(0)!, 0x01000193);
  return Array.from({ length: LONG }, (_, i) => SIGNS[(sum >>> (i * 5)) & 31]!).join("");
}

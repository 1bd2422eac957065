import type { Input } from "../../src/registry/worksheetFunction.ts";

/** Longer names have no room on a card. */
const LONGEST_JOB = 60;

/** A job's name on one line, cut off where it is too long for a card. */
export function jobName(cell: Input): string {
  const text = typeof cell === "string" || typeof cell === "number" ? String(cell).slice(0, 1000) : "";
  const letters = [...text.replace(/\s+/g, " ").trim()];
  return letters.length <= LONGEST_JOB ? letters.join("") : `${letters.slice(0, LONGEST_JOB - 1).join("")}…`;
}

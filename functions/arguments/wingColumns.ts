import type { Result } from "../../src/measure/result.ts";
import { isBlank } from "../../src/registry/cells.ts";
import { plainLabel, type LabelledBlock } from "../../src/registry/labelledBlock.ts";
import type { Reading } from "../../src/registry/reading.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { BlockProblem } from "./blockProblem.ts";

/** Names of wings; no roof has more. */
export const LETTERS = ["A", "B", "C", "D", "E", "F", "G", "H"] as const;

/** The cells of one wing of a roof block. */
export interface WingColumn<L extends string> {
  readonly letter: string;
  /** Its filled rows. */
  readonly rows: ReadonlyMap<L, Input>;
}

/** How the column of the main roof is headed. */
export const MAIN_HEADING = "Main roof";

/** How a wing's column is headed. */
export const wingHeading = (letter: string) => `Wing ${letter}`;

const WINGS = new Map(LETTERS.map((letter) => [plainLabel(wingHeading(letter)), letter]));

/** The letter in a wing's heading, or null. */
export function letterIn(heading: Input): string | null {
  if (typeof heading !== "string" || heading.length > 64) return null;
  return WINGS.get(plainLabel(heading)) ?? null;
}

/**
 * The wings' columns of a roof block: all that are filled right of the main roof's.
 *
 * The heading says the letter, so that B keeps its name when A goes; without one it is the place from the left.
 */
export function wingColumns<L extends string>(
  { headings, rows }: LabelledBlock<L>,
  reading: Reading,
): Result<WingColumn<L>[], BlockProblem> {
  const refused = (problem: BlockProblem) => refuse<BlockProblem>(reading, problem);
  const [main, ...over] = headings;
  if (!isBlank(main) && (typeof main !== "string" || plainLabel(main.slice(0, 64)) !== plainLabel(MAIN_HEADING)))
    return refused({ kind: "unknown heading", read: main });
  const strange = over.find((heading) => !isBlank(heading) && letterIn(heading) === null);
  if (strange !== undefined) return refused({ kind: "unknown heading", read: strange });
  const most = Math.max(headings.length, ...[...rows.values()].map((cells) => cells.length)) - 1;
  const wings: WingColumn<L>[] = [];
  for (let i = 0; i < most; i++) {
    const filled = [...rows].flatMap(([row, cells]) => (isBlank(cells[i + 1]) ? [] : [[row, cells[i + 1]] as const]));
    if (filled.length === 0 && isBlank(over[i])) continue;
    const letter = letterIn(over[i]) ?? LETTERS[i];
    if (letter === undefined) return refused({ kind: "too many wings", most: LETTERS.length });
    if (wings.some((wing) => wing.letter === letter))
      return refused({ kind: "wing twice", heading: wingHeading(letter) });
    wings.push({ letter, rows: new Map(filled) });
  }
  return wings;
}

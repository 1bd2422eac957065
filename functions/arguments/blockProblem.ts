import type { Kinds } from "../../src/measure/result.ts";
import type { Unit } from "../../src/measure/unit.ts";
import type { CellProblem } from "../../src/registry/cellProblem.ts";

interface Read {
  /** The raw cell. */
  read: unknown;
}

interface BlockProblems {
  "row missing": { row: "Span" | "Length" | "Pitch" };
  "row of 0": object;
  /** A blank stands for the level fascia. */
  "overhang of 0": object;
  "unknown heading": Read;
  "wing twice": { heading: string };
  "too many wings": { most: number };
  "wing without": { row: "Wall" | "From left corner" | "Out from wall" | "Span" | "Ends" };
  /** In the column of a wing; and the other way round. */
  "row of the main roof": Read & { row: string };
  "row of a wing": Read & { row: string };
  "wing on an end": Read;
  "no place on the wall": Read;
  "wings need a ridge": object;
  "heel beside seat": object;
  /** A level tail is plumb as deep as its fascia. */
  "level tail without fascia": object;
  "blocking without spacing": object;
  /** 0.07 for 7%. */
  "part for percent": { waste: number };
  "too short in this unit": Read & { value: number };
  "too long in this unit": Read & { value: number };
  "boards too short in this unit": Read;
  /** `unitRow`: the block says its unit in a row of its own. */
  "row in other unit": Read & { unit: Unit; unitRow: boolean };

  "no length of board": object;
  "text too long for boards": Read;
  "comma between meters": Read;
  "too many lengths of board": { most: number };
  "range without ends or step": Read;
  "range runs backwards": Read;
  "0 in a range": object;
  "too many kinds of board": { most: number };
  "price missing": Read;
  "no boards in a row": object;

  "no values": { examples: readonly [number, readonly number[]] };
  "too many values": { most: number };

  "neither list nor roof": Read & { headings: readonly string[] };
  "piece without name": Read;
  "name too long": Read & { most: number };
  "tilt out of range": Read;
  "tilt without hand": object;
  "slant of unknown size": Read;
  "too many joints": { most: number };

  "kerf too wide": Read;
  /** Nothing is left of the shortest board. */
  "trim takes the board": { trim: number; board: number };
}

/** Why a block, a list or a range cannot be read, those of single cells included. */
export type BlockProblem<K extends keyof BlockProblems = keyof BlockProblems> = Kinds<BlockProblems, K>;

/** All that reading arguments can come to. */
export type ArgumentProblem = BlockProblem | CellProblem;

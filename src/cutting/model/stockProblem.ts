import type { Kinds } from "../../measure/result.ts";

/** Lengths in the caller's unit; `row`: the piece's place in its list, from 1; null where it stands in none. */
interface StockProblems {
  "no pieces": object;
  "no board of that size": { row: number | null; name: string; size: string };
  /** `needs`: with what its slanting ends take, and the trim of a board's ends. */
  "piece too long": { row: number | null; name: string; size: string; length: number; needs: number; longest: number };
  "head longer than piece": { row: number | null; name: string; length: number };
  "too few boards": { size: string };
  /** None was found in the work allowed. */
  "no way found": { size: string };
  "no board long enough": { length: number; longest: number };
}

/** Why pieces cannot be cut from boards. */
export type StockProblem<K extends keyof StockProblems = keyof StockProblems> = Kinds<StockProblems, K>;

/** A size of which nothing can be cut, by the piece that needs most. */
export type MissingSize = StockProblem<"no board of that size" | "piece too long">;

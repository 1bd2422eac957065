import type { AnyProblem } from "../measure/result.ts";
import type { CellProblem } from "./cellProblem.ts";
import { placeOf, type Reading } from "./reading.ts";
import { Refusal } from "./refusal.ts";

/** The refusal of what stands where the reading is now. A room of more kinds of problem names its union. */
export function refuse<P extends AnyProblem = CellProblem>(reading: Reading, problem: NoInfer<P>): Refusal<NoInfer<P>> {
  return new Refusal<P>(problem, placeOf(reading), reading.unit);
}

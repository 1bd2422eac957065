import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import type { MemberProblem } from "../../src/roof/members/memberProblem.ts";
import type { OwnProblem } from "../problem.ts";

/** Problems that lie with the arguments of one function together, not with a cell. */
export type RefusedKind = (MemberProblem | OwnProblem | StockProblem<"no board long enough">)["kind"];

/** The argument to change. */
const ARGUMENTS: Readonly<Record<RefusedKind, string>> = {
  "no hip": "otherPitch, corner",
  "ridge fills the run": "run",
  "head past the corner": "run",
  "seat takes the heel": "seat",
  "heel above depth": "heel",
  "jack wider than offset": "offset",
  "short point below plate": "offset",
  "square tail cuts the seat": "overhang",
  "fascia missing": "fascia",
  "fascia not used": "fascia",
  "fascia too deep": "fascia",
  "fascia above the plate": "fascia",
  "tape not above heel": "tape",
  "valley jack vanishes": "offset",
  "no valley jack fits": "run",
  "cripple vanishes": "distance",
  "valley vanishes": "run",
  "valley cripple vanishes": "distance",
  "drop takes the heel": "heel",
  "hip too shallow for the plate": "depth",
  "no triangle": "diagonal",
  "no board long enough": "length",
  "sides differ": "side",
  "no such piece": "piece",
  "blocks of two units": "new",
};

/** What a function refuses, each with the argument to change. */
export function refused(...kinds: readonly RefusedKind[]): Readonly<Partial<Record<RefusedKind, string>>> {
  return Object.fromEntries(kinds.map((kind) => [kind, ARGUMENTS[kind]]));
}

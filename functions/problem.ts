import type { StockProblem } from "../src/cutting/model/stockProblem.ts";
import type { Kinds } from "../src/measure/result.ts";
import type { FrameProblem } from "../src/roof/frame/frameProblem.ts";
import type { MemberProblem } from "../src/roof/members/memberProblem.ts";
import type { ArgumentProblem } from "./arguments/blockProblem.ts";

/** Problems of single functions. */
export type OwnProblem = Kinds<{
  "no triangle": { least: number; most: number };
  "sides differ": object;
  "no such piece": { mark: string; marks: string[] };
  "blocks of two units": object;
}>;

/** Every problem that a call can come to. Each room declares its own part. */
export type Problem = ArgumentProblem | FrameProblem | MemberProblem | OwnProblem | StockProblem;

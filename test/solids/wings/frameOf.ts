import { readRoof, type RoofModel } from "../../../functions/arguments/roofModel.ts";
import { Failure } from "../../../src/measure/result.ts";
import { blockOf, type WingedPlan } from "./plan.ts";

/** The frame and the pieces of a plan that can be framed. */
export function modelOf(plan: WingedPlan): RoofModel {
  const model = readRoof("roof", blockOf(plan));
  if (model instanceof Failure) throw new Error(JSON.stringify(model.problem));
  return model;
}

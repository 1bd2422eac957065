import { Failure } from "../../measure/result.ts";
import { soffitCut, tailOf, type TailCut } from "../members/tail.ts";
import type { RoofPlane } from "./blocks.ts";
import type { FrameProblem } from "./frameProblem.ts";
import type { RoofSpec } from "./roofSpec.ts";

/** How the tail of a rafter that ends over the fascia is cut. */
export interface TailEnd {
  readonly cut: TailCut;
  /** Plumb depth of the cut above a level soffit, and length of the level one; null for the other cuts. */
  readonly plumb: number | null;
  readonly soffit: number | null;
}

/** A plumb cut, or no tail at all. */
export const PLUMB_END: TailEnd = { cut: "plumb", plumb: null, soffit: null };

/** A level tail is plumb as deep as the board that is nailed to it; null for the other cuts. */
export const plumbPart = ({ tailCut, fascia, subFascia }: RoofSpec): number | null =>
  tailCut === "level" ? (subFascia ?? fascia)!.depth : null;

/** The tail of a plane's rafters. */
export function tailEndOf(spec: RoofSpec, { pitch, overhang }: RoofPlane): TailEnd {
  if (spec.tailCut === "plumb" || overhang === 0) return PLUMB_END;
  const plumb = plumbPart(spec);
  const soffit = plumb === null ? null : soffitCut({ pitch, overhang, depth: spec.rafter.depth, fascia: plumb });
  return { cut: spec.tailCut, plumb, soffit: soffit instanceof Failure ? null : soffit };
}

/** Board that a tail takes down the slope from the plumb line over the plate line; checked by {@link tailProblem}. */
export function tailBoard(spec: RoofSpec, { pitch, overhang }: RoofPlane, heel: number): number {
  const { depth } = spec.rafter;
  const shape = { pitch, overhang, depth, heel };
  const tail =
    overhang > 0
      ? tailOf({ ...shape, cut: spec.tailCut, fascia: plumbPart(spec) })
      : tailOf({ ...shape, cut: "plumb", fascia: null });
  return tail instanceof Failure ? 0 : tail.board;
}

/** What of the row Tail cut the planes of a roof cannot have; null where all is well. */
export function tailProblem(spec: RoofSpec, heel: number, planes: readonly RoofPlane[]): Failure<FrameProblem> | null {
  if (spec.tailCut === "plumb") return null;
  for (const { pitch, overhang } of planes.filter((plane) => plane.overhang > 0)) {
    const { depth } = spec.rafter;
    const tail = tailOf({ pitch, overhang, depth, heel, cut: spec.tailCut, fascia: plumbPart(spec) });
    if (!(tail instanceof Failure)) continue;
    const { problem } = tail;
    if (problem.kind === "square tail cuts the seat")
      return new Failure({ kind: "square tail in the seat", at: "tailCut", least: problem.least });
    if (problem.kind === "fascia too deep")
      return new Failure({ kind: "plumb part too deep", at: "tailCut", most: problem.most });
    if (problem.kind === "fascia above the plate")
      return new Failure({ kind: "soffit above the plate", at: "tailCut", least: problem.least });
  }
  return null;
}

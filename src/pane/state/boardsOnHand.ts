import { lengthText } from "../../measure/lengthText.ts";
import type { Inputs } from "./fields.ts";
import type { Report } from "./report.ts";

/** The lengths of board that an order of this roof is made from, as text: those of its row Boards, else the usual ones, each with its unit. */
export function boardsOnHand(
  inputs: Inputs,
  { unit, model }: Pick<Report, "unit" | "model">,
): { readonly boards: string; readonly usual: string } {
  const usual = (model?.frame.spec.boards ?? []).map((length) => lengthText(length, unit)).join(", ");
  return { boards: inputs.Boards.trim() || usual, usual };
}

import type { MissingSize } from "../../src/cutting/model/stockProblem.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import type { CutOrder } from "../arguments/cutOrder.ts";
import { limitText } from "./limitText.ts";

/** What was taken off the boards and what was allowed, for the first note of an order. */
export function orderTerms({ trim, kerf, crownDown, zeroPrices, unit }: CutOrder): string {
  const ends = trim === 0 ? "no end trim" : `end trim ${fine(trim, unit)} a board, both ends together`;
  return [
    `${ends}, kerf ${fine(kerf, unit)}`,
    crownDown ? "a jack may lie crown down where that saves" : "every piece crown up",
    ...(zeroPrices ? ["every price is 0: ordered by length"] : []),
  ].join("; ");
}

/** Why a size is not in the order. */
export function noneLongEnough(missing: MissingSize, { unit }: Pick<CutOrder, "unit">): string {
  const { name, size } = missing;
  if (missing.kind === "no board of that size") return `none long enough: there are no boards of ${size} for ${name}`;
  const needs = limitText(missing.needs, unit, "least");
  return `none long enough: ${name} takes a ${size} of ${needs}, the longest is ${lengthText(missing.longest, unit, 16)}`;
}

/** A cut's width: finer than other lengths. */
function fine(length: number, unit: CutOrder["unit"]): string {
  return unit === "mm" ? `${Number(length.toFixed(2))} mm` : lengthText(length, unit, 64);
}

import { lengthText } from "../../src/measure/lengthText.ts";
import type { CutOrder } from "../arguments/cutOrder.ts";

/** That an order is the least there is, in money or, without prices, in length. */
export const PROVED = {
  cost: "proved: no order of these boards costs less",
  length: "proved: no order of these boards is shorter in all",
} as const;

/** That the order is the least there is, or how much could still be saved at most. */
export function orderProof({ plan, priced, unit }: Pick<CutOrder, "plan" | "priced" | "unit">): string {
  const out = plan.missing.map(({ size }) => size).join(", ");
  if (out !== "") return `no least: ${out} ${plan.missing.length === 1 ? "is" : "are"} not in the order`;
  if (plan.proved) return PROVED[priced ? "cost" : "length"];
  const money = (value: number) => (priced ? value.toFixed(2) : lengthText(value, unit));
  const sizes = plan.sizes.filter(({ proved }) => !proved).map(({ size }) => size);
  const gap = plan.cost - plan.bound;
  return `not proved: the order comes to ${money(plan.cost)}, and at most ${money(gap)} of it (${((gap / plan.cost) * 100).toFixed(2)} percent) could be saved, on ${sizes.join(", ")}; the search stopped at its limit`;
}

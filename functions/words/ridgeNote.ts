import { lengthText } from "../../src/measure/lengthText.ts";
import type { CutOrder } from "../arguments/cutOrder.ts";

/** Where a ridge longer than every board is joined, in words, for the boards of its size; empty for every other. */
export function ridgeNote({ ridge, unit }: Pick<CutOrder, "ridge" | "unit">, size: string): string {
  if (ridge?.size !== size) return "";
  const where = ridge.joints
    .slice(0, 8)
    .map((at) => lengthText(at, unit))
    .join(", ");
  return `ridge longer than every board: in ${ridge.joints.length + 1} parts, joined over rafters at ${where}${ridge.joints.length > 8 ? " and so on" : ""} from its first end; hold the joints as the local code says`;
}

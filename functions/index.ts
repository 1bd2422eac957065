import type { WorksheetFunction } from "../src/registry/worksheetFunction.ts";
import { checks } from "./check.ts";
import { commons } from "./common.ts";
import { hipBoards } from "./hipBoard.ts";
import { hips } from "./hip.ts";
import { jacks } from "./jack.ts";
import { lumbers } from "./lumber.ts";
import { lumberOrders } from "./lumberOrder.ts";
import { measures } from "./measure.ts";
import { pitches } from "./pitch.ts";
import { roofs } from "./roof.ts";
import { tails } from "./tail.ts";
import { valleys } from "./valley.ts";

/** Every worksheet function, family by family, in the order of the reference. */
export const functions: readonly WorksheetFunction[] = [
  ...measures,
  ...pitches,
  ...commons,
  ...tails,
  ...hips,
  ...hipBoards,
  ...jacks,
  ...valleys,
  ...roofs,
  ...lumbers,
  ...lumberOrders,
  ...checks,
];

import type { WorksheetFunction } from "../src/registry/worksheetFunction.ts";
import type { Problem } from "./problem.ts";
import { cautions } from "./cautions.ts";
import { changes } from "./changes.ts";
import { checks } from "./check.ts";
import { commons } from "./common.ts";
import { compare } from "./compare.ts";
import { hipBoards } from "./hipBoard.ts";
import { hips } from "./hip.ts";
import { jacks } from "./jack.ts";
import { jackTable } from "./jackTable.ts";
import { lumbers } from "./lumber.ts";
import { lumberOrder } from "./lumberOrder.ts";
import { measures } from "./measure.ts";
import { members } from "./members.ts";
import { pieceList } from "./pieceList.ts";
import { pitches } from "./pitch.ts";
import { plateMarks } from "./plateMarks.ts";
import { salvage } from "./salvage.ts";
import { sawSettings } from "./sawSettings.ts";
import { sheathing } from "./sheathing.ts";
import { stickPlan } from "./stickPlan.ts";
import { tails } from "./tail.ts";
import { takeOff } from "./takeOff.ts";
import { valleys } from "./valley.ts";
import { valleyRafters } from "./valleyRafter.ts";

/** Every worksheet function, family by family, in the order of the reference. */
export const functions: readonly WorksheetFunction<Problem>[] = [
  ...measures,
  ...pitches,
  ...commons,
  ...tails,
  ...hips,
  ...hipBoards,
  ...jacks,
  ...valleys,
  ...valleyRafters,
  jackTable,
  members,
  plateMarks,
  takeOff,
  sheathing,
  cautions,
  compare,
  salvage,
  sawSettings,
  pieceList,
  changes,
  ...lumbers,
  lumberOrder,
  stickPlan,
  ...checks,
];

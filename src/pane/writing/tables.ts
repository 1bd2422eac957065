import { cautions } from "../../../functions/cautions.ts";
import { jackTable } from "../../../functions/jackTable.ts";
import { lumberOrder } from "../../../functions/lumberOrder.ts";
import { members } from "../../../functions/members.ts";
import { plateMarks } from "../../../functions/plateMarks.ts";
import { pieceList } from "../../../functions/pieceList.ts";
import { sawSettings } from "../../../functions/sawSettings.ts";
import { sheathing } from "../../../functions/sheathing.ts";
import { stickPlan } from "../../../functions/stickPlan.ts";
import { takeOff } from "../../../functions/takeOff.ts";
import type { TableFunction } from "../../registry/worksheetFunction.ts";
import type { texts } from "../words/texts.ts";

/** A table that the pane can write: one call on the roof block that spills. */
export interface SheetTable {
  readonly id: keyof typeof texts.tables;
  readonly definition: TableFunction;
  /** The function also takes the lengths of board on hand. */
  readonly boardsToo?: boolean;
  /** Columns that are also written as read on a tape, beside the table. */
  readonly onTape: readonly string[];
  /** Written unless the user says otherwise. */
  readonly usual: boolean;
}

/** The tables in the order in which they are written. */
export const TABLES: readonly SheetTable[] = [
  { id: "schedule", definition: jackTable, onTape: ["Long point", "Tape", "Shortest board"], usual: true },
  { id: "members", definition: members, onTape: ["Long point", "Shortest board"], usual: false },
  { id: "marks", definition: plateMarks, onTape: ["Mark"], usual: false },
  { id: "takeoff", definition: takeOff, onTape: [], usual: false },
  { id: "sheathing", definition: sheathing, onTape: ["First piece"], usual: false },
  { id: "settings", definition: sawSettings, onTape: [], usual: false },
  { id: "pieces", definition: pieceList, onTape: ["Length"], usual: false },
  { id: "cautions", definition: cautions, onTape: [], usual: false },
  { id: "order", definition: lumberOrder, boardsToo: true, onTape: ["Board"], usual: false },
  { id: "cutting", definition: stickPlan, boardsToo: true, onTape: ["Board", "Left over"], usual: false },
];

import type { texts } from "../words/texts.ts";

/** What a column of a table holds, by its heading: how it is shown and formatted follows from it. */
export type ColumnKind = "length" | "angle" | "count" | "amount" | "text";

const KINDS: Readonly<Record<string, ColumnKind>> = {
  ...Object.fromEntries(
    [
      "Offset",
      "Plate mark",
      "Hip mark",
      "From hip head",
      "Long point",
      "Short point",
      "Tape",
      "Shortest board",
      "Line length",
      "Tail",
      "Heel",
      "Seat",
      "Notch",
      "Mark",
      "Board",
      "Left over",
      "Bay",
      "Cut off",
      "Used",
    ].map((name) => [name, "length"]),
  ),
  ...Object.fromEntries(["Saw tilt", "Plumb cut", "Edge angle", "Head cut"].map((name) => [name, "angle"])),
  ...Object.fromEntries(
    ["Left", "Right", "Plain", "Count", "Board number", "Plates", "Needed", "Times"].map((name) => [name, "count"]),
  ),
  ...Object.fromEntries(["Board feet", "Amount", "Cost"].map((name) => [name, "amount"])),
};

/** The kind of a column; what is not known is text and keeps its general format. */
export function kindOf(heading: unknown): ColumnKind {
  return (typeof heading === "string" && Object.hasOwn(KINDS, heading) && KINDS[heading]) || "text";
}

/** Number formats by kind. Lengths keep three decimals: a sixteenth is 0.0625. */
export const FORMATS: Readonly<Record<ColumnKind, string | null>> = {
  length: "0.000",
  angle: "0.00",
  count: "0",
  amount: "0.00",
  text: null,
};

/** A table that the pane can write: one call on the roof block that spills. */
export interface SheetTable {
  readonly id: keyof typeof texts.tables;
  readonly functionName: string;
  /** The function also takes the lengths of board on hand. */
  readonly boardsToo?: boolean;
  /** Columns that are also written as read on a tape, beside the table. */
  readonly onTape: readonly string[];
  /** Written unless the user says otherwise. */
  readonly usual: boolean;
}

/** The tables in the order in which they are written. */
export const TABLES: readonly SheetTable[] = [
  { id: "schedule", functionName: "JACKTABLE", onTape: ["Long point", "Tape", "Shortest board"], usual: true },
  { id: "members", functionName: "MEMBERS", onTape: ["Long point", "Shortest board"], usual: false },
  { id: "marks", functionName: "PLATEMARKS", onTape: ["Mark"], usual: false },
  { id: "takeoff", functionName: "TAKEOFF", onTape: [], usual: false },
  { id: "cautions", functionName: "CAUTIONS", onTape: [], usual: false },
  { id: "order", functionName: "LUMBERORDER", boardsToo: true, onTape: ["Board"], usual: false },
  { id: "cutting", functionName: "STICKPLAN", boardsToo: true, onTape: ["Board", "Left over"], usual: false },
];

const WIDE: Readonly<Record<string, number>> = {
  Note: 420,
  How: 480,
  Remark: 420,
  Source: 210,
  Check: 255,
  Item: 225,
  Published: 520,
  Here: 110,
  Pieces: 260,
  Member: 110,
  "Saw tilt": 110,
  Unit: 200,
  Size: 100,
  Plate: 140,
  "Shortest board": 120,
  "Board number": 104,
  Edge: 200,
  "Cut off": 92,
};
const USUAL = { length: 92, angle: 84, count: 56, amount: 92, text: 84 } as const;

/** A column's width in pixels, by its heading. */
export function widthOf(heading: unknown): number {
  return (typeof heading === "string" && Object.hasOwn(WIDE, heading) && WIDE[heading]) || USUAL[kindOf(heading)];
}

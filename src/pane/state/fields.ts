import type { BlockRow, Row } from "../../../functions/arguments/roofBlock.ts";
import { ROWS } from "../../../functions/arguments/roofBlock.ts";
import { WING_ROWS, type WingRow } from "../../../functions/arguments/wingRows.ts";

/** What is typed for one wing, by row of its column; "" where nothing is. */
export type WingInputs = Readonly<Record<WingRow, string>> & { readonly letter: string };

/** What is typed into the fields of the pane, by row of the roof block; "" where nothing is. */
export type Inputs = Readonly<Record<Row, string>> & { readonly wings: readonly WingInputs[] };

/** Where a field stands: a row of the main roof, or of a wing. */
export interface FieldPlace {
  readonly row: BlockRow;
  /** The wing's letter. */
  readonly wing?: string;
}

/** How a field is asked for: typed freely, with a short list to pick from, or as one of a few words. */
export interface Field<R extends BlockRow = BlockRow> {
  readonly row: R;
  readonly kind: "length" | "pitch" | "size" | "choice" | "text";
  /** What stands in the field when the pane is opened for the first time. */
  readonly start: string;
  /** What stands for it where it is left out, if that is not where it starts. */
  readonly usual?: string;
  /** The words to choose from, or the sizes offered beside what is typed. */
  readonly choices?: readonly string[];
  /** The fold that it stands in, by what it concerns; one that has none is always in view. */
  readonly fold?: FoldName;
}

/** What the folded fields of a roof concern, in the order in which the folds stand. */
export const FOLDS = ["ends", "hip", "plate", "ordering", "job"] as const;
/** A fold; "wing" is the one in every wing's form. */
export type FoldName = (typeof FOLDS)[number] | "wings" | "wing";

/** Lengths on hand before anybody says otherwise, long enough for the hip of an ordinary roof. */
export const START_BOARDS = { in: "8' to 24' by 2'", mm: "2.4 m to 7.2 m by 0.6 m" } as const;

const SIZES = ["2x4", "2x6", "2x8", "2x10", "2x12"];

const EAVE_SIZES = ["1x6", "1x8", "2x4", "2x6", "2x8"];

/** The fields in the order in which a roof is measured: the plan, the slope, the lumber, the setting out. */
export const FIELDS: readonly Field<Row>[] = [
  { row: "Span", kind: "length", start: "24'" },
  { row: "Length", kind: "length", start: "36'" },
  { row: "Pitch", kind: "pitch", start: "6" },
  { row: "End pitch", kind: "pitch", start: "", fold: "ends" },
  { row: "Spacing", kind: "length", start: "24" },
  { row: "Overhang", kind: "length", start: "18" },
  { row: "Rafter", kind: "size", start: "2x8", choices: SIZES },
  { row: "Hip", kind: "size", start: "2x10", choices: SIZES },
  { row: "Ridge", kind: "size", start: "2x10", choices: [...SIZES, "none"] },
  { row: "Seat", kind: "length", start: "3.5", fold: "plate" },
  { row: "Set out from", kind: "choice", start: "king common", choices: ["king common", "corner"], fold: "plate" },
  {
    row: "Ends",
    kind: "choice",
    start: "hip and hip",
    choices: ["hip and hip", "hip and gable", "gable and hip"],
    fold: "ends",
  },
  { row: "Valley", kind: "size", start: "", choices: SIZES, fold: "wings" },
  { row: "Hip top", kind: "choice", start: "dropped", choices: ["dropped", "backed", "shifted"], fold: "hip" },
  { row: "Hip head", kind: "choice", start: "king commons", choices: ["king commons", "ridge"], fold: "hip" },
  { row: "End overhang", kind: "length", start: "", fold: "ends" },
  { row: "Heel", kind: "length", start: "", fold: "plate" },
  { row: "Correction", kind: "length", start: "0", fold: "plate" },
  { row: "End correction", kind: "length", start: "0", fold: "plate" },
  { row: "Tail cut", kind: "choice", start: "plumb", choices: ["plumb", "square", "level"], fold: "plate" },
  { row: "Fascia", kind: "size", start: "", choices: [...EAVE_SIZES, "none"], fold: "plate" },
  { row: "Sub-fascia", kind: "size", start: "", choices: [...EAVE_SIZES, "none"], fold: "plate" },
  { row: "Blocking", kind: "choice", start: "none", choices: ["none", "plate", "corner", "both"], fold: "plate" },
  { row: "Boards", kind: "text", start: START_BOARDS.in, fold: "ordering" },
  { row: "End trim", kind: "length", start: "", fold: "ordering" },
  { row: "Allow crown down", kind: "choice", start: "no", choices: ["no", "yes"], fold: "ordering" },
  { row: "Waste", kind: "text", start: "10", fold: "ordering" },
  { row: "Spares", kind: "text", start: "0", fold: "ordering" },
  { row: "Unit", kind: "choice", start: "in", choices: ["in", "mm"], fold: "job" },
  { row: "Job name", kind: "text", start: "", fold: "job" },
];

/** The fields of a wing, in the order in which it is measured. */
export const WING_FIELDS: readonly Field<WingRow>[] = [
  { row: "Wall", kind: "choice", start: "front", choices: ["front", "back"] },
  { row: "From left corner", kind: "length", start: "", choices: ["flush left", "flush right"] },
  { row: "Out from wall", kind: "length", start: "" },
  { row: "Span", kind: "length", start: "" },
  { row: "Ends", kind: "choice", start: "gable", choices: ["hip", "gable"] },
  { row: "Pitch", kind: "pitch", start: "", fold: "wing" },
  { row: "End pitch", kind: "pitch", start: "", fold: "wing" },
  { row: "Overhang", kind: "length", start: "", fold: "wing" },
  { row: "End overhang", kind: "length", start: "", fold: "wing" },
  { row: "Ridge", kind: "size", start: "", choices: SIZES, fold: "wing" },
  { row: "Long valley", kind: "choice", start: "", choices: ["left", "right"], fold: "wing" },
  {
    row: "Wing framing",
    kind: "choice",
    start: "",
    usual: "framed in",
    choices: ["framed in", "laid over"],
    fold: "wing",
  },
  { row: "Sheathing", kind: "length", start: "", fold: "wing" },
];

/** Rows that a roof cannot do without. */
export const NEEDED: ReadonlySet<BlockRow> = new Set<BlockRow>(["Span", "Length", "Pitch"]);

/** Inputs with nothing in them. */
export const EMPTY_INPUTS: Inputs = {
  ...(Object.fromEntries(ROWS.map((row) => [row, ""])) as Record<Row, string>),
  wings: [],
};

/** A wing with nothing in it. */
export function emptyWing(letter: string): WingInputs {
  return { letter, ...(Object.fromEntries(WING_ROWS.map((row) => [row, ""])) as Record<WingRow, string>) };
}

/** What is typed at a place. */
export function inputAt(inputs: Inputs, { row, wing }: FieldPlace): string {
  if (wing === undefined) return inputs[row as Row] ?? "";
  return inputs.wings.find(({ letter }) => letter === wing)?.[row as WingRow] ?? "";
}

/** What the pane shows when nothing is remembered. */
export const START_INPUTS: Inputs = {
  ...EMPTY_INPUTS,
  ...Object.fromEntries(FIELDS.map(({ row, start }) => [row, start])),
};

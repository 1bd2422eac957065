import { ROWS, type BlockRow, type Row } from "../../../functions/arguments/roofBlock.ts";
import { letterIn, LETTERS, MAIN_HEADING, wingHeading } from "../../../functions/arguments/wingColumns.ts";
import { WING_ROWS, WINGS_OWN, type WingRow } from "../../../functions/arguments/wingRows.ts";
import type { Unit } from "../../measure/unit.ts";
import type { HostCell, CellLayout } from "../../hosts/host.ts";
import { plainLabel } from "../../registry/labelledBlock.ts";
import { texts } from "../words/texts.ts";
import { typedCell } from "./typedCell.ts";
import { EMPTY_INPUTS, emptyWing, FIELDS, inputAt, WING_FIELDS, type Inputs } from "./fields.ts";

/** The rows of a block that has wings, in the order in which it is written: where a wing stands comes first. */
const WINGED_ROWS: readonly BlockRow[] = [
  ...WINGS_OWN.slice(0, 3),
  ...ROWS.flatMap((row): BlockRow[] => (row === "Valley" ? [row, ...WINGS_OWN.slice(3)] : [row])),
];

/** The inputs as the rows of a roof block: what the worksheet functions read. Empty fields are left out, so that their default counts. */
export function blockRows(inputs: Inputs): string[][] {
  const { wings } = inputs;
  if (wings.length === 0)
    return ROWS.filter((row) => inputs[row].trim() !== "").map((row) => [row, inputs[row].trim()]);
  const lines = WINGED_ROWS.map((row) => [
    row,
    inputAt(inputs, { row }).trim(),
    ...wings.map(({ letter }) => inputAt(inputs, { row, wing: letter }).trim()),
  ]);
  return [
    ["", MAIN_HEADING, ...wings.map(({ letter }) => wingHeading(letter))],
    ...lines.filter(([, ...values]) => values.some((text) => text !== "")),
  ];
}

const kinds = new Map<BlockRow, string>([...WING_FIELDS, ...FIELDS].map(({ row, kind }) => [row, kind]));

/** The number format of a bare number in a row of the block, which shows what it is measured in. */
function formatOf(row: BlockRow, unit: Unit): string | undefined {
  const kind = kinds.get(row);
  const measure =
    row === "Waste" || row === "Spares"
      ? texts.units[row]
      : kind === "length"
        ? unit
        : kind === "pitch"
          ? texts.units.pitch
          : null;
  return measure === null ? undefined : `General "${measure}"`;
}

/** One value of the block as it is written; a bare number says what it is measured in. */
export function valueCell(row: BlockRow, text: string, unit: Unit): CellLayout {
  const content = typedCell(text);
  const format = typeof content === "number" && formatOf(row, unit);
  return { content, style: "input", ...(format && { format }) };
}

/** The roof block as it is written into a sheet, a column for each wing. Its unit is always said, so that what hangs on it can ask. */
export function blockLayout(inputs: Inputs, unit: Unit): (CellLayout | null)[][] {
  return blockRows({ ...inputs, Unit: unit }).map(([label, ...values]) =>
    label === ""
      ? [null, ...values.map((content): CellLayout => ({ content, style: "label" }))]
      : [
          { content: label!, style: "label" },
          ...values.map((text, i) => {
            const row = label as BlockRow;
            const takes = i === 0 ? ROWS.includes(row as Row) : WING_ROWS.includes(row as WingRow);
            return takes || text !== "" ? valueCell(row, text, unit) : null;
          }),
        ],
  );
}

const BY_LABEL = new Map(WINGED_ROWS.map((row) => [plainLabel(row), row]));

/** The row of a roof block that a label means, or null. */
export function rowOf(label: HostCell["value"]): BlockRow | null {
  if (typeof label !== "string" || label.length > 64) return null;
  return BY_LABEL.get(plainLabel(label)) ?? null;
}

/** Whether a line of cells is the headings of a block: no label, and over the values Main roof or a wing. */
export function isHeading(line: readonly HostCell[] | undefined): boolean {
  const [label, ...over] = (line ?? []).map(({ value }) => value);
  return label === "" && over.some((value) => letterIn(value) !== null || isMain(value));
}

const isMain = (value: HostCell["value"]) =>
  typeof value === "string" && value.length <= 64 && plainLabel(value) === plainLabel(MAIN_HEADING);

/** The letters of the wings in a block's cells, by the column after its labels: from its headings, else by place. Null for a column of no wing. */
export function lettersOf(cells: readonly (readonly HostCell[])[]): (string | null)[] {
  const headings = isHeading(cells[0]) ? cells[0]! : [];
  const lines = cells.filter(([label]) => label && rowOf(label.value) !== null);
  const width = Math.max(0, ...cells.map((line) => line.length)) - 2;
  return Array.from({ length: Math.max(0, width) }, (_, i) => {
    const heading = letterIn(headings[i + 2]?.value);
    if (heading !== null) return heading;
    return lines.some((line) => (line[i + 2]?.value ?? "") !== "") ? (LETTERS[i] ?? null) : null;
  });
}

/** A roof block's cells as inputs; rows it does not have stay empty. */
export function inputsOf(cells: readonly (readonly HostCell[])[]): Inputs {
  const inputs: Record<Row, string> = { ...EMPTY_INPUTS };
  const letters = lettersOf(cells);
  const wings = new Map<string, { letter: string } & Record<WingRow, string>>(
    letters.flatMap((letter) => (letter === null ? [] : [[letter, { ...emptyWing(letter) }] as const])),
  );
  for (const [label, value, ...more] of cells) {
    const row = label && rowOf(label.value);
    if (!row) continue;
    if (ROWS.includes(row as Row)) inputs[row as Row] = String(value?.value ?? "");
    letters.forEach((letter, i) => {
      // A 0 in a wing's column is an empty cell.
      const text = String(more[i]?.value || "");
      if (letter !== null && WING_ROWS.includes(row as WingRow)) wings.get(letter)![row as WingRow] = text;
    });
  }
  return { ...inputs, wings: [...wings.values()] };
}

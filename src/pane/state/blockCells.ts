import { ROWS, type Row } from "../../../functions/arguments/roofBlock.ts";
import type { Unit } from "../../measure/unit.ts";
import type { HostCell, CellLayout } from "../../hosts/host.ts";
import { plainLabel } from "../../registry/labelledBlock.ts";
import { texts } from "../words/texts.ts";
import { typedCell } from "./typedCell.ts";
import { EMPTY_INPUTS, FIELDS, type Inputs } from "./fields.ts";

/** The inputs as the rows of a roof block: what the worksheet functions read. Empty fields are left out, so that their default counts. */
export function blockRows(inputs: Inputs): [Row, string][] {
  return ROWS.filter((row) => inputs[row].trim() !== "").map((row) => [row, inputs[row].trim()]);
}

const kinds = new Map(FIELDS.map(({ row, kind }) => [row, kind]));

/** The number format of a bare number in a row of the block, which shows what it is measured in. */
function formatOf(row: Row, unit: Unit): string | undefined {
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
export function valueCell(row: Row, text: string, unit: Unit): CellLayout {
  const content = typedCell(text);
  const format = typeof content === "number" && formatOf(row, unit);
  return { content, style: "input", ...(format && { format }) };
}

/** The roof block as it is written into a sheet. Its unit is always said, so that what hangs on it can ask. */
export function blockLayout(inputs: Inputs, unit: Unit): [CellLayout, CellLayout][] {
  return blockRows({ ...inputs, Unit: unit }).map(([row, text]) => [
    { content: row, style: "label" },
    valueCell(row, text, unit),
  ]);
}

/** The row of a roof block that a label means, or null. */
export function rowOf(label: HostCell["value"]): Row | null {
  if (typeof label !== "string" || label.length > 64) return null;
  const plain = plainLabel(label);
  return ROWS.find((row) => plainLabel(row) === plain) ?? null;
}

/** A roof block's cells (two columns) as inputs; rows it does not have stay empty. */
export function inputsOf(cells: readonly (readonly HostCell[])[]): Inputs {
  const inputs: Record<Row, string> = { ...EMPTY_INPUTS };
  for (const [label, value] of cells) {
    const row = label && rowOf(label.value);
    if (row) inputs[row] = String(value?.value ?? "");
  }
  return inputs;
}

import type { Row } from "../../../functions/arguments/roofBlock.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Area, BlockLayout, HostCell } from "../../hosts/host.ts";
import { address } from "../../hosts/address.ts";
import { valueCell } from "../state/blockCells.ts";
import { differing, labels } from "../state/sheetBlock.ts";
import type { Inputs } from "../state/fields.ts";
import { inputsOf } from "../state/blockCells.ts";

/** What has to change in a block of the sheet so that it says what the pane says. */
export interface UpdateLayout {
  readonly blocks: readonly BlockLayout[];
  /** For people: "Bid!B5: 24' becomes 26'". */
  readonly changes: readonly {
    readonly at: string;
    readonly from: string;
    readonly to: string;
    readonly formula: boolean;
  }[];
  /** Rows that the block does not have and the pane fills. */
  readonly lacking: readonly Row[];
}

/** Only the cells that differ are written; the rest of the block is left as it is. */
export function layoutUpdate(
  area: Area,
  cells: readonly (readonly HostCell[])[],
  inputs: Inputs,
  unit: Unit,
): UpdateLayout {
  const there = labels(cells);
  const rows = differing(inputs, inputsOf(cells));
  const known = rows.filter((row) => there.has(row));
  const at = (row: Row) => area.row + there.get(row)!;
  return {
    blocks: known.map((row) => ({
      sheet: area.sheet,
      row: at(row),
      column: area.column + 1,
      cells: [[valueCell(row, inputs[row], unit)]],
    })),
    changes: known.map((row) => {
      const { value, formula } = cells[there.get(row)!]![1]!;
      return {
        at: address(area.sheet, at(row), area.column + 1),
        from: formula ?? String(value),
        to: inputs[row].trim(),
        formula: formula !== null,
      };
    }),
    lacking: rows.filter((row) => !there.has(row)),
  };
}

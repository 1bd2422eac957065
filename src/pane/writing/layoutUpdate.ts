import type { Row } from "../../../functions/arguments/roofBlock.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Area, BlockLayout, CellLayout, HostCell } from "../../hosts/host.ts";
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
  /** Rows that the block does not have, the pane fills, and there is no room for below it. */
  readonly lacking: readonly Row[];
}

/**
 * Only the cells that differ are written; the rest of the block is left as it is. Rows that it lacks go below it where lines are empty.
 *
 * @param below the block's cells, with those of the lines below it that were looked at.
 */
export function layoutUpdate(
  area: Area,
  below: readonly (readonly HostCell[])[],
  inputs: Inputs,
  unit: Unit,
): UpdateLayout {
  const cells = below.slice(0, area.rows);
  const there = labels(cells);
  const rows = differing(inputs, inputsOf(cells));
  const known = rows.filter((row) => there.has(row));
  const lacking = rows.filter((row) => !there.has(row));
  const added = lacking.length <= emptyLines(below.slice(area.rows)) ? lacking : [];
  const at = (row: Row) => area.row + there.get(row)!;
  const value = (row: Row) => valueCell(row, inputs[row], unit);
  return {
    blocks: [
      ...known.map((row) => ({ sheet: area.sheet, row: at(row), column: area.column + 1, cells: [[value(row)]] })),
      ...(added.length > 0
        ? [
            {
              sheet: area.sheet,
              row: area.row + area.rows,
              column: area.column,
              cells: added.map((row): CellLayout[] => [{ content: row, style: "label" }, value(row)]),
            },
          ]
        : []),
    ],
    changes: [
      ...known.map((row) => {
        const { value: now, formula } = cells[there.get(row)!]![1]!;
        return {
          at: address(area.sheet, at(row), area.column + 1),
          from: formula ?? String(now),
          to: inputs[row].trim(),
          formula: formula !== null,
        };
      }),
      ...added.map((row, i) => ({
        at: address(area.sheet, area.row + area.rows + i, area.column),
        from: "",
        to: `${row}, ${inputs[row].trim()}`,
        formula: false,
      })),
    ],
    lacking: added.length > 0 ? [] : lacking,
  };
}

function emptyLines(cells: readonly (readonly HostCell[])[]): number {
  const filled = cells.findIndex((line) => line.some(({ value, formula }) => value !== "" || formula !== null));
  return filled < 0 ? cells.length : filled;
}

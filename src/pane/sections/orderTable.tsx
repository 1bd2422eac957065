import { lengthText } from "../../measure/lengthText.ts";
import type { Unit } from "../../measure/unit.ts";
import type { OrderLine } from "../state/orderNow.ts";
import { TableView } from "../controls/tableView.tsx";
import { texts } from "../words/texts.ts";

/** The boards to buy, by size and length. */
export function OrderTable({ lines, unit }: { lines: readonly OrderLine[]; unit: Unit }) {
  const rows = lines.map(({ size, board, count, waste, leftOver }) => [
    `${size}, ${lengthText(board, unit)}`,
    String(count),
    waste === 0 ? "" : String(waste),
    lengthText(leftOver, unit),
  ]);
  return (
    <TableView
      name={texts.tables.order}
      headings={texts.orderColumns}
      rows={rows}
      numbers={[false, true, true, true]}
    />
  );
}

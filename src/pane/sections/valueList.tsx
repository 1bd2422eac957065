import { useComputed } from "@preact/signals";
import type { BlockRow } from "../../../functions/arguments/roofBlock.ts";
import { FIELDS, inputAt, WING_FIELDS } from "../state/fields.ts";
import type { RoofState } from "../state/paneState.ts";
import { columnReport } from "../state/report.ts";
import { texts } from "../words/texts.ts";

/** What the roof is made from, in words: on paper, and where nothing is typed. */
export function ValueList({ state }: { state: RoofState }) {
  const wings = useComputed(() => state.inputs.value.wings).value;
  return (
    <dl class="lp-values">
      {FIELDS.map(({ row }) => (
        <Value key={row} state={state} row={row} />
      ))}
      {wings.map(({ letter }) =>
        WING_FIELDS.map(({ row }) => <Value key={`${letter} ${row}`} state={state} row={row} wing={letter} />),
      )}
    </dl>
  );
}

/** A row that is left out is left out here, too. */
function Value({ state: { inputs, report }, row, wing }: { state: RoofState; row: BlockRow; wing?: string }) {
  const words = useComputed(() => {
    const typed = inputAt(inputs.value, wing === undefined ? { row } : { row, wing }).trim();
    return typed && (columnReport(report.value, wing).understood[row] || (texts.choices[typed] ?? typed));
  }).value;
  if (words === "") return null;
  return (
    <div>
      <dt>{texts.place(row, wing)}</dt>
      <dd>{words}</dd>
    </div>
  );
}

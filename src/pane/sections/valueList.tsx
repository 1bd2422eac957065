import { FIELDS, inputAt, WING_FIELDS, type Field, type FieldPlace } from "../state/fields.ts";
import type { RoofState } from "../state/paneState.ts";
import { columnReport } from "../state/report.ts";
import { texts } from "../words/texts.ts";

/** What the roof is made from, in words: on paper, and where nothing is typed. */
export function ValueList({ state }: { state: RoofState }) {
  const { wings } = state.inputs.value;
  return (
    <dl class="lp-values">
      {FIELDS.map((field) => said(state, field, { row: field.row }))}
      {wings.map(({ letter }) => WING_FIELDS.map((field) => said(state, field, { row: field.row, wing: letter })))}
    </dl>
  );
}

/** A row that is left out is left out here, too. */
function said({ inputs, report }: RoofState, { row }: Field, place: FieldPlace) {
  const typed = inputAt(inputs.value, place).trim();
  if (typed === "") return null;
  const { understood } = columnReport(report.value, place.wing);
  return (
    <div key={`${place.wing} ${row}`}>
      <dt>{texts.place(row, place.wing)}</dt>
      <dd>{understood[place.row] || (texts.choices[typed] ?? typed)}</dd>
    </div>
  );
}

import { WING_NEEDED } from "../../../functions/arguments/wingRows.ts";
import { inputAt, NEEDED, type Field, type FieldPlace } from "../state/fields.ts";
import type { PaneState } from "../state/paneState.ts";
import { setInput } from "../state/paneState.ts";
import { columnReport } from "../state/report.ts";
import { changeUnit } from "../state/changeUnit.ts";
import { texts } from "../words/texts.ts";

/** The id of the element that a row is typed into, so that a message can lead there. */
export function fieldId({ row, wing }: FieldPlace): string {
  return `lp-${wing === undefined ? "" : `${wing.toLowerCase()}-`}${row.toLowerCase().replaceAll(" ", "-")}`;
}

/** Why what is typed at a place cannot be used. */
export function messageAt({ report }: PaneState, { row, wing }: FieldPlace): string | undefined {
  return columnReport(report.value, wing).messages[row];
}

/** One field, a cell to type into: over it its name and how it was understood. What is wrong with it stands under its group. */
export function FieldView({ state, field, wing }: { state: PaneState; field: Field; wing?: string }) {
  const { row } = field;
  const { inHand, help } = state.looking;
  const place = wing === undefined ? { row } : { row, wing };
  const id = fieldId(place);
  const value = inputAt(state.inputs.value, place);
  const { messages, understood } = columnReport(state.report.value, wing);
  const wrong = messages[row] !== undefined;
  const words = understood[row];
  return (
    <div
      class="lp-field"
      data-row={row}
      data-wing={wing}
      data-wrong={wrong}
      onFocusIn={() => (inHand.value = place)}
      onKeyDown={(event) => {
        if (event.key !== "F1") return;
        event.preventDefault();
        help.value = !help.value;
      }}
    >
      <label for={id}>{row}</label>
      <span class="lp-understood" id={`${id}-read`}>
        {!wrong && words ? (value.trim() === "" ? texts.empty(words) : words) : ""}
      </span>
      <span class="lp-entry">
        <Entry state={state} field={field} place={place} id={id} wrong={wrong} />
      </span>
    </div>
  );
}

interface EntryProps {
  state: PaneState;
  field: Field;
  place: FieldPlace;
  id: string;
  wrong: boolean;
}

function Entry({ state, field: { row, kind, choices }, place, id, wrong }: EntryProps) {
  const value = inputAt(state.inputs.value, place);
  const type = (text: string) => setInput(state, row, text, place.wing);
  const described = wrong ? `${id}-wrong` : `${id}-read`;
  if (kind === "choice" && choices) {
    // A block in the sheet may leave the row out, or hold a word that is none of these: both show as they are.
    const known = choices.some((one) => one === value.trim().toLowerCase());
    const change = (text: string) => (row === "Unit" ? changeUnit(state, text) : type(text));
    return (
      <select
        id={id}
        value={known ? value.trim().toLowerCase() : value}
        aria-describedby={described}
        aria-invalid={wrong}
        onChange={(event) => change(event.currentTarget.value)}
      >
        {!known && <option value={value}>{value === "" ? texts.usual : value}</option>}
        {choices.map((one) => (
          <option key={one} value={one}>
            {texts.choices[one] ?? one}
          </option>
        ))}
      </select>
    );
  }
  return (
    <>
      <input
        id={id}
        type="text"
        value={value}
        autocomplete="off"
        spellcheck={false}
        maxLength={500}
        required={place.wing === undefined ? NEEDED.has(row) : WING_NEEDED.some((one) => one === row)}
        list={choices ? `${id}-list` : undefined}
        aria-describedby={described}
        aria-invalid={wrong}
        onInput={(event) => type(event.currentTarget.value)}
      />
      {choices && (
        <datalist id={`${id}-list`}>
          {choices.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
    </>
  );
}

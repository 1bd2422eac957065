import { useComputed } from "@preact/signals";
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
  const { inHand, lit, help } = state.looking;
  const place = wing === undefined ? { row } : { row, wing };
  const id = fieldId(place);
  // Texts, each by itself: a keystroke draws those fields anew whose own have changed.
  const value = useComputed(() => inputAt(state.inputs.value, place)).value;
  const wrong = useComputed(() => messageAt(state, place) !== undefined).value;
  const read = useComputed(() => columnReport(state.report.value, wing).understood[row] ?? "").value;
  const follows = useComputed(() => row === "Heel" || (row === "Seat" && state.inputs.value.Heel.trim() !== "")).value;
  return (
    <div
      class="lp-field"
      data-row={row}
      data-wing={wing}
      data-wrong={wrong}
      onFocusIn={() => (inHand.value = lit.value = place)}
      onFocusOut={() => (lit.value = null)}
      onKeyDown={(event) => {
        if (event.key !== "F1") return;
        event.preventDefault();
        help.value = !help.value;
      }}
    >
      <label for={id}>{row}</label>
      <span class="lp-understood" id={`${id}-read`}>
        {wrong || read === "" || (field.kind === "choice" && value === "")
          ? ""
          : value.trim() !== ""
            ? read
            : wing === undefined && follows
              ? texts.follows(read)
              : texts.empty(read)}
      </span>
      <span class="lp-entry">
        <Entry state={state} field={field} place={place} id={id} value={value} wrong={wrong} read={read} />
      </span>
    </div>
  );
}

interface EntryProps {
  state: PaneState;
  field: Field;
  place: FieldPlace;
  id: string;
  value: string;
  wrong: boolean;
  /** How it was understood. */
  read: string;
}

function Entry({ state, field, place, id, value, wrong, read }: EntryProps) {
  const { row, kind, choices } = field;
  const type = (text: string) => setInput(state, row, text, place.wing);
  const described = wrong ? `${id}-wrong` : `${id}-read`;
  if (kind === "choice" && choices) {
    // A block in the sheet may leave the row out, which shows the word that stands for it, or hold a word that is none of these.
    // What stands for it may follow from the roof, as the longer valley does.
    const usual = place.wing === undefined ? field.start : (field.usual ?? read);
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
        {!known && <option value={value}>{value === "" ? texts.usual(texts.choices[usual] ?? usual) : value}</option>}
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

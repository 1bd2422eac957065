import { useSignal } from "@preact/signals";
import type { Field } from "../state/fields.ts";
import { NEEDED } from "../state/fields.ts";
import { helpDrawing } from "./helpDrawing.ts";
import { Wrong } from "./textEntry.tsx";
import type { PaneState } from "../state/paneState.ts";
import { setInput } from "../state/paneState.ts";
import { changeUnit } from "../state/changeUnit.ts";
import { texts } from "../words/texts.ts";

/** The id of the element that a row is typed into, so that a message can lead there. */
export function fieldId({ row }: Pick<Field, "row">): string {
  return `lp-${row.toLowerCase().replaceAll(" ", "-")}`;
}

/** One field: label, what is typed, how it was understood or why not, and on request where it is measured. */
export function FieldView({ state, field }: { state: PaneState; field: Field }) {
  const { row } = field;
  const open = useSignal(false);
  const id = fieldId(field);
  const value = state.inputs.value[row];
  const { messages, understood } = state.report.value;
  const message = messages[row];
  const words = understood[row];
  return (
    <div class="lp-field" data-row={row}>
      <label for={id}>{row}</label>
      <Entry state={state} field={field} id={id} wrong={message !== undefined} />
      <button
        type="button"
        class="lp-what"
        aria-label={texts.helpFor(row)}
        aria-expanded={open.value}
        aria-controls={`${id}-help`}
        onClick={() => (open.value = !open.value)}
      >
        ?
      </button>
      <span class="lp-understood" id={`${id}-read`}>
        {message === undefined && words ? (value.trim() === "" ? texts.empty(words) : words) : ""}
      </span>
      <Wrong id={`${id}-wrong`} words={message ?? ""} />
      <div class="lp-helpbox" id={`${id}-help`} hidden={!open.value}>
        <Help field={field} />
      </div>
    </div>
  );
}

function Help({ field }: { field: Field }) {
  const drawing = helpDrawing(field.row);
  return (
    <>
      {drawing && <span dangerouslySetInnerHTML={{ __html: drawing }} />}
      <p>{texts.help[field.row]}</p>
    </>
  );
}

interface EntryProps {
  state: PaneState;
  field: Field;
  id: string;
  wrong: boolean;
}

function Entry({ state, field: { row, kind, choices }, id, wrong }: EntryProps) {
  const value = state.inputs.value[row];
  const described = wrong ? `${id}-wrong` : `${id}-read`;
  if (kind === "choice" && choices) {
    // A block in the sheet may leave the row out, or hold a word that is none of these: both show as they are.
    const known = choices.some((one) => one === value.trim().toLowerCase());
    const change = (text: string) => (row === "Unit" ? changeUnit(state, text) : setInput(state, row, text));
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
        required={NEEDED.has(row)}
        list={choices ? `${id}-list` : undefined}
        aria-describedby={described}
        aria-invalid={wrong}
        onInput={(event) => setInput(state, row, event.currentTarget.value)}
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

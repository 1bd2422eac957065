import { useSignal } from "@preact/signals";
import type { BlockRow, Row } from "../../../functions/arguments/roofBlock.ts";
import { WING_NEEDED, type WingRow } from "../../../functions/arguments/wingRows.ts";
import { inputAt, NEEDED, type Field, type FieldPlace } from "../state/fields.ts";
import { helpDrawing } from "./helpDrawing.ts";
import { Wrong } from "./textEntry.tsx";
import type { PaneState } from "../state/paneState.ts";
import { setInput } from "../state/paneState.ts";
import { changeUnit } from "../state/changeUnit.ts";
import { texts } from "../words/texts.ts";

/** The id of the element that a row is typed into, so that a message can lead there. */
export function fieldId({ row, wing }: FieldPlace): string {
  return `lp-${wing === undefined ? "" : `${wing.toLowerCase()}-`}${row.toLowerCase().replaceAll(" ", "-")}`;
}

/** One field: label, what is typed, how it was understood or why not, and on request where it is measured. */
export function FieldView({ state, field, wing }: { state: PaneState; field: Field; wing?: string }) {
  const { row } = field;
  const open = useSignal(false);
  const place = wing === undefined ? { row } : { row, wing };
  const id = fieldId(place);
  const value = inputAt(state.inputs.value, place);
  const report = state.report.value;
  const column: { messages: Partial<Record<BlockRow, string>>; understood: Partial<Record<BlockRow, string>> } =
    (wing === undefined ? report : report.wings[wing]) ?? { messages: {}, understood: {} };
  const message = column.messages[row];
  const words = column.understood[row];
  return (
    <div class="lp-field" data-row={row} data-wing={wing}>
      <label for={id}>{row}</label>
      <Entry state={state} field={field} place={place} id={id} wrong={message !== undefined} />
      <button
        type="button"
        class="lp-what"
        aria-label={texts.helpFor(texts.place(row, wing))}
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
        <Help row={row} wing={wing} />
      </div>
    </div>
  );
}

function Help({ row, wing }: { row: BlockRow; wing: string | undefined }) {
  const drawing = wing === undefined ? helpDrawing(row) : null;
  return (
    <>
      {drawing && <span dangerouslySetInnerHTML={{ __html: drawing }} />}
      <p>{wing === undefined ? texts.help[row as Row] : texts.helpInWing[row as WingRow]}</p>
    </>
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

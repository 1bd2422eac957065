import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { FieldView, fieldId } from "../controls/fieldView.tsx";
import { WING_FIELDS } from "../state/fields.ts";
import type { PaneState } from "../state/paneState.ts";
import { addWing, nextLetter, removeWing } from "../state/wings.ts";
import { texts } from "../words/texts.ts";

const FIRST = WING_FIELDS.filter(({ more }) => !more);
const MORE = WING_FIELDS.filter(({ more }) => more);

/** The wings of the roof: a small form for each, and the buttons that add and remove one. */
export function WingSection({ state }: { state: PaneState }) {
  const { wings } = state.inputs.value;
  const add = useRef<HTMLButtonElement>(null);
  const added = useSignal<string | null>(null);
  // The new form is there once the pane is drawn again.
  useEffect(() => {
    if (added.value !== null) document.getElementById(fieldId({ row: "Wall", wing: added.value }))?.focus();
    added.value = null;
  }, [added.value]);
  return (
    <div role="group" aria-labelledby="lp-wings" class="lp-wings">
      <h3 id="lp-wings">{texts.wings}</h3>
      {wings.map(({ letter }) => (
        <WingForm
          key={letter}
          state={state}
          letter={letter}
          remove={() => {
            removeWing(state, letter);
            add.current?.focus();
          }}
        />
      ))}
      <button
        type="button"
        class="lp-quiet"
        ref={add}
        disabled={nextLetter(wings) === null}
        onClick={() => (added.value = addWing(state))}
      >
        {texts.addWing}
      </button>
    </div>
  );
}

function WingForm({ state, letter, remove }: { state: PaneState; letter: string; remove: () => void }) {
  const open = useSignal(false);
  const messages = state.report.value.wings[letter]?.messages ?? {};
  const faultInMore = MORE.some(({ row }) => messages[row] !== undefined);
  return (
    <fieldset>
      <legend>{texts.wing(letter)}</legend>
      {FIRST.map((field) => (
        <FieldView key={field.row} state={state} field={field} wing={letter} />
      ))}
      <details open={open.value || faultInMore} onToggle={(event) => (open.value = event.currentTarget.open)}>
        <summary>{texts.moreOfWing(letter)}</summary>
        {MORE.map((field) => (
          <FieldView key={field.row} state={state} field={field} wing={letter} />
        ))}
      </details>
      <button type="button" class="lp-quiet" onClick={remove}>
        {texts.removeWing(letter)}
      </button>
    </fieldset>
  );
}

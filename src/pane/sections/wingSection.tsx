import { useComputed, useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { fieldId } from "../controls/fieldView.tsx";
import { WING_FIELDS } from "../state/fields.ts";
import { fieldsIn, foldWords } from "../state/foldWords.ts";
import type { PaneState } from "../state/paneState.ts";
import { addWing, nextLetter, removeWing } from "../state/wings.ts";
import { lookTexts } from "../words/lookTexts.ts";
import { FieldFold, FieldGroup, FoldWords } from "./fieldGroup.tsx";
import { texts } from "../words/texts.ts";

const FIRST = WING_FIELDS.filter(({ fold }) => !fold);

/** The wings of the roof: a small form for each, and the buttons that add and remove one. */
export function WingSection({ state }: { state: PaneState }) {
  const wings = useComputed(() => state.inputs.value.wings).value;
  const hasValley = useComputed(() => {
    const { wings, Valley: valley } = state.inputs.value;
    return wings.length > 0 || valley !== "";
  }).value;
  const said = () => [
    ...wings.map(({ letter, Wall: wall, Span: span, "Out from wall": out }) => ({
      words: lookTexts.oneWing(letter, wall, span, out),
      own: true,
    })),
    ...(wings.length === 0 ? [{ words: lookTexts.noWings, own: false }] : []),
    ...foldWords("wings", state.inputs.value, state.report.value),
  ];
  const add = useRef<HTMLButtonElement>(null);
  const added = useSignal<string | null>(null);
  // The new form is there once the pane is drawn again.
  useEffect(() => {
    if (added.value !== null) document.getElementById(fieldId({ row: "Wall", wing: added.value }))?.focus();
    added.value = null;
  }, [added.value]);
  const valley = fieldsIn("wings");
  return (
    <div role="group" aria-labelledby="lp-wings" class="lp-wings">
      <div class="lp-fold">
        <h3 id="lp-wings">{lookTexts.folds.wings}</h3>
        <FoldWords said={said} />
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
      {wings.map(({ letter }) => (
        <fieldset key={letter}>
          <legend>{texts.wing(letter)}</legend>
          <FieldGroup state={state} rows={[FIRST]} wing={letter} />
          <FieldFold state={state} fold="wing" wing={letter} />
          <button
            type="button"
            class="lp-quiet"
            onClick={() => {
              removeWing(state, letter);
              add.current?.focus();
            }}
          >
            {texts.removeWing(letter)}
          </button>
        </fieldset>
      ))}
      {/* A block in the sheet may hold one for wings that are no more. */}
      {hasValley && <FieldGroup state={state} rows={[valley]} />}
    </div>
  );
}

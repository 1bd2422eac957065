import { useSignal } from "@preact/signals";
import { FIELDS, START_INPUTS } from "../state/fields.ts";
import { FieldView } from "../controls/fieldView.tsx";
import { useBlock } from "../state/syncWithSheet.ts";
import { updateBlock } from "../writing/updateBlock.ts";
import type { PaneState } from "../state/paneState.ts";
import { areaText } from "../state/reference.ts";
import { differing } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { WingSection } from "./wingSection.tsx";

const FIRST = FIELDS.filter(({ more }) => !more);
const MORE = FIELDS.filter(({ more }) => more);

/** What the roof is made from, and the block in the sheet that it follows. */
export function RoofSection({ state }: { state: PaneState }) {
  const { general, messages } = state.report.value;
  const open = useSignal(false);
  const faultInMore = MORE.some(({ row }) => messages[row] !== undefined);
  return (
    <section aria-labelledby="lp-roof">
      <h2 id="lp-roof">{texts.sections.roof}</h2>
      <BlockLine state={state} />
      {FIRST.map((field) => (
        <FieldView key={field.row} state={state} field={field} />
      ))}
      <details open={open.value || faultInMore} onToggle={(event) => (open.value = event.currentTarget.open)}>
        <summary>{texts.more}</summary>
        {MORE.map((field) => (
          <FieldView key={field.row} state={state} field={field} />
        ))}
        <button type="button" class="lp-quiet" onClick={() => (state.inputs.value = START_INPUTS)}>
          {texts.startAgain}
        </button>
      </details>
      <WingSection state={state} />
      {general && <p class="lp-wrong">{general}</p>}
    </section>
  );
}

/** The block that is followed, or one that could be. */
function BlockLine({ state }: { state: PaneState }) {
  const link = state.link.value;
  const offer = state.offer.value;
  const other = offer && (!link || areaText(offer.area) !== areaText(link.area)) ? offer : null;
  const places = link ? differing(state.inputs.value, link.inputs) : [];
  return (
    <>
      {link && (
        <div class="lp-line">
          <p>{texts.linked(areaText(link.area))}</p>
          <button type="button" class="lp-quiet" onClick={() => (state.link.value = null)}>
            {texts.unlink}
          </button>
        </div>
      )}
      {link && places.length > 0 && (
        <div class="lp-line">
          <p>{texts.differs(places.map(({ row, wing }) => texts.place(row, wing)))}</p>
          <button type="button" onClick={() => void updateBlock(state)}>
            {texts.update}
          </button>
          <button type="button" class="lp-quiet" onClick={() => useBlock(state, link)}>
            {texts.reread}
          </button>
        </div>
      )}
      {other && (
        <div class="lp-line">
          <p>{texts.foundBlock(areaText(other.area))}</p>
          <button type="button" onClick={() => useBlock(state, other)}>
            {texts.useBlock}
          </button>
        </div>
      )}
    </>
  );
}

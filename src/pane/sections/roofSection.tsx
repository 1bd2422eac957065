import { useComputed } from "@preact/signals";
import type { Row } from "../../../functions/arguments/roofBlock.ts";
import { FIELDS, FOLDS, START_INPUTS } from "../state/fields.ts";
import { FieldFold, FieldGroup } from "./fieldGroup.tsx";
import { useBlock } from "../state/syncWithSheet.ts";
import type { PaneState } from "../state/paneState.ts";
import { areaText } from "../state/reference.ts";
import { differing } from "../state/sheetBlock.ts";
import { texts } from "../words/texts.ts";
import { updateBlock } from "../writing/updateBlock.ts";
import { WingSection } from "./wingSection.tsx";

/** Always in view, in the order in which a roof is measured: the plan, the slope, the setting out, the lumber. */
const FIRST: readonly (readonly Row[])[] = [
  ["Span", "Length", "Pitch"],
  ["Overhang", "Spacing"],
  ["Rafter", "Hip", "Ridge"],
];
const FIRST_FIELDS = FIRST.map((rows) => rows.map((row) => FIELDS.find((field) => field.row === row)!));

/** What the roof is made from, and the block in the sheet that it follows. */
export function RoofSection({ state }: { state: PaneState }) {
  const general = useComputed(() => state.report.value.general).value;
  return (
    <section aria-labelledby="lp-roof">
      <h2 id="lp-roof" class="lp-hidden">
        {texts.sections.roof}
      </h2>
      <BlockLine state={state} />
      <FieldGroup state={state} rows={FIRST_FIELDS} />
      <DifferLine state={state} />
      {general && <p class="lp-wrong">{general}</p>}
      {FOLDS.map((fold) => (
        <FieldFold key={fold} state={state} fold={fold}>
          {fold === "job" && (
            <button type="button" class="lp-quiet" onClick={() => (state.inputs.value = START_INPUTS)}>
              {texts.startAgain}
            </button>
          )}
        </FieldFold>
      ))}
      <WingSection state={state} />
    </section>
  );
}

/** The block that is followed, or one that could be. */
function BlockLine({ state }: { state: PaneState }) {
  const link = state.link.value;
  const offer = state.offer.value;
  const other = offer && (!link || areaText(offer.area) !== areaText(link.area)) ? offer : null;
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
      {other && (
        <div class="lp-line">
          <p>{texts.foundBlock(areaText(other.area))}</p>
          <button type="button" onClick={() => void useBlock(state, other)}>
            {texts.useBlock}
          </button>
        </div>
      )}
    </>
  );
}

/** What is typed and not yet in the block that is followed. Under the fields, so that none moves while it is typed into. */
function DifferLine({ state }: { state: PaneState }) {
  const link = state.link.value;
  const places = link ? differing(state.inputs.value, link.inputs) : [];
  if (!link || places.length === 0) return null;
  return (
    <div class="lp-line lp-stack">
      <p>{texts.differs(places.map(({ row, wing }) => texts.place(row, wing)))}</p>
      <button type="button" onClick={() => void updateBlock(state)}>
        {texts.update}
      </button>
      <button type="button" class="lp-quiet" onClick={() => void useBlock(state, link)}>
        {texts.reread}
      </button>
    </div>
  );
}

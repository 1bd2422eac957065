import { checkCuts, differences, type Cut, type Differences } from "../writing/checkCuts.ts";
import { insert } from "../writing/insert.ts";
import { setInput, type PaneState } from "../state/paneState.ts";
import { layoutCheck } from "../writing/layoutCheck.ts";
import { SalvageForm } from "./salvageForm.tsx";
import { TableView } from "../controls/tableView.tsx";
import { texts } from "../state/texts.ts";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { lengthText } from "../../measure/lengthText.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Row } from "../../../functions/arguments/roofBlock.ts";

/** What was measured on site against what is computed, and what a wrongly cut jack can still become. */
export function CheckSection({ state }: { state: PaneState }) {
  const { model, unit } = state.report.value;
  const now = state.schedule.value;
  if (!model || !now) return <p class="lp-note">{texts.notYet}</p>;
  const { cuts, wrong } = checkCuts(model, state.measured.value);
  const byMark = new Map(cuts.map((cut) => [cut.piece.mark, cut]));
  const jacks = model.pieces.filter(({ member }) => member === "jack");
  const rows = jacks.map(({ mark, tape }) => [
    mark,
    <Measured state={state} mark={mark} wrong={wrong[mark]} />,
    byMark.has(mark) ? texts.offBy(signed(byMark.get(mark)!.off, unit)) : "",
    lengthText(tape!, unit),
    byMark.has(mark) ? lengthText(byMark.get(mark)!.longPoint, unit) : "",
  ]);
  return (
    <>
      <p class="lp-note">{texts.checkLead}</p>
      <TableView
        name={texts.sections.check}
        headings={texts.checkColumns}
        rows={rows}
        numbers={[false, false, false, true, true]}
      />
      {Object.entries(wrong).map(([mark, why]) => (
        <p key={mark} id={`lp-tape-${mark}-wrong`} class="lp-wrong">
          {why}
        </p>
      ))}
      <div aria-live="polite">
        {differences(cuts, unit).map((found) => (
          <Found key={found.side} state={state} found={found} unit={unit} />
        ))}
      </div>
      {cuts.length > 0 && (
        <div class="lp-buttons">
          <button type="button" onClick={() => void insert(state, checkTable(cuts, now))}>
            {texts.writeCheck}
          </button>
          <button type="button" class="lp-quiet" onClick={() => (state.measured.value = {})}>
            {texts.clearMeasured}
          </button>
        </div>
      )}
      <SalvageForm state={state} />
    </>
  );
}

const checkTable = (cuts: readonly Cut[], now: Parameters<typeof layoutCheck>[2]["now"]) => ({
  title: texts.sections.check,
  sheet: texts.checkSheet,
  plan: (place: Parameters<typeof layoutCheck>[0], on: Parameters<typeof layoutCheck>[1]) =>
    layoutCheck(place, on, { cuts, now }),
});

/** A difference with its sign, on the tape. */
function signed(value: number, unit: Unit): string {
  const text = lengthText(value, unit);
  return value > 0 && !/^0/.test(text) ? `+${text}` : text;
}

function Measured({ state, mark, wrong }: { state: PaneState; mark: string; wrong: string | undefined }) {
  return (
    <input
      type="text"
      autocomplete="off"
      maxLength={100}
      aria-label={texts.tapeMeasured(mark)}
      aria-invalid={wrong !== undefined}
      aria-describedby={wrong === undefined ? undefined : `lp-tape-${mark}-wrong`}
      value={state.measured.value[mark] ?? ""}
      onInput={(event) => (state.measured.value = { ...state.measured.value, [mark]: event.currentTarget.value })}
    />
  );
}

/** What the differences of one side come to, and the correction that follows. */
function Found({ state, found, unit }: { state: PaneState; found: Differences; unit: Unit }) {
  const { spec } = state.report.value.model!.frame;
  const rows: readonly Row[] =
    found.side === "Both"
      ? ["Correction", "End correction"]
      : found.side === "Main"
        ? ["Correction"]
        : ["End correction"];
  const length = (value: number) => nonBreaking(signed(value, unit));
  const sum = (found.side === "End" ? spec.endCorrection : spec.correction) + found.median;
  const { side, count, median, mean, least, most, grows, standsOut } = found;
  return (
    <div class="lp-found">
      <p>
        {texts.differ({
          side,
          count,
          median: length(median),
          mean: length(mean),
          least: length(least),
          most: length(most),
        })}
      </p>
      {grows && <p>{texts.grows(length(grows.by), nonBreaking(lengthText(grows.over, unit)))}</p>}
      {standsOut && (
        <p>{texts.standsOut(standsOut.mark, length(standsOut.by), nonBreaking(lengthText(standsOut.others, unit)))}</p>
      )}
      <button
        type="button"
        onClick={() => {
          for (const row of rows) setInput(state, row, lengthText(sum, unit));
        }}
      >
        {texts.useCorrection(rows, nonBreaking(lengthText(sum, unit)))}
      </button>
    </div>
  );
}

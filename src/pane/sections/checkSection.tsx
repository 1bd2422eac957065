import { checkCuts, differences, type Cut, type Differences } from "../state/checkCuts.ts";
import { insert } from "../writing/insert.ts";
import { setInput, type PaneState } from "../state/paneState.ts";
import { layoutCheck } from "../writing/layoutCheck.ts";
import type { TableToWrite } from "../writing/layoutFill.ts";
import type { Table } from "../state/evaluateFunction.ts";
import { SalvageForm } from "./salvageForm.tsx";
import { TableView } from "../controls/tableView.tsx";
import { texts } from "../words/texts.ts";
import { sideName } from "../../roof/frame/piece.ts";
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
    byMark.has(mark) ? offBy(byMark.get(mark)!.off, unit) : "",
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
          <Found key={sideName(found.planes)} state={state} found={found} unit={unit} />
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

const checkTable = (cuts: readonly Cut[], now: Table): TableToWrite => ({
  title: texts.sections.check,
  sheet: texts.checkSheet,
  layout: (place, on) => layoutCheck(place, on, { cuts, now }),
});

/** A difference with its sign, on the tape. */
function signed(value: number, unit: Unit): string {
  return value > 0 && !isUnseen(value, unit) ? `+${lengthText(value, unit)}` : lengthText(value, unit);
}

/** What no mark of the tape shows. */
function isUnseen(value: number, unit: Unit): boolean {
  return lengthText(value, unit) === lengthText(0, unit);
}

function offBy(value: number, unit: Unit): string {
  if (isUnseen(value, unit)) return texts.agrees;
  return value > 0 ? texts.longer(signed(value, unit)) : texts.shorter(signed(value, unit));
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
  const { planes, count, median, mean, least, most, grows, standsOut } = found;
  const rows: readonly Row[] = [
    ...(planes.every(({ end }) => end) ? [] : ["Correction" as const]),
    ...(planes.some(({ end }) => end) ? ["End correction" as const] : []),
  ];
  const length = (value: number) => nonBreaking(signed(value, unit));
  const sum = (rows[0] === "Correction" ? spec.correction : spec.endCorrection) + median;
  return (
    <div class="lp-found">
      <p>
        {texts.differ({
          side: rows.length === 2 ? "" : sideName(planes),
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

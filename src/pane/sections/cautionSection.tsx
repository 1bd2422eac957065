import type { RoofState } from "../state/paneState.ts";
import { cautionTable } from "../state/exceeded.ts";
import { TableView } from "../controls/tableView.tsx";
import { lookTexts } from "../words/lookTexts.ts";
import { texts } from "../words/texts.ts";

/** Figures outside the published ones, each with the pieces that it is at; then what nobody may overlook. */
export function CautionSection({ state }: { state: RoofState }) {
  return (
    <section aria-labelledby="lp-cautions">
      <h2 id="lp-cautions" tabIndex={-1}>
        {texts.sections.cautions}
      </h2>
      {state.exceeded.value.map(({ check, here, published, remark, marks }) => (
        <div key={check} class="lp-wrong">
          <b>{lookTexts.exceeded(check, here)}</b> {lookTexts.published(published)} {texts.sentence(mended(remark))}
          <span class="lp-marks">
            {marks.map((mark) => (
              <button key={mark} type="button" class="lp-word" data-piece={mark} aria-label={lookTexts.openCard(mark)}>
                {mark}
              </button>
            ))}
          </span>
        </div>
      ))}
      <ul>
        {texts.cautions.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </section>
  );
}

/** What to do, without the word that says so in a table. */
const mended = (remark: string) => remark.replace(/^OUTSIDE[^:]*: /, "");

/** The roof's figures beside the published ones. */
export function CautionTable({ state }: { state: RoofState }) {
  const { model } = state.report.value;
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  const [headings, ...rows] = cautionTable(model);
  return <TableView name={texts.figures} headings={headings!} rows={rows} />;
}

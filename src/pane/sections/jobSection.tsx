import { printAddress, sawAddress } from "../writing/printAddress.ts";
import type { PaneState } from "../state/paneState.ts";
import { jobTexts } from "../words/jobTexts.ts";
import { texts } from "../words/texts.ts";

/** The whole job on paper, and its pieces on the phone: pages of their own, with the roof behind the # of their address. */
export function JobSection({ state }: { state: PaneState }) {
  const { openPage, sawPage } = state.host;
  if (!openPage) return null;
  const ready = state.report.value.model !== null;
  return (
    <section aria-labelledby="lp-job">
      <h2 id="lp-job">{jobTexts.title}</h2>
      <p class="lp-note">{ready ? jobTexts.lead : texts.notYet}</p>
      <div class="lp-buttons">
        <button type="button" disabled={!ready} onClick={() => openPage(printAddress(state, { packet: true }))}>
          {jobTexts.print}
        </button>
        {sawPage && (
          <button type="button" disabled={!ready} onClick={() => openPage(sawAddress(sawPage, state))}>
            {jobTexts.saw}
          </button>
        )}
      </div>
    </section>
  );
}

import { render } from "preact";
import { MarkStyle, marking } from "./controls/pieceMarks.tsx";
import { CautionSection, CautionTable } from "./sections/cautionSection.tsx";
import { laterParts } from "./sections/later.tsx";
import * as parts from "./sections/laterParts.ts";
import { ScheduleSection } from "./sections/scheduleSection.tsx";
import { ValueList } from "./sections/valueList.tsx";
import { ViewSection } from "./sections/viewSection.tsx";
import { roofState, type RoofState } from "./state/paneState.ts";
import type { Remembered } from "./state/remembered.ts";
import { lookTexts } from "./words/lookTexts.ts";
import { texts } from "./words/texts.ts";
import "./look.ts";

/** Shows a roof as large as the window, for looking at it; false where it cannot be framed. */
export function mountDrawing(element: HTMLElement, { inputs, kerf }: Pick<Remembered, "inputs" | "kerf">): boolean {
  const state = roofState();
  state.inputs.value = inputs;
  state.kerf.value = kerf;
  if (!state.report.value.model) return false;
  laterParts.value = parts;
  element.replaceChildren();
  render(<DrawingPage state={state} />, element);
  return true;
}

function DrawingPage({ state }: { state: RoofState }) {
  return (
    <div class="lp lp-whole" {...marking(state)}>
      <MarkStyle state={state} />
      <div class="lp-room">
        <ViewSection state={state} />
        <div class="lp-form">
          <section aria-labelledby="lp-roof">
            <h2 id="lp-roof">{texts.sections.roof}</h2>
            <p class="lp-note">{lookTexts.asOpened}</p>
            <ValueList state={state} />
          </section>
          <ScheduleSection state={state} />
          <CautionSection state={state} />
          <section aria-labelledby="lp-figures">
            <h2 id="lp-figures">{texts.figures}</h2>
            <CautionTable state={state} />
          </section>
        </div>
        {state.looking.picked.value && <parts.PieceCard state={state} />}
      </div>
    </div>
  );
}

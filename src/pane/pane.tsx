import { render } from "preact";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { AskDialog } from "./controls/askDialog.tsx";
import { CautionSection, CautionTable } from "./sections/cautionSection.tsx";
import { FillSection } from "./sections/fillSection.tsx";
import { JobSection } from "./sections/jobSection.tsx";
import { Later, load } from "./sections/later.tsx";
import { Fold } from "./controls/fold.tsx";
import { syncWithSheet } from "./state/syncWithSheet.ts";
import "./look.ts";
import { marking, MarkStyle } from "./controls/pieceMarks.tsx";
import { paneState, type PaneState } from "./state/paneState.ts";
import { RoofSection } from "./sections/roofSection.tsx";
import { ValueList } from "./sections/valueList.tsx";
import { ViewTools } from "./sections/viewTools.tsx";
import { ViewSection } from "./sections/viewSection.tsx";
import { wholeWindow } from "./sections/wholeWindow.ts";
import { ScheduleSection } from "./sections/scheduleSection.tsx";
import { undo } from "./writing/sheetWork.ts";
import { texts } from "./words/texts.ts";

/** Shows the pane in an element and keeps it in step with the sheet until the returned function takes it away. */
export function mountPane(element: HTMLElement, host: Host): () => void {
  const state = paneState(host);
  render(<Pane state={state} />, element);
  const stop = syncWithSheet(state);
  void load();
  return () => {
    stop();
    render(null, element);
  };
}

/** Waits until a mounted pane has drawn the roof; where a page draws nothing, as behind other tabs, a moment longer than that takes. */
export async function paneDrawn(): Promise<void> {
  await load();
  await new Promise<void>((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, 500);
  });
}

function Pane({ state }: { state: PaneState }) {
  const root = useRef<HTMLDivElement>(null);
  const { whole } = state.looking;
  const handlers = useMemo(() => marking(state), [state]);
  useLayoutEffect(
    () => (whole.value ? wholeWindow(root.current!, () => (whole.value = false)) : undefined),
    [whole.value],
  );
  return (
    <div ref={root} class={whole.value ? "lp lp-whole" : "lp"} {...handlers}>
      <MarkStyle state={state} />
      <div class="lp-room">
        <ViewSection state={state} tools={<ViewTools state={state} />} />
        <div class="lp-form">
          <ValueList state={state} />
          <RoofSection state={state} />
          <ScheduleSection state={state} />
          <FillSection state={state} />
          <Fold title={texts.sections.check}>{() => <Later part="CheckSection" state={state} />}</Fold>
          <Fold title={texts.sections.compare}>{() => <Later part="CompareSection" state={state} />}</Fold>
          <Fold title={texts.sections.order}>{() => <Later part="OrderSection" state={state} />}</Fold>
          <Fold title={texts.sections.cards}>{() => <Later part="CardSection" state={state} />}</Fold>
          <JobSection state={state} />
          <CautionSection state={state} />
          <Fold title={texts.figures}>{() => <CautionTable state={state} />}</Fold>
        </div>
        {state.looking.picked.value && <Later part="PieceCard" state={state} />}
        <Foot state={state} />
      </div>
      <AskDialog state={state} />
    </div>
  );
}

/** At the foot, where it is always seen: how far the writing is, what was last done (which is read out), and the way back. */
function Foot({ state }: { state: PaneState }) {
  const work = state.work.value;
  const last = state.written.value.at(-1);
  return (
    <div class={work?.shown || last || state.says.value !== "" ? "lp-foot" : undefined}>
      <div role="status" class="lp-says">
        {state.says.value}
      </div>
      {work?.shown && (
        <div class="lp-work">
          {work.of > 0 ? (
            <progress max={work.of} value={work.done} aria-label={texts.writing(work.done, work.of)} />
          ) : (
            <progress aria-label={texts.working} />
          )}
          <button type="button" onClick={work.stop}>
            {texts.stop}
          </button>
        </div>
      )}
      {last && (
        <button type="button" class="lp-quiet" onClick={() => void undo(state)}>
          {texts.takeBack(last.title)}
        </button>
      )}
    </div>
  );
}

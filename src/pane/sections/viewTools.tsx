import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { PaneState } from "../state/paneState.ts";
import { lookTexts } from "../words/lookTexts.ts";
import { texts } from "../words/texts.ts";
import { drawingAddress } from "../writing/printAddress.ts";

/** What stands beside the views: help with the field in hand, and more room. */
export function ViewTools({ state }: { state: PaneState }) {
  const { help, inHand } = state.looking;
  const about = texts.place(inHand.value.row, inHand.value.wing);
  return (
    <>
      <button
        type="button"
        class="lp-word"
        aria-expanded={help.value}
        aria-controls="lp-help"
        aria-label={lookTexts.about(about)}
        title={lookTexts.key(about)}
        onClick={() => (help.value = !help.value)}
      >
        ?
      </button>
      <Larger state={state} />
    </>
  );
}

/** Fills the window with the pane, where the pane is a part of it; else has the host show the drawing in a window of its own. */
function Larger({ state }: { state: PaneState }) {
  const { whole } = state.looking;
  const { openLarge } = state.host;
  const button = useRef<HTMLButtonElement>(null);
  const part = useSignal(false);
  useEffect(() => {
    const measure = () => (part.value = whole.value || button.current!.closest(".lp")!.clientWidth < innerWidth - 100);
    addEventListener("resize", measure);
    measure();
    return () => removeEventListener("resize", measure);
  }, []);
  const show = async () => {
    if (!openLarge) whole.value = !whole.value;
    else if (!(await openLarge(drawingAddress(state)))) state.says.value = lookTexts.notLarger;
  };
  return (
    <button
      ref={button}
      type="button"
      class="lp-word"
      hidden={!part.value && !openLarge}
      disabled={openLarge !== undefined && state.report.value.model === null}
      onClick={() => void show()}
    >
      {whole.value ? lookTexts.smaller : lookTexts.larger}
    </button>
  );
}

import { useSignal } from "@preact/signals";
import { drawCorner } from "../drawing/drawCorner.ts";
import { drawFrame3d } from "../drawing/drawFrame3d.ts";
import { drawHip } from "../drawing/drawHip.ts";
import { drawJack } from "../drawing/drawJack.ts";
import { drawPair } from "../drawing/drawPair.ts";
import { drawPlan } from "../drawing/drawPlan.ts";
import { lengthText } from "../measure/lengthText.ts";
import { Drawing } from "./drawing.tsx";
import type { PaneState } from "./paneState.ts";
import { Choice } from "./salvageForm.tsx";
import { texts } from "./texts.ts";

type View = keyof typeof texts.views;

/** The roof as it is typed: the whole plan, one corner enlarged, or one jack with everything that is laid out on it. */
export function DrawingSection({ state }: { state: PaneState }) {
  const view = useSignal<View>("plan");
  const mark = useSignal("");
  const hand = useSignal("left");
  const { model, unit } = state.report.value;
  if (!model) return <p class="lp-note">{texts.noSchedule}</p>;
  const { frame, pieces } = model;
  const jacks = pieces.filter(({ member }) => member === "jack");
  const jack = jacks.find((piece) => piece.mark === mark.value) ?? jacks[0]!;
  const draw = (width: number) => {
    const options = { width, length: (value: number) => lengthText(value, unit) };
    switch (view.value) {
      case "plan": return drawPlan(frame, pieces, options);
      case "corner": return drawCorner(frame, pieces, options);
      case "hip": return drawHip(frame, pieces, options);
      case "round": return drawFrame3d(frame, pieces, options);
      case "jack": return hand.value === "left" || hand.value === "right" ? drawJack(jack, hand.value, options) : drawPair(jack, options);
    }
  };
  return (
    <>
      <div class="lp-three">
        <Choice label={texts.drawingOf} value={texts.views[view.value]} of={Object.values(texts.views)} change={(words) => (view.value = (Object.keys(texts.views) as View[]).find((key) => texts.views[key] === words)!)} />
        {view.value === "jack" && <Choice label={texts.piece} value={jack.mark} of={jacks.map((piece) => piece.mark)} change={(value) => (mark.value = value)} />}
        {view.value === "jack" && <Choice label={texts.hand} value={hand.value} of={["left", "right", texts.bothHands]} change={(value) => (hand.value = value)} />}
      </div>
      <Drawing draw={draw} />
    </>
  );
}

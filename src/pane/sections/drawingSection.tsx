import { useSignal } from "@preact/signals";
import { drawPlan } from "../../drawing/views/drawPlan.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Drawing } from "../controls/drawing.tsx";
import type { PaneState } from "../state/paneState.ts";
import { Choice } from "../controls/choice.tsx";
import { laterParts, Waiting } from "./later.tsx";
import { texts } from "../words/texts.ts";

type View = keyof typeof texts.views;

/** The roof as it is typed: the whole plan, one corner enlarged, or one piece with everything that is laid out on it. */
export function DrawingSection({ state }: { state: PaneState }) {
  const view = useSignal<View>("plan");
  const mark = useSignal("");
  const hand = useSignal("left");
  const { model, unit } = state.report.value;
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  const { frame, pieces } = model;
  // The hip has a view of its own; jacks come first.
  const shown = pieces
    .filter(({ member }) => member !== "hip")
    .sort((a, b) => Number(b.member === "jack") - Number(a.member === "jack"));
  const piece = shown.find((one) => one.mark === mark.value) ?? shown[0]!;
  const parts = laterParts.value;
  const draw = (width: number) => {
    const options = { width, length: (value: number) => lengthText(value, unit) };
    if (view.value === "plan") return drawPlan(frame, pieces, options);
    return parts ? parts.drawView(view.value, { frame, pieces, piece, hand: hand.value }, options) : "";
  };
  return (
    <>
      <div class="lp-three">
        <Choice
          label={texts.drawingOf}
          value={texts.views[view.value]}
          of={Object.values(texts.views)}
          change={(words) =>
            (view.value = (Object.keys(texts.views) as View[]).find((key) => texts.views[key] === words)!)
          }
        />
        {view.value === "piece" && (
          <Choice
            label={texts.piece}
            value={piece.mark}
            of={shown.map((one) => one.mark)}
            change={(value) => (mark.value = value)}
          />
        )}
        {view.value === "piece" && piece.member === "jack" && (
          <Choice
            label={texts.hand}
            value={hand.value}
            of={["left", "right", texts.bothHands]}
            change={(value) => (hand.value = value)}
          />
        )}
      </div>
      {view.value !== "plan" && !parts && <Waiting />}
      <Drawing draw={draw} />
    </>
  );
}

import { useSignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { DrawingOptions } from "../../drawing/canvas/canvas.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { valleysIn } from "../../roof/frame/frame.ts";
import { fitted, LEAST } from "../controls/fitted.ts";
import { useZoom } from "../controls/zoom.ts";
import type { PaneState } from "../state/paneState.ts";
import { STANDS, turnBy, type Eye, type ViewName } from "../state/looking.ts";
import { lookTexts } from "../words/lookTexts.ts";
import { texts } from "../words/texts.ts";
import { laterParts, Waiting } from "./later.tsx";

/** That a pixel of dragging turns by. */
const DEGREES = 0.4;

/** In less room than this, in pixels, the plan leaves out what a card says. */
const BRIEF = { width: 620, height: 380 };

/** The roof as it is typed, always in view: as large as its room allows, zoomed and moved by wheel, touch and keys. */
export function Stage({ state }: { state: PaneState }) {
  const { view, eye } = state.looking;
  const place = useRef<HTMLDivElement>(null);
  const size = useSignal({ width: 0, height: 0 });
  const round = view.value === "round";
  const zoom = useZoom(place, () =>
    view.value === "round" ? (dx, dy) => turnBy(state.looking, -dx * DEGREES, dy * DEGREES) : null,
  );
  const model = state.lastModel.value;
  // Without a wing that is framed in there are no valleys to see.
  const shown = viewsOf(model).includes(view.value) ? view.value : "plan";
  const fit = useMemo(fitted, [shown]);
  useEffect(() => {
    const element = place.current!;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      if (width !== size.value.width || height !== size.value.height) size.value = { width, height };
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  const { width, height } = size.value;
  const missing = laterParts.value === null;
  const { z, x, y } = zoom.at.value;
  const exceeded = state.exceeded.value;
  const svg = useMemo(() => {
    const ends = new Map(exceeded.flatMap(({ marks, end }) => marks.map((mark) => [mark, end] as const)));
    if (!model || width === 0 || missing) return "";
    const [wide, high] = [width * z, height * z];
    return fit(drawing(model, shown, isBrief(wide, high), { ...eye.value, height: high }, ends), wide, high);
  }, [model, shown, width, height, z, missing, round && eye.value]);
  return (
    <div class="lp-board" data-stale={state.report.value.model === null}>
      <div class="lp-tools">
        <div role="group" aria-label={lookTexts.shown}>
          {viewsOf(model).map((name) => (
            <button
              key={name}
              type="button"
              class="lp-word"
              aria-pressed={shown === name}
              onClick={() => (zoom.fit(), (view.value = name))}
            >
              {lookTexts.views[name]}
            </button>
          ))}
        </div>
        <div role="group" aria-label={lookTexts.stage}>
          <button type="button" class="lp-word" aria-label={lookTexts.zoomOut} onClick={() => zoom.by(1 / 1.5)}>
            −
          </button>
          <button type="button" class="lp-word" aria-label={lookTexts.zoomIn} onClick={() => zoom.by(1.5)}>
            +
          </button>
          <button type="button" class="lp-word" onClick={zoom.fit}>
            {lookTexts.fit}
          </button>
        </div>
      </div>
      <div
        ref={place}
        class="lp-stage"
        tabIndex={0}
        role="group"
        aria-label={`${lookTexts.stage}. ${round ? lookTexts.turnKeys : lookTexts.stageKeys}`}
        data-round={round}
        data-zoomed={z > 1}
        {...zoom.listeners}
      >
        {!model && <p class="lp-note">{texts.notYet}</p>}
        {missing && <Waiting />}
        <div
          class={shown === "plan" && isBrief(width * z, height * z) ? "lp-drawn lp-brief" : "lp-drawn"}
          style={`transform:translate(${-x}px,${-y}px)`}
          dangerouslySetInnerHTML={{ __html: svg }}
        />
      </div>
      {round && (
        <div class="lp-tools lp-stands" role="group" aria-label={lookTexts.stands}>
          {(Object.keys(STANDS) as (keyof typeof STANDS)[]).map((name) => (
            <button
              key={name}
              type="button"
              class="lp-word"
              aria-pressed={eye.value === STANDS[name]}
              onClick={() => (zoom.fit(), (eye.value = STANDS[name]))}
            >
              {lookTexts.standing[name]}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

/** The views that a roof has. */
const viewsOf = (model: RoofModel | null | undefined): ViewName[] =>
  (Object.keys(lookTexts.views) as ViewName[]).filter(
    (name) => name !== "valley" || (model && valleysIn(model.frame).length > 0),
  );

const isBrief = (width: number, height: number) => width < BRIEF.width || height < BRIEF.height;

/** How the roof is drawn in a view, for a width. */
function drawing(
  model: RoofModel,
  view: ViewName,
  brief: boolean,
  turned: Eye & { height: number },
  cautions: ReadonlyMap<string, "head" | "foot">,
): (width: number) => string {
  const { unit } = model.frame.spec;
  return (width) => {
    const length: DrawingOptions["length"] = (value) => lengthText(value, unit);
    const options = { width: Math.max(LEAST, width), length, brief };
    return laterParts.value!.drawView(view, model, { ...options, cautions }, turned);
  };
}

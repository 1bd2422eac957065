import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef } from "preact/hooks";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { DrawingOptions } from "../../drawing/canvas/canvas.ts";
import { drawnHeight } from "../../drawing/canvas/drawnHeight.ts";
import type { PlanOptions } from "../../drawing/views/drawPlan.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { valleysIn } from "../../roof/frame/frame.ts";
import { fitted, LEAST } from "../controls/fitted.ts";
import { redrawn } from "../controls/redrawn.ts";
import { useZoom } from "../controls/zoom.ts";
import { columnReport } from "../state/report.ts";
import type { RoofState } from "../state/paneState.ts";
import { STANDS, turnBy, type Eye, type ViewName } from "../state/looking.ts";
import { lookTexts } from "../words/lookTexts.ts";
import { texts } from "../words/texts.ts";
import { laterParts, Waiting } from "./later.tsx";

/** That a pixel of dragging turns by. */
const DEGREES = 0.4;

/** In less room than this, in pixels, the plan leaves out what a card says. */
const BRIEF = { width: 620, height: 380 };

/** Drawings of parts one under another: laid out for no less than can be read, in pixels, and moved where they are higher than their room. */
const READABLE: Partial<Record<ViewName, number>> = { plates: 340, corner: 260, hip: 340, valley: 340 };

/**
 * The roof as it is typed, always in view: as large as its room allows, zoomed and moved by wheel, touch and keys. Over it one line with
 * the views and what else the head holds.
 */
export function Stage({
  state,
  title,
  tools,
  children,
}: {
  state: RoofState;
  title: ComponentChildren;
  tools: ComponentChildren;
  children: ComponentChildren;
}) {
  const { view, eye, lit } = state.looking;
  const place = useRef<HTMLDivElement>(null);
  const drawn = useRef<HTMLDivElement>(null);
  const redraw = useRef<(svg: string) => void>(null);
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
  const typed = lit.value;
  const inHand =
    shown === "plan" && typed
      ? { ...typed, text: columnReport(state.report.value, typed.wing).understood[typed.row] ?? "" }
      : null;
  const svg = useMemo(() => {
    const ends = new Map(exceeded.flatMap(({ marks, end }) => marks.map((mark) => [mark, end] as const)));
    if (!model || width === 0 || missing) return "";
    const [wide, high] = [width * z, height * z];
    const draw = drawing(model, shown, isBrief(wide, high), { ...eye.value, height: high }, ends, inHand);
    return fit(draw, wide, high, Math.min(wide, (READABLE[shown] ?? LEAST) * z));
  }, [model, shown, width, height, z, missing, round && eye.value, inHand?.row, inHand?.wing, inHand?.text]);
  const high = drawnHeight(svg) > height + 1;
  useLayoutEffect(() => {
    redraw.current ??= redrawn(drawn.current!);
    redraw.current(svg);
    zoom.settle();
  }, [svg]);
  return (
    <>
      <header>
        {title}
        <div role="group" aria-label={lookTexts.shown} class="lp-views">
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
        <div role="group" aria-label={lookTexts.stage} class="lp-views">
          <button type="button" class="lp-word" aria-label={lookTexts.zoomOut} onClick={() => zoom.by(1 / 1.5)}>
            −
          </button>
          <button type="button" class="lp-word" aria-label={lookTexts.zoomIn} onClick={() => zoom.by(1.5)}>
            +
          </button>
          <button
            type="button"
            class="lp-word"
            hidden={z === 1 && x === 0 && y === 0}
            onClick={() => (zoom.fit(), place.current!.focus())}
          >
            {lookTexts.fit}
          </button>
        </div>
        {tools}
      </header>
      {children}
      <div class="lp-board" data-stale={state.report.value.model === null}>
        <div
          ref={place}
          class="lp-stage"
          tabIndex={0}
          role="group"
          aria-label={`${lookTexts.stage}. ${round ? lookTexts.turnKeys : lookTexts.stageKeys}`}
          data-round={round}
          data-zoomed={z > 1}
          data-high={high && READABLE[shown] !== undefined}
          {...zoom.listeners}
        >
          {!model && <p class="lp-note">{texts.notYet}</p>}
          {missing && <Waiting />}
          <div
            ref={drawn}
            class={shown === "plan" && isBrief(width * z, height * z) ? "lp-drawn lp-brief" : "lp-drawn"}
            style={`--room:${height}px;transform:translate(${-x}px,${-y}px)`}
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
    </>
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
  inHand: PlanOptions["inHand"],
): (width: number) => string {
  const { unit } = model.frame.spec;
  return (width) => {
    const length: DrawingOptions["length"] = (value) => lengthText(value, unit);
    const options = { width: Math.max(LEAST, width), length, brief };
    return laterParts.value!.drawView(view, model, { ...options, cautions, inHand }, turned);
  };
}

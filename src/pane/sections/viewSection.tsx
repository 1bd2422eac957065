import { pricedArea } from "../../../functions/takeOff.ts";
import { comparedFigure } from "../../roof/tables/comparison.ts";
import { faultyField } from "../state/report.ts";
import { lengthText } from "../../measure/lengthText.ts";
import type { ComponentChildren } from "preact";
import type { RoofState } from "../state/paneState.ts";
import { lookTexts } from "../words/lookTexts.ts";
import { texts } from "../words/texts.ts";
import { Stage } from "./stage.tsx";

/** What stays in view while the fields run under it: the name, the drawing, and what the roof comes to. */
export function ViewSection({ state, tools }: { state: RoofState; tools?: ComponentChildren }) {
  return (
    <div class="lp-view">
      <Stage
        state={state}
        title={
          <>
            <h1>{texts.title}</h1>
            <p>{state.lastModel.value?.job}</p>
          </>
        }
        tools={tools}
      >
        <CellMessage state={state} />
      </Stage>
      <Facts state={state} />
    </div>
  );
}

/** Why the selected cell shows an error. */
function CellMessage({ state }: { state: RoofState }) {
  const says = state.cellMessage.value;
  return (
    <div role="status" class={says ? "lp-cell" : undefined}>
      {says && (
        <>
          <strong>{says.at}</strong> {says.message}
        </>
      )}
    </div>
  );
}

/** What the roof comes to; while something typed cannot be read, whose roof is still drawn and what to fix. */
function Facts({ state }: { state: RoofState }) {
  const model = state.lastModel.value;
  const report = state.report.value;
  if (!model) return null;
  const { frame, pieces } = model;
  const { spec } = frame;
  const length = (value: number) => lengthText(value, spec.unit);
  if (!report.model) {
    const fault = faultyField(report);
    return (
      <p class="lp-facts lp-stale" role="status">
        <b>{lookTexts.stillLast(length(spec.span), length(spec.length))}</b>{" "}
        {fault && lookTexts.fix(texts.place(fault.row, fault.wing))}
      </p>
    );
  }
  const pointed = pieces.find(({ mark }) => mark === state.looking.pointed.value);
  if (pointed)
    return (
      <p class="lp-facts lp-stale">
        <b class="lp-this">{pointed.mark}</b> {lookTexts.piece(length(pointed.longPoint), pointed)}
      </p>
    );
  const outside = state.exceeded.value.length;
  const jacks = pieces.filter(({ member }) => member === "jack");
  const area = pricedArea(comparedFigure("roof area", frame, pieces), spec.unit);
  return (
    <ul class="lp-facts" aria-label={lookTexts.facts}>
      {outside > 0 ? (
        <li>
          <button
            type="button"
            class="lp-word lp-outside"
            onClick={() => document.getElementById("lp-cautions")?.focus()}
          >
            {lookTexts.outside(outside)}
          </button>
        </li>
      ) : (
        <li>{lookTexts.jacks(comparedFigure("jacks", frame, pieces), jacks.length)}</li>
      )}
      <li>{lookTexts.ridge(length(comparedFigure("ridge height", frame, pieces)))}</li>
      <li>{lookTexts.area(area, spec.unit === "mm" ? "m²" : "sq ft")}</li>
    </ul>
  );
}

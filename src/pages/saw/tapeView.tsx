import { useSignal } from "@preact/signals";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { lengthText } from "../../measure/lengthText.ts";
import type { Row } from "../../../functions/arguments/roofBlock.ts";
import { sideName, type Piece } from "../../roof/frame/piece.ts";
import { checkCuts, differences, type Differences } from "../../pane/state/checkCuts.ts";
import { texts } from "../../pane/words/texts.ts";
import { roofText } from "../../pane/state/remembered.ts";
import { roofOf, stampOf } from "../packet/packetAsked.ts";
import type { SawState } from "./sawState.ts";
import { Entry } from "./entry.tsx";
import { sawWords as words } from "./sawWords.ts";

/** A tape measured on the roof, and what it means for the jacks that are still to be cut. */
export function TapeView({ state, piece }: { state: SawState; piece: Piece }) {
  const said = useSignal("");
  const { job, roof } = state;
  const { model } = roof.value;
  const { unit } = model.frame.spec;
  const length = (value: number) => nonBreaking(lengthText(value, unit));
  const { cuts, wrong } = checkCuts(model, job.value.tapes);
  const cut = cuts.find((one) => one.piece.mark === piece.mark);
  const unseen = (value: number) => lengthText(Math.abs(value), unit) === lengthText(0, unit);
  const side = cut && differences(cuts, unit).find(({ planes }) => planes.includes(piece.planes[0]!));
  return (
    <>
      <p>{words.tapeLead}</p>
      <Entry
        label={words.tapeLabel}
        beside={words.shouldRead(length(piece.tape!))}
        value={job.value.tapes[piece.mark] ?? ""}
        wrong={wrong[piece.mark] ?? ""}
        change={(text) => {
          said.value = "";
          state.set((one) => ({ ...one, tapes: { ...one.tapes, [piece.mark]: text } }));
        }}
      />
      <div aria-live="polite">
        {cut && (
          <p>
            <strong>{words.onSite(length(cut.longPoint))}</strong>{" "}
            {unseen(cut.off) ? words.agrees : cut.off > 0 ? words.over(length(cut.off)) : words.under(length(-cut.off))}
          </p>
        )}
        {cut && piece.planes[0]!.wing !== "" && <p class="caution">{words.wings}</p>}
        {side && <Proposed state={state} side={side} said={said} />}
        <p>{said.value}</p>
      </div>
      <button type="button" onClick={() => (state.view.value = "piece")}>
        {cut ? words.keep : words.done}
      </button>
    </>
  );
}

/** What the tapes of a side come to, and the correction of what is still to be cut. */
function Proposed({ state, side, said }: { state: SawState; side: Differences; said: { value: string } }) {
  const { roof } = state;
  const { frame } = roof.value.model;
  const { unit, correction, endCorrection } = frame.spec;
  const { planes, count, median, grows, standsOut } = side;
  const length = (value: number) => nonBreaking(lengthText(value, unit));
  if (lengthText(Math.abs(median), unit) === lengthText(0, unit)) return null;
  const rows: readonly Row[] = [
    ...(planes.every(({ end }) => end) ? [] : ["Correction" as const]),
    ...(planes.some(({ end }) => end) ? ["End correction" as const] : []),
  ];
  const press = () => {
    const { inputs, model } = roof.value;
    const sum = (rows[0] === "Correction" ? correction : endCorrection) + median;
    const text = lengthText(sum, unit);
    const next = {
      inputs: { ...inputs, ...Object.fromEntries(rows.map((row) => [row, text])) },
      kerf: roof.value.kerf,
    };
    const corrected = roofOf(roofText(next));
    const marks = (pieces: readonly Piece[]) => pieces.map(({ mark }) => mark).join(" ");
    if (!corrected || marks(corrected.model.pieces) !== marks(model.pieces)) {
      said.value = words.noCorrection;
      return;
    }
    state.set((job) => ({ ...job, roof: roofText(next), known: [...job.known, stampOf(corrected)] }));
    said.value = words.correctedNow(length(median));
  };
  return (
    <>
      <p>{count === 1 ? words.one : words.median(count, length(median))}</p>
      {grows && <p class="caution">{texts.grows(length(grows.by), length(grows.over))}</p>}
      {standsOut && (
        <p class="caution">{texts.standsOut(standsOut.mark, length(standsOut.by), length(standsOut.others))}</p>
      )}
      <button type="button" class="main" onClick={press}>
        {words.correct(length(median), words.sides[rows.length === 2 ? "Both" : sideName(planes)] ?? "")}
      </button>
    </>
  );
}

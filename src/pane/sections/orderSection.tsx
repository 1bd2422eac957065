import { useSignal } from "@preact/signals";
import { useEffect, useMemo } from "preact/hooks";
import type { Problem } from "../../../functions/problem.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import type { CardPaper } from "../../drawing/cards/cardStyles.ts";
import { drawSticks } from "../../drawing/cards/drawSticks.ts";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Failure } from "../../measure/result.ts";
import { boardsOnHand } from "../state/boardsOnHand.ts";
import { Drawing } from "../controls/drawing.tsx";
import { fill } from "../writing/fill.ts";
import { newestOnly } from "../state/newestOnly.ts";
import { kerfNow, kerfText, keyOf, orderNow, type Order, type OrderAsked } from "../state/orderNow.ts";
import { OrderTable } from "./orderTable.tsx";
import type { PaneState } from "../state/paneState.ts";
import { PaperChoice, paperOf } from "../controls/paperChoice.tsx";
import { TextEntry, Wrong } from "../controls/textEntry.tsx";
import { Paper } from "../controls/paper.tsx";
import { planPage } from "../writing/planPage.ts";
import { openedElsewhere } from "../writing/printAddress.ts";
import { roofTables } from "../writing/roofTables.ts";
import { whyOf } from "../writing/sheetWork.ts";
import { roofName } from "../state/roofName.ts";
import { texts } from "../words/texts.ts";

/** Milliseconds without typing before the search for an order starts. */
const CALM = 300;

/** The boards to buy, how each is cut, and both on paper or in the sheet. Worked out only while it is looked at. */
export function OrderSection({ state }: { state: PaneState }) {
  const { model, unit } = state.report.value;
  const { boards } = boardsOnHand(state.inputs.value, state.report.value);
  const asked: OrderAsked = { inputs: state.inputs.value, kerf: state.kerf.value };
  const key = keyOf(asked);
  const kerf = kerfNow(asked.kerf, unit);
  const ready = model !== null && !(kerf instanceof Failure);
  const { found } = state;
  const newest = useMemo(
    () =>
      newestOnly(
        CALM,
        (one: OrderAsked) =>
          orderNow(one).catch(
            (error) => new Failure<Problem>({ kind: "fault", name: "LUMBERORDER", thrown: whyOf(error) }),
          ),
        (one, order) => (found.value = { key: keyOf(one), order }),
      ),
    [],
  );
  useEffect(() => newest.stop, []);
  useEffect(() => void (ready && found.value?.key !== key && newest.ask(asked)), [key, ready]);
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  // An answer for the roof before is none for this one.
  const order = found.value?.key === key ? found.value.order : null;
  const wrong = kerf instanceof Failure ? fieldText(kerf) : "";
  return (
    <>
      <p class="lp-note">{texts.orderFrom(boards)}</p>
      <div class="lp-three">
        <TextEntry
          label={texts.kerf}
          value={asked.kerf}
          wrong={wrong !== ""}
          reads="lp-kerf-read lp-kerf-wrong"
          change={(text) => (state.kerf.value = text)}
        >
          <span class="lp-understood" id="lp-kerf-read">
            {kerf instanceof Failure
              ? ""
              : asked.kerf.trim() === ""
                ? texts.empty(kerfText(kerf, unit))
                : kerfText(kerf, unit)}
          </span>
        </TextEntry>
      </div>
      <Wrong id="lp-kerf-wrong" words={wrong} />
      <div role="status">
        {wrong !== "" ? (
          ""
        ) : order === null ? (
          <>
            <p class="lp-note">{texts.orderWorking}</p>
            <div class="lp-work">
              <progress aria-label={texts.orderWorking} />
            </div>
          </>
        ) : order instanceof Failure ? (
          <p class="lp-wrong">{fieldText(order)}</p>
        ) : (
          <p>
            {texts.orderTotal(
              order.boards,
              unit === "mm" ? texts.meters(order.length / 1000) : lengthText(order.length, unit),
            )}
          </p>
        )}
      </div>
      {ready && order && !(order instanceof Failure) && (
        <Found state={state} order={order} kerf={kerfText(kerf, unit)} />
      )}
    </>
  );
}

/** An order that was found: its lines, how good it is, the plan drawn, and the ways out of the pane. */
function Found({ state, order, kerf }: { state: PaneState; order: Order; kerf: string }) {
  const { model, unit } = state.report.value;
  const chosen = useSignal<CardPaper["paper"] | null>(null);
  const paper = paperOf(chosen, unit);
  const { sticks, missing, notes } = order.plan;
  const length = (value: number) => lengthText(value, unit);
  const plan = () => planPage(state, order, paper, kerf);
  const write = () =>
    fill(state, {
      block: state.link.value === null,
      tables: (inputs) => roofTables(new Set(["order", "cutting"]), inputs, state.kerf.value),
      newSheets: true,
    });
  return (
    <>
      {missing.map((words) => (
        <p key={words} class="lp-wrong">
          {nonBreaking(texts.boardsTooShort(words))}
        </p>
      ))}
      <OrderTable lines={order.lines} unit={unit} />
      <p>{texts.sentence(order.proof)}</p>
      <ul class="lp-notes">
        {notes.map((note) => (
          <li key={note}>{nonBreaking(texts.sentence(note))}</li>
        ))}
      </ul>
      <h3>{texts.tables.cutting}</h3>
      <div class="lp-scroll lp-sticks" role="region" tabIndex={0} aria-label={texts.scrollsDown(texts.tables.cutting)}>
        <Drawing draw={(width) => drawSticks(sticks, { width, length })} />
      </div>
      <div class="lp-three">
        <PaperChoice chosen={chosen} unit={unit} />
      </div>
      <Paper
        make={plan}
        look={texts.lookAtPlan}
        print={texts.printPlan(roofName(model!.frame.spec))}
        title={texts.tables.cutting}
        elsewhere={openedElsewhere(state, { paper, perPage: null, plan: true })}
      />
      <div class="lp-buttons">
        <button type="button" onClick={() => void write()}>
          {texts.writeOrder}
        </button>
      </div>
      <p class="lp-note">{texts.orderPrices}</p>
    </>
  );
}

import { useEffect } from "preact/hooks";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { ChangedRoof } from "./changedRoof.tsx";
import { PieceList } from "./pieceList.tsx";
import { PieceView } from "./pieceView.tsx";
import { progress } from "./sawJob.ts";
import { newer, type SawState } from "./sawState.ts";
import type { SawStore } from "./sawStore.ts";
import { sawWords as words } from "./sawWords.ts";
import { onSwipe } from "./onSwipe.ts";
import { TapeView } from "./tapeView.tsx";
import { WrongView } from "./wrongView.tsx";

/** A job at the saw: one piece at a time, the next by swipe, arrow key or button. */
export function SawPage({ state, store }: { state: SawState; store: SawStore }) {
  const { view, job, roof, cards, card, says } = state;
  const { model } = roof.value;
  const { unit } = model.frame.spec;
  const { done, all } = progress(job.value, model);
  const at = cards.value.indexOf(card.value);
  const beside = (by: -1 | 1) => cards.value[at + by];
  const go = (by: -1 | 1) => {
    const next = cards.value[state.cards.value.indexOf(state.card.value) + by];
    if (!next || view.value !== "piece") return;
    says.value = "";
    state.set((one) => ({ ...one, at: next.mark }));
    scrollTo(0, 0);
  };
  useEffect(() => {
    const key = (event: KeyboardEvent) => {
      if (event.target instanceof HTMLInputElement) return;
      if (event.key === "ArrowRight") go(1);
      else if (event.key === "ArrowLeft") go(-1);
    };
    addEventListener("keydown", key);
    const stop = onSwipe(document.body, (way) => go(way));
    return () => {
      removeEventListener("keydown", key);
      stop();
    };
  }, []);
  const piece = card.value.pieces[0]!;
  const names = { piece: "", tape: words.tape, wrong: words.wrong, list: words.list } as const;
  return (
    <>
      <header>
        <h1>{view.value === "piece" || view.value === "list" ? model.job || words.untitled : card.value.mark}</h1>
        <span role="status">
          {view.value === "tape" || view.value === "wrong" ? names[view.value] : words.cutOf(done, all)}
        </span>
        <progress max={all} value={done} aria-label={words.cutOf(done, all)} />
      </header>
      <main>
        {state.unkept.value && (
          <p class="caution" role="alert">
            {words.notKept}
          </p>
        )}
        {newer.value && !job.value.known.includes(newer.value) && (
          <p class="caution" role="alert">
            {words.newer(newer.value)}
          </p>
        )}
        {state.changed.value ? (
          <ChangedRoof state={state} store={store} />
        ) : view.value === "list" ? (
          <PieceList state={state} />
        ) : view.value === "tape" ? (
          <TapeView key={card.value.mark} state={state} piece={piece} />
        ) : view.value === "wrong" ? (
          <WrongView key={card.value.mark} state={state} piece={piece} />
        ) : (
          <>
            <p role="status" class="says">
              {says.value || (done === all ? words.allCut : "")}
            </p>
            <PieceView state={state} />
            <div class="words">
              <button type="button" onClick={() => (view.value = "wrong")}>
                {words.wrong}
              </button>
              {piece.member === "jack" && piece.tape !== null && (
                <button type="button" onClick={() => (view.value = "tape")}>
                  {words.tape}
                </button>
              )}
              <button type="button" onClick={() => (view.value = "list")}>
                {words.list}
              </button>
            </div>
          </>
        )}
      </main>
      {view.value === "piece" && !state.changed.value && (
        <nav aria-label={words.pieces}>
          {([-1, 1] as const).map((by) => (
            <button key={by} type="button" disabled={!beside(by)} onClick={() => go(by)}>
              <span>{by < 0 ? words.back : words.next}</span>
              <b>{beside(by)?.mark ?? ""}</b>{" "}
              <span>{beside(by) && nonBreaking(lengthText(beside(by)!.pieces[0]!.longPoint, unit))}</span>
            </button>
          ))}
        </nav>
      )}
    </>
  );
}

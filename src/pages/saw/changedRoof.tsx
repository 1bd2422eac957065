import { batch } from "@preact/signals";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { lengthText } from "../../measure/lengthText.ts";
import type { Hand } from "../../roof/frame/piece.ts";
import { stampOf } from "../packet/packetAsked.ts";
import { newSawJob, withRoof } from "./sawJob.ts";
import type { SawState } from "./sawState.ts";
import type { SawStore } from "./sawStore.ts";
import { sawWords as words } from "./sawWords.ts";

/** The roof came changed from the sheet: which ticked pieces still serve, and three ways on. Nothing is changed before one is chosen. */
export function ChangedRoof({ state, store }: { state: SawState; store: SawStore }) {
  const { roof, change } = state.changed.value!;
  const { unit } = roof.model.frame.spec;
  const length = (value: number) => nonBreaking(lengthText(value, unit));
  const named = (mark: string, hand: Hand) => `${mark} ${words.hands[hand].toLowerCase()}`.trim();
  const leave = (how: () => void) =>
    batch(() => {
      how();
      state.changed.value = null;
    });
  return (
    <>
      <h2>{words.changedTitle}</h2>
      <p>{words.changedLead(state.job.value.cuts.length)}</p>
      <ul>
        <li>{words.serve(change.serve.length)}</li>
        {change.recuts.map(({ count, from, hand, mark, off, longPoint }) => (
          <li key={`${from} ${hand} ${mark} ${longPoint}`}>
            {words.recutLine(count, named(from, hand), named(mark, hand), length(off))}
          </li>
        ))}
        {change.unused.map(({ count, mark, hand, longPoint }) => (
          <li key={`${mark} ${hand} ${longPoint}`}>{words.unused(count, named(mark, hand), length(longPoint))}</li>
        ))}
      </ul>
      <button type="button" class="main" onClick={() => leave(() => state.set((job) => withRoof(job, roof, change)))}>
        {words.goOn}
      </button>
      <button
        type="button"
        onClick={() => leave(() => state.set((job) => ({ ...job, known: [...job.known, stampOf(roof)] })))}
      >
        {words.stay}
      </button>
      <button
        type="button"
        onClick={() =>
          leave(() => {
            state.id.value = store.freeId();
            state.set(() => newSawJob(roof));
          })
        }
      >
        {words.another}
      </button>
    </>
  );
}

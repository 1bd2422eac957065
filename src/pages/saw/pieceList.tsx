import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { HANDS } from "../../roof/frame/piece.ts";
import { stampOf } from "../packet/packetAsked.ts";
import { doneOf, type SawJob } from "./sawJob.ts";
import { offlineWords } from "../bench/offlineWords.ts";
import { offline, type SawState } from "./sawState.ts";
import { sawWords as words } from "./sawWords.ts";

/** All pieces in cutting order, each with how many are cut. */
export function PieceList({ state }: { state: SawState }) {
  const { job, cards, card, roof, view } = state;
  const { unit } = roof.value.model.frame.spec;
  return (
    <>
      <div class="words">
        {(Object.keys(words.orders) as SawJob["order"][]).map((order) => (
          <button
            key={order}
            type="button"
            aria-pressed={job.value.order === order}
            onClick={() => state.set((one) => ({ ...one, order }))}
          >
            {words.orders[order]}
          </button>
        ))}
      </div>
      <ul class="list">
        {cards.value.map((one) => {
          const counts = one.pieces.flatMap((piece) =>
            HANDS.filter((hand) => piece[hand] > 0).map((hand) => {
              const done = Math.min(piece[hand], doneOf(job.value, piece.mark, hand));
              const name = one.pieces.length > 1 ? piece.mark : words.hands[hand];
              return `${name} ${words.of(done, piece[hand])}`.trim();
            }),
          );
          return (
            <li key={one.mark}>
              <button
                type="button"
                aria-current={one === card.value}
                onClick={() => {
                  state.set((now) => ({ ...now, at: one.mark }));
                  view.value = "piece";
                  scrollTo(0, 0);
                }}
              >
                <b>{one.mark}</b> <span class="soft">{one.cards[0]!.title}</span>
                <strong>{nonBreaking(lengthText(one.pieces[0]!.longPoint, unit))}</strong>
                <span>{counts.join(", ")}</span>
              </button>
            </li>
          );
        })}
      </ul>
      <p class="soft" role="status">
        {offline.value && offlineWords.states[offline.value]}
      </p>
      <p class="soft">{words.stamp(stampOf(roof.value))}</p>
      <button type="button" onClick={() => (view.value = "piece")}>
        {words.done}
      </button>
    </>
  );
}

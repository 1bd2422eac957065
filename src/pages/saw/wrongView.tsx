import { useSignal } from "@preact/signals";
import { smallLength } from "../../../functions/arguments/smallLength.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Failure } from "../../measure/result.ts";
import { readLengthCell } from "../../registry/readLengthCell.ts";
import { newReading } from "../../registry/reading.ts";
import { HANDS, type Hand, type Piece } from "../../roof/frame/piece.ts";
import { Entry } from "./entry.tsx";
import { tick } from "./sawJob.ts";
import type { SawState } from "./sawState.ts";
import { sawWords as words } from "./sawWords.ts";
import { canBecome, waysOut, type Way } from "./wrongCut.ts";

/** A board that was cut wrong: what it can still become. */
export function WrongView({ state, piece }: { state: SawState; piece: Piece }) {
  const { model } = state.roof.value;
  const { unit } = model.frame.spec;
  const hands = HANDS.filter((one) => piece[one] > 0);
  const hand = useSignal<Hand>(hands[0]!);
  const typed = useSignal("");
  const chosen = useSignal(0);
  const length = (value: number) => nonBreaking(smallLength(value, unit));
  const leave = (says: string) => {
    state.says.value = says;
    state.view.value = "piece";
  };
  if (!canBecome(piece))
    return (
      <>
        <p>{words.cannot}</p>
        <button type="button" onClick={() => leave("")}>
          {words.done}
        </button>
      </>
    );
  const text = typed.value.trim();
  const read = text === "" ? null : readLengthCell(text, newReading("longPoint", unit), { example: "55 7/16" });
  const cut = read === null || read instanceof Failure ? null : read;
  const ways = cut === null ? [] : waysOut(model, state.job.value, piece, { hand: hand.value, longPoint: cut });
  const way = ways[Math.min(chosen.value, ways.length - 1)];
  return (
    <>
      {hands.length > 1 && (
        <fieldset>
          <legend>{words.whichHand}</legend>
          {hands.map((one) => (
            <label key={one}>
              <input type="radio" name="hand" checked={hand.value === one} onChange={() => (hand.value = one)} />{" "}
              {words.hands[one]}
            </label>
          ))}
        </fieldset>
      )}
      <Entry
        label={words.cutAt}
        beside={words.shouldBe(nonBreaking(lengthText(piece.longPoint, unit)))}
        value={typed.value}
        wrong={read instanceof Failure ? fieldText(read, true) : ""}
        change={(value) => {
          typed.value = value;
          chosen.value = 0;
        }}
      />
      {cut !== null && <p role="status">{ways.length === 0 ? words.makesNone : words.stillMakes}</p>}
      <div class="ways" role="radiogroup" aria-label={words.stillMakes}>
        {ways.map((one, i) => (
          <button
            key={`${one.piece.mark} ${one.hand}`}
            type="button"
            role="radio"
            aria-checked={one === way}
            onClick={() => (chosen.value = i)}
          >
            <b>{nameOf(one)}</b> <span class="soft">{words.needed(one.open)}</span>
            <span>{howText(one, length, unit)}</span>
          </button>
        ))}
      </div>
      {way && (
        <button
          type="button"
          class="main"
          onClick={() => {
            state.set((job) => tick(job, way.piece, way.hand));
            leave(words.made(nameOf(way)));
          }}
        >
          {words.make(nameOf(way))}
        </button>
      )}
      <button type="button" onClick={() => leave(words.unticked)}>
        {words.scrap}
      </button>
    </>
  );
}

const nameOf = ({ piece, hand }: Way) => `${piece.mark} ${words.hands[hand].toLowerCase()}`;

function howText({ lost, turn, short }: Way, length: (value: number) => string, unit: "in" | "mm"): string {
  const unseen = unit === "mm" ? 0.5 : 1 / 32;
  if (short > unseen) return words.shortBy(length(short));
  if (turn > 0) return words.turn(length(turn), length(Math.max(0, lost - turn)));
  return lost > unseen ? words.take(length(lost)) : words.asIs;
}

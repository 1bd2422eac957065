import { useEffect, useRef } from "preact/hooks";
import { useSignal } from "@preact/signals";
import { longPointFace } from "../../drawing/packet/longPointFace.ts";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import type { CutCard } from "../../drawing/cards/cutCard.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { HANDS, type Hand, type Piece } from "../../roof/frame/piece.ts";
import { doneOf, tick, untick } from "./sawJob.ts";
import type { SawState } from "./sawState.ts";
import { sawWords as words } from "./sawWords.ts";

/** More boards than this are counted, not drawn. */
const DRAWN = 12;

/** One piece: its length, how it is cut, and its boards to tick. */
export function PieceView({ state }: { state: SawState }) {
  const { mark, pieces, cards } = state.card.value;
  const [card] = cards as readonly [CutCard, ...CutCard[]];
  const { recuts } = state.job.value;
  const { unit, correction, endCorrection } = state.roof.value.model.frame.spec;
  const own = new Set(pieces.map((piece) => piece.mark));
  const length = (value: number) => nonBreaking(lengthText(value, unit));
  return (
    <>
      <h2>
        {mark} <small>{card.title}</small>
      </h2>
      <dl class="figures">
        {card.figures.map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{nonBreaking(value)}</dd>
          </div>
        ))}
      </dl>
      {recuts
        .filter((one) => own.has(one.mark))
        .map((one) => (
          <p key={`${one.from} ${one.hand} ${one.longPoint}`} class="caution">
            {words.recut(one.count, one.from, length(one.off))}
          </p>
        ))}
      <div class="hands">
        {pieces.flatMap((piece) =>
          HANDS.filter((hand) => piece[hand] > 0).map((hand) => (
            <Boards key={`${piece.mark} ${hand}`} state={state} piece={piece} hand={hand} many={pieces.length > 1} />
          )),
        )}
      </div>
      {cards.map((one, i) => (
        <Card key={i} card={one} />
      ))}
      {(correction !== 0 || endCorrection !== 0) && pieces.some(({ member }) => member === "jack") && (
        <p class="soft">{words.corrected(length(correction), length(endCorrection))}</p>
      )}
      <p class="soft">{words.cautions}</p>
    </>
  );
}

function Card({ card }: { card: CutCard }) {
  const place = useRef<HTMLDivElement>(null);
  const width = useSignal(0);
  useEffect(() => {
    const observer = new ResizeObserver(() => (width.value = place.current?.clientWidth ?? 0));
    observer.observe(place.current!);
    return () => observer.disconnect();
  }, []);
  return (
    <>
      <div
        ref={place}
        class="drawing"
        dangerouslySetInnerHTML={{ __html: width.value > 0 ? card.drawing(Math.max(300, width.value), true) : "" }}
      />
      <ol>
        {card.steps.map((step) => (
          <li key={step}>{nonBreaking(step)}</li>
        ))}
      </ol>
      {card.notes.length > 0 && (
        <ul>
          {card.notes.map((note) => (
            <li key={note}>{nonBreaking(note)}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** The boards of one hand, slanted as they are cut: filled and ticked means cut. */
function Boards({ state, piece, hand, many }: { state: SawState; piece: Piece; hand: Hand; many: boolean }) {
  const { job, roof } = state;
  const { unit } = roof.value.model.frame.spec;
  const all = piece[hand];
  const done = Math.min(all, doneOf(job.value, piece.mark, hand));
  const face = longPointFace(piece, hand);
  const more = () => state.set((one) => tick(one, piece, hand));
  const less = () => state.set((one) => untick(one, piece.mark, hand));
  const others = job.value.cuts.filter(
    (cut) =>
      cut.mark === piece.mark &&
      cut.hand === hand &&
      lengthText(cut.longPoint, unit) !== lengthText(piece.longPoint, unit),
  );
  const name = [many ? piece.mark : "", words.hands[hand]].filter((one) => one !== "").join(" ") || piece.mark;
  return (
    <section class="boards" aria-label={`${piece.mark} ${words.hands[hand]}`.trim()}>
      <h3>
        {name} <span role="status">{words.of(done, all)}</span>
      </h3>
      {face && <p class="soft">{words.face(face)}</p>}
      {all <= DRAWN ? (
        <div class="row">
          {Array.from({ length: all }, (_, i) => (
            <button
              key={i}
              type="button"
              class={`board ${face ?? "square"}`}
              aria-pressed={i < done}
              aria-label={words.board(piece.mark, words.hands[hand].toLowerCase(), i + 1)}
              onClick={() => (i < done ? less() : more())}
            >
              <svg viewBox="0 0 40 88" aria-hidden="true">
                <path
                  d={face === "left" ? "M3 3L37 20V85H3z" : face === "right" ? "M37 3L3 20V85H37z" : "M3 3H37V85H3z"}
                />
                {i < done && <path class="tick" d="M11 52l7 9l13 -20" />}
              </svg>
            </button>
          ))}
        </div>
      ) : (
        <div class="row">
          <button type="button" disabled={done === 0} onClick={less}>
            {words.oneLess}
          </button>
          <button type="button" class="main" disabled={done === all} onClick={more}>
            {words.oneMore}
          </button>
        </div>
      )}
      {others.length > 0 && (
        <p class="soft">
          {words.otherLength(
            others.length,
            [...new Set(others.map((cut) => nonBreaking(lengthText(cut.longPoint, unit))))].join(", "),
          )}
        </p>
      )}
    </section>
  );
}

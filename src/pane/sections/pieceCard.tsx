import { useEffect, useRef } from "preact/hooks";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { Drawing } from "../controls/drawing.tsx";
import { pick } from "../state/looking.ts";
import type { RoofState } from "../state/paneState.ts";
import { laterTexts } from "../words/laterTexts.ts";
import { cardsOf } from "../writing/cards.ts";
import { cardsGiven } from "../writing/packetOf.ts";

/** The card of the piece that was pressed: its lengths, its cuts, where it goes; with the way to the one before and the next. */
export function PieceCard({ state }: { state: RoofState }) {
  const { looking } = state;
  const picked = looking.picked.value!;
  const place = useRef<HTMLElement>(null);
  const from = useRef<Element | null>(null);
  const close = () => {
    looking.picked.value = null;
    if (from.current instanceof HTMLElement) from.current.focus();
  };
  useEffect(() => {
    from.current = document.activeElement;
    place.current!.focus({ preventScroll: true });
  }, []);
  const model = state.report.value.model;
  const pieces = model?.pieces ?? [];
  const at = pieces.findIndex(({ mark }) => mark === picked.mark);
  // The roof has changed, and no such piece is left.
  useEffect(() => void (model && at < 0 && (looking.picked.value = null)), [model, at]);
  if (!model || at < 0) return null;
  const go = (by: number) => pick(looking, pieces, picked.mark, picked.hand, by);
  const mark = (by: number) => pieces[(at + by + pieces.length) % pieces.length]!.mark;
  // A hip has a second card, with the marks of its jacks.
  const cards = cardsOf(model, cardsGiven(state), "screen").filter((card) =>
    card.mark.split(", ").includes(picked.mark),
  );
  const [card] = cards;
  if (!card) return null;
  return (
    <section
      ref={place}
      class="lp-card"
      aria-label={laterTexts.cardOf(picked.mark)}
      tabIndex={-1}
      onKeyDown={(event) => {
        const act = { Escape: close, ArrowLeft: () => go(-1), ArrowRight: () => go(1) }[event.key];
        if (!act) return;
        event.preventDefault();
        event.stopPropagation();
        act();
      }}
    >
      <header>
        <h2>
          {picked.mark} {picked.hand === "plain" ? "" : picked.hand}
        </h2>
        <p aria-live="polite">
          {card.title}; {card.counts.map(({ name, count }) => `${name} ${count}`).join(", ")}
        </p>
        <button type="button" class="lp-word" aria-label={laterTexts.before(mark(-1))} onClick={() => go(-1)}>
          ← {mark(-1)}
        </button>
        <button type="button" class="lp-word" aria-label={laterTexts.next(mark(1))} onClick={() => go(1)}>
          {mark(1)} →
        </button>
        <button type="button" class="lp-word" aria-label={laterTexts.close} onClick={close}>
          ×
        </button>
      </header>
      <div class="lp-cardbody" tabIndex={0} role="group" aria-label={laterTexts.cardOf(picked.mark)}>
        <dl>
          {card.figures.map(({ name, value }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        <Drawing draw={(width) => card.drawing(Math.min(width, 640), true)} />
        <ol>
          {cards
            .flatMap(({ steps }) => steps)
            .map((step) => (
              <li key={step}>{nonBreaking(step)}</li>
            ))}
        </ol>
        {card.notes.map((note) => (
          <p key={note} class="lp-note">
            {nonBreaking(note)}
          </p>
        ))}
      </div>
    </section>
  );
}

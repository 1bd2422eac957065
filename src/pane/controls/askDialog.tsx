import { useSignal } from "@preact/signals";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { PaneState, Question } from "../state/paneState.ts";

/** Asks before anything is written. Escape is the way out; the focus goes back to where it was. */
export function AskDialog({ state }: { state: PaneState }) {
  const question = state.question.value;
  return question ? <Asked key={question.title} question={question} /> : null;
}

function Asked({ question }: { question: Question }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const sure = useSignal<string | null>(null);
  // In the same turn as the dialog comes and goes, for a key pressed in between would go nowhere. Closing it gives the focus back.
  useLayoutEffect(() => {
    const shown = dialog.current!;
    shown.showModal();
    return () => shown.close();
  }, []);
  const out = question.choices.at(-1)!.id;
  return (
    <dialog
      ref={dialog}
      aria-labelledby="lp-ask"
      onCancel={(event) => {
        event.preventDefault();
        question.answer(out);
      }}
    >
      <h2 id="lp-ask">{question.title}</h2>
      {question.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <div class="lp-choices">
        {question.choices.map(({ id, label, sure: words }) => (
          <button
            key={id}
            type="button"
            class={id === out ? "lp-quiet" : undefined}
            onClick={() => (words && sure.value !== id ? (sure.value = id) : question.answer(id))}
          >
            {sure.value === id && words ? words : label}
          </button>
        ))}
      </div>
    </dialog>
  );
}

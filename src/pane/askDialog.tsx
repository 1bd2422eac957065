import { useSignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { PaneState, Question } from "./paneState.ts";

/** Asks before anything is written. Escape is the way out; the focus goes back to where it was. */
export function AskDialog({ state }: { state: PaneState }) {
  const question = state.question.value;
  return question ? <Asked key={question.title} question={question} /> : null;
}

function Asked({ question }: { question: Question }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const sure = useSignal<string | null>(null);
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    return () => void (before instanceof HTMLElement && before.focus());
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
          <button key={id} type="button" class={id === out ? "lp-quiet" : undefined} onClick={() => (words && sure.value !== id ? (sure.value = id) : question.answer(id))}>
            {sure.value === id && words ? words : label}
          </button>
        ))}
      </div>
    </dialog>
  );
}

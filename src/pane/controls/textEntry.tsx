import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import type { ComponentChildren } from "preact";

/** What may be typed into a field outside the roof block; longer texts are slips. */
const LONGEST = 200;

/** A text under its label; `reads` is the id of what says how it was read or why not. */
export function TextEntry({
  label,
  value,
  wrong = false,
  reads,
  change,
  children,
}: {
  label: string;
  value: string;
  wrong?: boolean;
  reads: string;
  change: (text: string) => void;
  children?: ComponentChildren;
}) {
  return (
    <label>
      {label}
      <input
        type="text"
        autocomplete="off"
        maxLength={LONGEST}
        value={value}
        aria-invalid={wrong}
        aria-describedby={reads}
        onInput={(event) => change(event.currentTarget.value)}
      />
      {children}
    </label>
  );
}

/** Why what was typed cannot be used; there, but hidden, while it can, so that fields can point to it; `of` names the field. */
export function Wrong({ id, words, of }: { id: string; words: string; of?: string }) {
  return (
    <p id={id} class="lp-wrong" hidden={words === ""}>
      {of !== undefined && <b>{of} </b>}
      {nonBreaking(words)}
    </p>
  );
}

import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";

/** A section of the pane that is folded away until it is wanted; what is in it is not made before. */
export function Fold({ title, children }: { title: string; children: () => ComponentChildren }) {
  const open = useSignal(false);
  return (
    <section>
      <details onToggle={(event) => (open.value = event.currentTarget.open)}>
        <summary>
          <h2>{title}</h2>
        </summary>
        {open.value && children()}
      </details>
    </section>
  );
}

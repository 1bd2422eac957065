import { useSignal } from "@preact/signals";
import { PrintFrame } from "./printFrame.tsx";

/** A paper to be looked at on the screen, and printed: two buttons, and what the first one shows. */
export function Paper({
  make,
  look,
  print,
  title,
  elsewhere,
}: {
  make: () => string;
  look: string;
  print: string;
  title: string;
  /** Opens what the first makes in the system's browser, where the pane may not print. */
  elsewhere: (() => void) | undefined;
}) {
  const printed = useSignal<string | null>(null);
  const seen = useSignal(false);
  return (
    <>
      <div class="lp-buttons">
        <button type="button" aria-expanded={seen.value} onClick={() => (seen.value = !seen.value)}>
          {look}
        </button>
        <button type="button" class="lp-main" onClick={() => (printed.value = make())}>
          {print}
        </button>
      </div>
      {seen.value && <iframe class="lp-look" title={look} srcdoc={make()} />}
      <PrintFrame page={printed.value} title={title} elsewhere={elsewhere} done={() => (printed.value = null)} />
    </>
  );
}

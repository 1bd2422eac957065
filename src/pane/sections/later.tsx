import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { PaneState } from "../state/paneState.ts";
import { laterTexts } from "../words/laterTexts.ts";

type Parts = typeof import("./laterParts.ts");

/** The parts that are seen: each takes the state and nothing else. */
type Section = "CardSection" | "CheckSection" | "CompareSection" | "OrderSection" | "PieceCard";

/** What is not needed at first; null until it is loaded. */
export const laterParts = signal<Parts | null>(null);

const failed = signal(false);
let loading: Promise<void> | null = null;

/** Loads the parts unless they are there or on their way. */
export function load(): Promise<void> {
  return (loading ??= loadNow());
}

async function loadNow(): Promise<void> {
  failed.value = false;
  try {
    laterParts.value = await import(/* webpackChunkName: "parts" */ "./laterParts.ts");
  } catch {
    failed.value = true;
    loading = null;
  }
}

/** A section out of the parts, and until they are there that they are waited for. */
export function Later({ part, state }: { part: Section; state: PaneState }) {
  const Part = laterParts.value?.[part];
  return Part ? <Part state={state} /> : <Waiting />;
}

/** Loads the parts and says how that goes. */
export function Waiting() {
  useEffect(() => void load(), []);
  return (
    <div role="status">
      <p class="lp-note">{failed.value ? laterTexts.notLoaded : laterTexts.loading}</p>
      {failed.value && (
        <button type="button" onClick={() => void load()}>
          {laterTexts.again}
        </button>
      )}
    </div>
  );
}

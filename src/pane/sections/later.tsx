import { signal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import { laterTexts } from "../words/laterTexts.ts";

type Parts = typeof import("./laterParts.ts");

/** What is not needed at first; null until it is loaded. */
export const laterParts = signal<Parts | null>(null);

const failed = signal(false);
let loading = false;

/** Loads the parts unless they are there or on their way. */
async function load(): Promise<void> {
  if (loading || laterParts.value) return;
  loading = true;
  failed.value = false;
  try {
    laterParts.value = await import(/* webpackChunkName: "parts" */ "./laterParts.ts");
  } catch {
    failed.value = true;
  }
  loading = false;
}

/** Loads the parts once the page has nothing else to do, so that nobody waits for them. */
export function loadWhenIdle(): void {
  // Safari has no requestIdleCallback.
  if ("requestIdleCallback" in globalThis) requestIdleCallback(() => void load(), { timeout: 1000 });
  else setTimeout(() => void load(), 200);
}

/** A section out of the parts, and until they are there that they are waited for. */
export function Later({ children }: { children: (parts: Parts) => ComponentChildren }) {
  return laterParts.value ? <>{children(laterParts.value)}</> : <Waiting />;
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

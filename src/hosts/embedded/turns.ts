/** Milliseconds of work after which the page gets its turn. */
const WORK = 40;

/**
 * Long work in turns with the page, so that a key pressed meanwhile is not felt to wait: to be called between its parts.
 *
 * @throws the signal's reason once it asks to stop.
 */
export function turns(signal?: AbortSignal): () => Promise<void> {
  let since = performance.now();
  return async () => {
    signal?.throwIfAborted();
    if (performance.now() - since < WORK) return;
    await new Promise((resolve) => setTimeout(resolve));
    signal?.throwIfAborted();
    since = performance.now();
  };
}

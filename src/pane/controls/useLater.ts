import { effect, useSignal, type ReadonlySignal } from "@preact/signals";
import { useEffect } from "preact/hooks";

/** A value that follows its signal once the page has shown the next frame: for what is not looked at while someone types. */
export function useLater<T>(of: ReadonlySignal<T>): T {
  const shown = useSignal(of.peek());
  useEffect(
    () =>
      effect(() => {
        const next = of.value;
        if (next === shown.peek()) return;
        let timer = 0;
        const frame = requestAnimationFrame(() => (timer = window.setTimeout(() => (shown.value = next))));
        return () => {
          cancelAnimationFrame(frame);
          clearTimeout(timer);
        };
      }),
    [of],
  );
  return shown.value;
}

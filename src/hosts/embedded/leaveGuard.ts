import type { EmbeddedSheet } from "./runningSheet.ts";
import { onEdit } from "./onEdit.ts";

/** Has the browser ask before the page is left with edits that no file has: the page itself keeps nothing. */
export function leaveGuard({ univer }: EmbeddedSheet): { readonly saved: () => void } {
  let edited = false;
  onEdit(univer.__getInjector(), (now) => (edited ||= now));
  addEventListener("beforeunload", (event) => {
    if (edited) event.preventDefault();
  });
  return { saved: () => void (edited = false) };
}

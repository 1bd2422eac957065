/** What the keys of the whole page do. */
export interface PageActions {
  /** Ends an open edit of a cell; what was typed is kept. */
  commit(): Promise<void>;
  save(): void;
  print(): void;
  find(): void;
}

/** The page's parts in the order in which F6 goes through them. */
const PARTS = ["files", "sheet", "pane"] as const;

const CAN_BE_IN =
  'button:not([disabled]), input:not([disabled]):not([type=file]), select:not([disabled]), textarea, a[href], summary, [tabindex="0"]';

/**
 * F6 leaves the sheet, which keeps Tab for its cells, and comes back in (WCAG 2.1.2); Ctrl+S, Ctrl+P and Ctrl+F work on the sheet and not
 * on the page around it.
 */
export function pageKeys({ commit, save, print, find }: PageActions): void {
  const ctrl: Record<string, () => void> = { s: save, p: print, f: find };
  addEventListener(
    "keydown",
    (event) => {
      const does = action(event, ctrl);
      if (!does) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      // At once: a key pressed while an edit ends would go into the cell.
      if (event.key === "F6") moveFocus(event.shiftKey ? -1 : 1);
      void commit().then(does);
    },
    { capture: true },
  );
}

function action(event: KeyboardEvent, ctrl: Readonly<Record<string, () => void>>): (() => void) | undefined {
  const { key, altKey, ctrlKey, metaKey, shiftKey } = event;
  if (altKey) return undefined;
  if (key === "F6" && !ctrlKey && !metaKey) return () => {};
  // A dialog of the page has the keyboard for itself.
  if ((ctrlKey || metaKey) && !shiftKey && !document.querySelector("dialog[open]")) return ctrl[key.toLowerCase()];
  return undefined;
}

/** Moves the keyboard to the next part of the page, or the one before. */
function moveFocus(by: 1 | -1): void {
  const active = document.activeElement;
  const at = PARTS.findIndex((id) => document.getElementById(id)!.contains(active));
  // The sheet has its editors outside its own box: what is in none of the others is the sheet's.
  const here = at >= 0 ? at : PARTS.indexOf("sheet");
  for (let step = 1; step <= PARTS.length; step++) {
    const next = PARTS[(here + by * step + PARTS.length * step) % PARTS.length]!;
    const target = next === "sheet" ? sheetInput() : firstIn(document.getElementById(next)!);
    if (!target) continue;
    target.focus();
    return;
  }
}

/** Puts the keyboard into the sheet, at the cell it was in last. */
export function focusSheet(): void {
  sheetInput()?.focus();
}

/** Where the sheet listens to the keyboard. */
function sheetInput(): HTMLElement | null {
  return document.querySelector<HTMLElement>('#sheet [contenteditable="true"], [contenteditable="true"]');
}

function firstIn(part: HTMLElement): HTMLElement | undefined {
  return [...part.querySelectorAll<HTMLElement>(CAN_BE_IN)].find((one) => one.checkVisibility());
}

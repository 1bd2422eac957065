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
 * on the page around it. In the pane Ctrl+P is the browser's, whose print of the page is the roof.
 */
export function pageKeys({ commit, save, print, find }: PageActions): void {
  let wanted: Element | null;
  /** Moves the keyboard at once, for a key pressed while an edit ends would go into the cell. */
  const moving = (move: () => void) => () => {
    move();
    const target = (wanted = document.activeElement);
    // A sheet whose edit ends takes the keyboard back.
    void commit().then(() => {
      if (target === wanted && target instanceof HTMLElement && partOf(document.activeElement) === "sheet")
        target.focus();
    });
  };
  const ctrl: Record<string, () => void> = {
    s: () => void commit().then(save),
    p: () => void commit().then(print),
    f: moving(find),
  };
  addEventListener(
    "keydown",
    (event) => {
      const does =
        event.key === "F6" ? moving(() => moveFocus(event.shiftKey ? -1 : 1)) : ctrl[event.key.toLowerCase()];
      if (!does || !meant(event)) return;
      if (event.key.toLowerCase() === "p" && partOf(document.activeElement) === "pane") return;
      event.preventDefault();
      event.stopImmediatePropagation();
      does();
    },
    { capture: true },
  );
}

/** Whether one of this page's keys is pressed as such: F6 alone, a letter with Ctrl or ⌘. */
function meant({ key, altKey, ctrlKey, metaKey, shiftKey }: KeyboardEvent): boolean {
  if (altKey) return false;
  if (key === "F6") return !ctrlKey && !metaKey;
  // A dialog of the page has the keyboard for itself.
  return (ctrlKey || metaKey) && !shiftKey && !document.querySelector("dialog[open]");
}

/** The part of the page that an element is in. The sheet has its editors outside its own box: what is in none of the others is the sheet's. */
function partOf(element: Element | null): (typeof PARTS)[number] {
  return PARTS.find((id) => document.getElementById(id)!.contains(element)) ?? "sheet";
}

/** Moves the keyboard to the next part of the page, or the one before. */
function moveFocus(by: 1 | -1): void {
  const here = PARTS.indexOf(partOf(document.activeElement));
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

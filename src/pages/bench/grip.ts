import { fileWords } from "./fileWords.ts";

/** Pixels: how narrow the pane and the sheet may become, and what an arrow key moves by. */
const LEAST = { pane: 360, sheet: 320 };
const STEP = 24;

/** Lets sheet and pane share the width: a line between them that is dragged, or moved by arrow keys. */
export function grip(element: HTMLElement, pane: HTMLElement): void {
  const words = fileWords.width;
  element.setAttribute("role", "separator");
  element.setAttribute("aria-orientation", "vertical");
  element.setAttribute("aria-label", words);
  element.tabIndex = 0;
  const set = (width: number) => {
    const most = Math.max(LEAST.pane, innerWidth - LEAST.sheet);
    const now = Math.round(Math.max(LEAST.pane, Math.min(most, width)));
    document.body.style.setProperty("--pane", `${now}px`);
    tell(now, most);
  };
  const tell = (now: number, most: number) => {
    for (const [name, value] of Object.entries({ now, min: LEAST.pane, max: most }))
      element.setAttribute(`aria-value${name}`, String(Math.round(value)));
  };
  tell(pane.clientWidth, innerWidth - LEAST.sheet);
  element.addEventListener("pointerdown", (event) => {
    event.preventDefault();
    element.setPointerCapture(event.pointerId);
  });
  element.addEventListener("pointermove", (event) => {
    if (element.hasPointerCapture(event.pointerId)) set(innerWidth - event.clientX);
  });
  element.addEventListener("keydown", (event) => {
    const by = { ArrowLeft: STEP, ArrowRight: -STEP }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    set(pane.getBoundingClientRect().width + by);
  });
}

/** Lets the pane, which then fills the window, have the keyboard alone until the returned function gives it back; Escape calls `leave`. */
export function wholeWindow(pane: HTMLElement, leave: () => void): () => void {
  const others = [...document.body.children].filter((one) => !one.contains(pane) && !one.hasAttribute("inert"));
  for (const one of others) one.toggleAttribute("inert", true);
  const onKey = (event: KeyboardEvent) => {
    // A question that stands over it is left first.
    if (event.key === "Escape" && !event.defaultPrevented && !pane.querySelector("dialog[open]")) leave();
  };
  addEventListener("keydown", onKey);
  return () => {
    removeEventListener("keydown", onKey);
    for (const one of others) one.removeAttribute("inert");
  };
}

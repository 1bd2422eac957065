/**
 * Ends the wait for a long press once a sheet's new name is typed.
 *
 * In 0.25.1 the double click that begins a name also begins that wait, and nothing ends it: a name typed within half a second leaves its
 * tab lifted out of the bar, and the whole page of the sheet fails when that sheet goes. A press of the other button ends it, and does
 * nothing else.
 */
export function releaseTabDrag(container: HTMLElement): void {
  // Its number differs by browser, and one that is not there is refused. A finger's is gone with the finger.
  let mouse: number | null = null;
  container.addEventListener(
    "pointerdown",
    ({ isTrusted, pointerType, pointerId }) => void (isTrusted && (mouse = pointerType === "mouse" ? pointerId : null)),
    true,
  );
  container.addEventListener("focusout", ({ target }) => {
    const tab = (target as Element).closest("[data-id]");
    if (!tab || mouse === null) return;
    const press = { pointerId: mouse, button: 2 };
    // The bar takes up its listening anew in between.
    setTimeout(
      () => ["pointerdown", "pointerup"].forEach((type) => tab.dispatchEvent(new PointerEvent(type, press))),
      50,
    );
  });
}

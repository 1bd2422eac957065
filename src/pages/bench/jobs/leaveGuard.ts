/** Has the browser ask before the page is left with changes that nothing keeps, and has them kept when the page goes out of sight. */
export function leaveGuard(unkept: () => boolean, keep: () => void): void {
  addEventListener("beforeunload", (event) => {
    if (unkept()) event.preventDefault();
  });
  addEventListener("pagehide", keep);
  // A tab that is not seen may be thrown away without a word.
  document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && keep());
}

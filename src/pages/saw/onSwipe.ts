/** Pixels that a finger goes at least, and how many times farther across than up or down. */
const FAR = 60;
const ACROSS = 2;

/** Calls back with 1 for a swipe to the next (to the left), -1 for one back. Returns a function that stops it. */
export function onSwipe(element: HTMLElement, swiped: (way: 1 | -1) => void): () => void {
  let start: Touch | null = null;
  const down = ({ touches }: TouchEvent) => (start = touches.length === 1 ? touches[0]! : null);
  const up = ({ changedTouches: [end] }: TouchEvent) => {
    if (!start || !end) return;
    const [x, y] = [end.clientX - start.clientX, end.clientY - start.clientY];
    start = null;
    if (Math.abs(x) >= FAR && Math.abs(x) > ACROSS * Math.abs(y)) swiped(x < 0 ? 1 : -1);
  };
  element.addEventListener("touchstart", down, { passive: true });
  element.addEventListener("touchend", up, { passive: true });
  return () => {
    element.removeEventListener("touchstart", down);
    element.removeEventListener("touchend", up);
  };
}

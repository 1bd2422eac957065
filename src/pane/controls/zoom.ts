import { useSignal, type ReadonlySignal } from "@preact/signals";
import type { RefObject } from "preact";
import { useMemo } from "preact/hooks";

/** How much larger than its room a drawing is made, and which of its pixels stands at the room's corner. */
export interface Zoom {
  readonly z: number;
  readonly x: number;
  readonly y: number;
}

const FIT: Zoom = { z: 1, x: 0, y: 0 };
const MOST = 8;
/** Pixels that an arrow key moves by. */
const STEP = 48;
/** A pointer that moved less than this pressed and did not drag. */
const STILL = 4;

/** Zooms and moves what is drawn in an element: by wheel, two fingers, dragging, and keys; where it has a `turn`, dragging and arrow keys turn it, by so many pixels, in its place. */
export function useZoom(
  place: RefObject<HTMLDivElement | null>,
  turn: () => ((dx: number, dy: number) => void) | null,
) {
  const at = useSignal(FIT);
  return useMemo(() => {
    const fingers = new Map<number, PointerEvent>();
    let moved = 0;
    const set = ({ z, x, y }: Zoom) => {
      const { clientWidth: width = 0, clientHeight: height = 0 } = place.current ?? {};
      const near = (value: number, most: number) => Math.max(0, Math.min(most, value));
      if (z <= 1) at.value = FIT;
      else at.value = { z, x: near(x, width * (z - 1)), y: near(y, height * (z - 1)) };
    };
    /** Zooms round a point of the room, its middle when left out. */
    const by = (times: number, point?: { x: number; y: number }) => {
      const { z, x, y } = at.value;
      const box = place.current!.getBoundingClientRect();
      const px = point ? point.x - box.left : box.width / 2;
      const py = point ? point.y - box.top : box.height / 2;
      const to = Math.max(1, Math.min(MOST, z * times));
      set({ z: to, x: ((x + px) * to) / z - px, y: ((y + py) * to) / z - py });
    };
    const move = (dx: number, dy: number) => set({ ...at.value, x: at.value.x + dx, y: at.value.y + dy });
    const drag = (dx: number, dy: number) => {
      const turned = turn();
      if (turned) turned(dx, dy);
      else move(-dx, -dy);
    };
    const apart = () => {
      const [a, b] = [...fingers.values()];
      return a && b ? Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY) : 0;
    };
    const keys: Record<string, () => void> = {
      "+": () => by(1.5),
      "=": () => by(1.5),
      "-": () => by(1 / 1.5),
      0: () => set(FIT),
      ArrowLeft: () => drag(STEP, 0),
      ArrowRight: () => drag(-STEP, 0),
      ArrowUp: () => drag(0, STEP),
      ArrowDown: () => drag(0, -STEP),
    };
    const listeners = {
      onWheel: (event: WheelEvent) => {
        const to = event.deltaY < 0 ? 1.2 : 1 / 1.2;
        // What is as small as it goes lets the pane scroll.
        if (event.deltaY > 0 && at.value.z <= 1) return;
        event.preventDefault();
        by(to, { x: event.clientX, y: event.clientY });
      },
      onPointerDown: (event: PointerEvent) => {
        fingers.set(event.pointerId, event);
        moved = 0;
      },
      onPointerMove: (event: PointerEvent) => {
        const before = fingers.get(event.pointerId);
        if (!before) return;
        const [dx, dy] = [event.clientX - before.clientX, event.clientY - before.clientY];
        if (Math.hypot(dx, dy) < STILL && moved === 0) return;
        moved += Math.abs(dx) + Math.abs(dy);
        const was = apart();
        fingers.set(event.pointerId, event);
        if (fingers.size === 2 && was > 0) by(apart() / was, { x: event.clientX, y: event.clientY });
        else if (at.value.z > 1 || turn()) {
          place.current!.setPointerCapture(event.pointerId);
          drag(dx, dy);
        }
      },
      onPointerUp: (event: PointerEvent) => void fingers.delete(event.pointerId),
      onPointerCancel: (event: PointerEvent) => void fingers.delete(event.pointerId),
      onPointerLeave: (event: PointerEvent) => void fingers.delete(event.pointerId),
      onKeyDown: (event: KeyboardEvent) => {
        const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
        if (!act || event.target !== place.current) return;
        event.preventDefault();
        act();
      },
      // The end of a drag is no press.
      onClickCapture: (event: MouseEvent) => {
        if (moved >= STILL) event.stopPropagation();
        moved = 0;
      },
    };
    return { at: at as ReadonlySignal<Zoom>, by, fit: () => set(FIT), listeners };
  }, []);
}

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
    /** The room, and the drawing in it: a smaller one stands in the middle. */
    const sizes = () => {
      const room = place.current!.getBoundingClientRect();
      const drawn = place.current!.querySelector("svg")?.getBoundingClientRect() ?? room;
      return { room, drawn };
    };
    /** How far the drawing may move, once it is so much larger. */
    const slack = (times = 1) => {
      const { room, drawn } = sizes();
      return { x: Math.max(0, drawn.width * times - room.width), y: Math.max(0, drawn.height * times - room.height) };
    };
    const set = ({ z, x, y }: Zoom) => {
      const most = slack(z / at.value.z);
      const near = (value: number, limit: number) => Math.max(0, Math.min(limit, value));
      const next = { z, x: near(x, most.x), y: near(y, most.y) };
      if (next.z !== at.value.z || next.x !== at.value.x || next.y !== at.value.y) at.value = next;
    };
    /** Zooms round a point of the room, its middle when left out. */
    const by = (times: number, point?: { x: number; y: number }) => {
      const { z, x, y } = at.value;
      const to = Math.max(1, Math.min(MOST, z * times));
      const { room, drawn } = sizes();
      const along = (from: number, size: number, drawn: number, px: number) => {
        const before = Math.max(0, (size - drawn) / 2);
        const after = Math.max(0, (size - (drawn * to) / z) / 2);
        return ((px - before + from) * to) / z + after - px;
      };
      const px = point ? point.x - room.left : room.width / 2;
      const py = point ? point.y - room.top : room.height / 2;
      set({ z: to, x: along(x, room.width, drawn.width, px), y: along(y, room.height, drawn.height, py) });
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
    /** The middle of two fingers stays where it is. */
    const between = () => {
      const [a, b] = [...fingers.values()] as [PointerEvent, PointerEvent];
      return { x: (a.clientX + b.clientX) / 2, y: (a.clientY + b.clientY) / 2 };
    };
    const keys: Record<string, () => void> = {
      "+": () => by(1.5),
      "=": () => by(1.5),
      "-": () => by(1 / 1.5),
      0: () => void (at.value = FIT),
      ArrowLeft: () => drag(STEP, 0),
      ArrowRight: () => drag(-STEP, 0),
      ArrowUp: () => drag(0, STEP),
      ArrowDown: () => drag(0, -STEP),
    };
    const listeners = {
      onWheel: (event: WheelEvent) => {
        const to = event.deltaY < 0 ? 1.2 : 1 / 1.2;
        const before = at.value;
        // What is higher than its room moves under the wheel, as a page does.
        if (before.z <= 1 && !event.ctrlKey && slack().y > 0) {
          move(0, event.deltaY);
          if (at.value !== before) event.preventDefault();
          return;
        }
        // What is as small as it goes lets the pane scroll.
        if (event.deltaY > 0 && before.z <= 1) return;
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
        if (fingers.size === 2 && was > 0) by(apart() / was, between());
        else if (at.value.z > 1 || slack().y > 0 || turn()) {
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
    /** Once it is drawn anew, which may be in another size than was thought. What was not moved needs no look at sizes, which lays the page out. */
    const settle = () => {
      if (at.value.x !== 0 || at.value.y !== 0) set(at.value);
    };
    return { at: at as ReadonlySignal<Zoom>, by, fit: () => void (at.value = FIT), settle, listeners };
  }, []);
}

import type { Canvas } from "./canvas.ts";
import type { Room } from "./shown.ts";

const GAP = 24;

/** Draws things side by side, in as many columns as have their least width, and rows under one another. Gives where the last row ends. */
export function inColumns<Thing>(
  canvas: Canvas,
  things: readonly Thing[],
  least: number,
  draw: (thing: Thing, room: Room) => number,
): number {
  const columns = Math.max(1, Math.min(things.length, Math.floor((canvas.width + GAP) / (least + GAP))));
  const wide = (canvas.width - (columns - 1) * GAP) / columns;
  let top = 0;
  for (let first = 0; first < things.length; first += columns) {
    const row = things
      .slice(first, first + columns)
      .map((thing, i) => draw(thing, { left: i * (wide + GAP), right: i * (wide + GAP) + wide, top }));
    top = Math.max(...row) + GAP / 2;
  }
  return top - GAP / 2;
}

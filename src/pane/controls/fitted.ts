import { drawnHeight } from "../../drawing/canvas/drawnHeight.ts";

/** A drawing this much lower than its room is not made anew. */
const NEAR = 0.94;
const AIM = 0.98;
const ROUNDS = 4;

/**
 * A way to draw as large as a room allows: the width that fits is found by drawing, and is the first guess of the next time, so that
 * a keystroke draws once.
 */
export function fitted(): (draw: (width: number) => string, width: number, height: number, least?: number) => string {
  let guess = Infinity;
  return (draw, width, height, least = LEAST) => {
    let at = Math.min(guess, width);
    let svg = draw(at);
    // The height is about a line over the width: each round goes on from the last two.
    let [before, low] = [0, 0];
    for (let round = 0; round < ROUNDS; round++) {
      const drawn = drawnHeight(svg);
      if (drawn <= height && (at >= width || drawn >= NEAR * height)) break;
      const rise = at === before ? drawn / at : (drawn - low) / (at - before);
      const next = Math.max(least, Math.min(width, at + (height * AIM - drawn) / Math.max(rise, 0.1)));
      if (Math.abs(next - at) < 1) break;
      [before, low, at] = [at, drawn, next];
      svg = draw(at);
    }
    guess = at;
    return svg;
  };
}

/** No drawing is laid out for less; in a narrower room it is shown smaller. */
export const LEAST = 200;

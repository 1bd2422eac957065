import { segmentIn, type Box, type Segment } from "./segment.ts";

/** Width in pixels of the upright strips by which lines are found. */
const STRIP = 24;

/** Lines of a sheet, found by where they are: a dense plan has thousands, and many places are tried for each of its marks. */
export class LineIndex {
  readonly #strips = new Map<number, Segment[]>();

  add(segment: Segment): void {
    const [a, b] = segment;
    const last = Math.floor(Math.max(a.x, b.x) / STRIP);
    for (let strip = Math.floor(Math.min(a.x, b.x) / STRIP); strip <= last; strip++) {
      const known = this.#strips.get(strip);
      if (known) known.push(segment);
      else this.#strips.set(strip, [segment]);
    }
  }

  /** Whether any line runs through a box. */
  crosses(box: Box): boolean {
    const { left, right, top, bottom } = box;
    const last = Math.floor(right / STRIP);
    for (let strip = Math.floor(left / STRIP); strip <= last; strip++)
      for (const segment of this.#strips.get(strip) ?? []) {
        const [a, b] = segment;
        // Most are on one side of it.
        if ((a.y < top && b.y < top) || (a.y > bottom && b.y > bottom)) continue;
        if ((a.x < left && b.x < left) || (a.x > right && b.x > right)) continue;
        if (segmentIn(segment, box) !== null) return true;
      }
    return false;
  }
}

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
    const last = Math.floor(box.right / STRIP);
    for (let strip = Math.floor(box.left / STRIP); strip <= last; strip++) {
      if (this.#strips.get(strip)?.some((segment) => segmentIn(segment, box) !== null)) return true;
    }
    return false;
  }
}

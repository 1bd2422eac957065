/** A point of a drawing plane: a plan, a side view or a top view. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

import type { BoardSearch } from "./boardSearch.ts";

/** Asked at every pause: is the work allowed done, after so many steps? */
export type Spent = (steps: number) => boolean;

/** Asked for the steps of a part of the work, which count as those of the search so far; the part may take so many at most. */
export function partOf(search: BoardSearch, spent: Spent, most = Infinity): Spent {
  const before = search.steps;
  return (steps) => spent((search.steps = before + steps)) || steps > most;
}

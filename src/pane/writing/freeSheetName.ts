import { firstFree } from "../../measure/firstFree.ts";

/** The wished name, or the first of "name 2", "name 3" ... that no sheet has. */
export function freeSheetName(wish: string, taken: readonly string[]): string {
  return firstFree(taken, (n) => (n === 1 ? wish : `${wish} ${n}`));
}

import type { OwnProblem } from "../problem.ts";
import type { Words } from "./words.ts";

/** Problems of single functions. */
export const ownWords: Words<OwnProblem> = {
  "no triangle": ({ least, most }, say) => [
    `with these sides it lies between ${say.least(least)} and ${say.most(most)}`,
    "Measure the diagonal between the ends of the two sides again",
  ],
  "blocks of two units": () => [
    "the old block and this one are in different units",
    "Type both in inches, or both in millimeters",
  ],
  "no such piece": ({ mark, marks }, say) => [
    `the roof has no jack or cripple ${say.typed(mark)} that can be cut over`,
    `Type one of ${marks.slice(0, 12).join(", ")}${marks.length > 12 ? " ..." : ""}, or leave it out`,
  ],
  "sides differ": () => [
    "the main and end jacks of this roof differ",
    "Type Main or End, whichever the jack was cut for",
  ],
};

import { lengthText } from "../../src/measure/lengthText.ts";
import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import type { Words } from "./words.ts";

/** Why pieces cannot be cut from boards. */
export const stockWords: Words<StockProblem> = {
  "no pieces": () => ["there is no piece to cut", "Type how many under Count"],
  "no board of that size": ({ size, name, row }) => [
    `there is none of ${size}, which ${name} is cut from (pieces${row === null ? "" : `, row ${row}`})`,
    "Add a row for that size, or type a plain list of lengths for every size",
  ],
  "piece too long": ({ name, size, length, needs, longest }, { unit, least }) => [
    `${name} is ${lengthText(length, unit, 16)} long and takes a ${size} of ${least(needs)}; the longest board is ${lengthText(longest, unit, 16)}`,
    "Add a longer board to boards, or splice the piece as the local code allows",
  ],
  "head longer than piece": ({ name, length }, { unit }) => [
    `${name} is ${lengthText(length, unit, 16)} long, and its slanting head takes more than that`,
    "Type a smaller Saw tilt or a longer Length",
  ],
  "too few boards": ({ size }) => [
    `there are not enough of ${size}; no way of cutting gets all pieces out of them`,
    "Raise a Count, or add boards",
  ],
  "no way found": ({ size }) => [
    `no way was found to get all pieces out of the ${size} there are, in the time that a cell may take`,
    "Raise a Count, or add boards",
  ],
  "no board long enough": ({ length, longest }, say) => [
    `${say.length(length)} is longer than the longest board, ${say.length(longest)}`,
    "Type a longer length under boards, or splice the piece as the local code allows",
  ],
};

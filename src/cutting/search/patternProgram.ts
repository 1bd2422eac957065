import { LinearProgram } from "./linearProgram.ts";
import type { Pattern, Problem } from "../model/problem.ts";

/** A linear program with a row for the demand of each item, and one for each type of board that is limited, and what adds a pattern to it. */
export function patternProgram({ items, types }: Problem) {
  const limited = types.flatMap((type, j) => (type.count < Infinity ? [j] : []));
  const program = new LinearProgram([
    ...items.map((item) => ({ lower: item.demand, upper: Infinity, cost: 0 })),
    ...limited.map((j) => ({ lower: 0, upper: types[j]!.count, cost: 0 })),
  ]);
  const add = ({ type, items: own, copies }: Pattern, cost: number): void => {
    const row = limited.indexOf(type);
    const limit = row < 0 ? [] : [items.length + row];
    program.add([...own, ...limit], [...copies, ...limit.map(() => 1)], { lower: 0, upper: Infinity, cost });
  };
  return { program, limited, add };
}

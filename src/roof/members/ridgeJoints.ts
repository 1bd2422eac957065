/** A board that a part of the ridge can be cut from, and what it costs. */
export interface RidgeBoard {
  readonly length: number;
  readonly cost: number;
}

/** A part fits when it is longer than its board by no more than this part of it: the last bit of a double must not refuse it. */
const SLACK = 1e-9;

/**
 * Where a ridge longer than every board is joined: at rafters, in as few parts as can be, and of those ways the cheapest, each part taken from a board of its own.
 *
 * Joining a ridge where a pair of rafters holds it, supported as the local code says, is common practice, no source.
 *
 * @param rafters where the rafters' centers stand, from the ridge's first end; in any order, in the unit of the lengths.
 * @returns the joints from the first end; none when one board holds the ridge; null when two neighboring places are farther apart than every board.
 *
 * @example
 * ridgeJoints(432, [96, 216, 336], [{ length: 240, cost: 240 }]) // => [216]
 * ridgeJoints(200, [100], [{ length: 240, cost: 240 }]) // => []
 * ridgeJoints(432, [96], [{ length: 240, cost: 240 }]) // => null
 */
export function ridgeJoints(
  length: number,
  rafters: readonly number[],
  boards: readonly RidgeBoard[],
): number[] | null {
  const stops = [0, ...rafters.filter((at) => at > 0 && at < length).sort((a, b) => a - b), length];
  const longest = Math.max(0, ...boards.map((board) => board.length)) * (1 + SLACK);
  const best: ({ parts: number; cost: number; from: number } | null)[] = [{ parts: 0, cost: 0, from: -1 }];
  for (let to = 1; to < stops.length; to++) {
    best[to] = null;
    for (let from = to - 1; from >= 0 && stops[to]! - stops[from]! <= longest; from--) {
      const before = best[from];
      if (!before) continue;
      const parts = before.parts + 1;
      const cost = before.cost + cheapest(stops[to]! - stops[from]!, boards);
      const known = best[to];
      if (!known || parts < known.parts || (parts === known.parts && cost < known.cost))
        best[to] = { parts, cost, from };
    }
  }
  if (!best.at(-1)) return null;
  const joints: number[] = [];
  for (let at = best.at(-1)!.from; at > 0; at = best[at]!.from) joints.unshift(stops[at]!);
  return joints;
}

function cheapest(part: number, boards: readonly RidgeBoard[]): number {
  return Math.min(...boards.filter(({ length }) => part <= length * (1 + SLACK)).map(({ cost }) => cost));
}

/**
 * Where a piece is joined that is longer than every board, `trim` off each of these: nowhere where one board holds it, where one is just as long and is taken
 * untrimmed, or where no joint will do.
 *
 * @param places from the piece's first end.
 *
 * @example
 * jointsIn(432, [96, 216, 336], [{ length: 240, cost: 240 }], 0.5) // => [216]
 * jointsIn(240, [96], [{ length: 240, cost: 240 }], 0.5) // => []
 */
export function jointsIn(
  length: number,
  places: readonly number[],
  boards: readonly RidgeBoard[],
  trim: number,
): readonly number[] {
  if (boards.some((board) => Math.abs(board.length - length) <= SLACK * board.length)) return [];
  const cut = boards.map((board) => ({ ...board, length: board.length - trim }));
  return ridgeJoints(length, places, cut) ?? [];
}

import type { Problem } from "./problem.ts";

/**
 * What a board loses to the slanting ends of a group's pieces that find no partner on it, in the best order of these pieces.
 *
 * Think of a piece as a road between its ends. At each node ends of the two ways are paired as far as they go, which joins the pieces into rows; where two rows or rings pass one node
 * they can be joined there at no loss; pieces of either hand are given hands by turns. So only ends of the way that is more numerous are left over, and a ring that touches no row is cut
 * open once, where that loses least.
 *
 * @param items of the board, indices into the problem's; @param copies of the nth of them.
 */
export function looseEnds(
  { items, groups }: Problem,
  group: number,
  list: readonly number[],
  copies: (n: number) => number,
): number {
  const { nodes } = groups[group]!;
  if (nodes.length === 0) return 0;
  const sums = nodes.map(() => 0);
  // Nodes that pieces tie together go by one of them; -1 where the board has no end there.
  const tied = nodes.map(() => -1);
  const row = nodes.map(() => false);
  const either = nodes.map(() => false);
  const rootOf = (node: number): number => {
    let root = node;
    while (tied[root] !== root) root = tied[root]!;
    return root;
  };
  for (let n = 0; n < list.length; n++) {
    const item = items[list[n]!]!;
    const count = copies(n);
    if (count === 0 || item.group !== group) continue;
    for (const { node, way } of item.ends) {
      sums[node]! += way * count;
      either[node] = item.either;
      if (tied[node] === -1) tied[node] = node;
    }
    const [one, other] = item.ends;
    if (!one) continue;
    if (!other) row[rootOf(one.node)] = true;
    else if (one.node !== other.node) {
      const [from, to] = [rootOf(one.node), rootOf(other.node)];
      tied[from] = to;
      row[to] ||= row[from]!;
    }
  }
  let lost = 0;
  const rings = new Map<number, number>();
  for (let node = 0; node < nodes.length; node++) {
    if (tied[node] === -1) continue;
    const root = rootOf(node);
    lost += nodes[node]! * Math.abs(either[node] ? sums[node]! % 2 : sums[node]!);
    if (sums[node] !== 0) row[root] = true;
    rings.set(root, Math.min(rings.get(root) ?? Infinity, nodes[node]!));
  }
  for (const [root, least] of rings) if (!row[root]) lost += 2 * least;
  return lost;
}

/**
 * The cutting of one size in whole numbers, as the search sees it.
 *
 * Lengths are whole multiples of a unit of about 1e-12 of the longest board, so that sums are exact and "fits" has one answer. Two slanting ends that may face each other
 * along one cut save its `turn`. So every slanting end that may find a partner is counted `turn` / 2 short, and a board pays that much for each end left without one: the same
 * total as in stock.ts, but a sum over pieces plus a penalty, which bounds well.
 *
 * Ends that may share a cut meet at a `node` of their group, one of each `way`; {@link looseEnds} knows what those left over lose. Nodes that pieces with two such ends tie together
 * are one key.
 */
export interface Problem {
  /** In the order of groups, and within a group of keys; within a key longest first. */
  readonly items: readonly Item[];
  readonly groups: readonly Group[];
  /** Shortest first; none is both shorter and dearer than another unless that one is limited. */
  readonly types: readonly BoardType[];
}

/** Pieces that are alike for cutting. */
export interface Item {
  /** Length and kerf, less half a turn for each of its ends. */
  readonly weight: number;
  readonly demand: number;
  readonly group: number;
  /** Pieces whose ends meet at one node, or at nodes tied together; -1 for those that share no cut. */
  readonly key: number;
  /** Half of what its ends can save at most. */
  readonly saves: number;
  /**
   * Whether every length of its key is asked as often with one way as with the other: then hands can be given after the search (see assignHands), and a board needs at most one piece
   * without a partner.
   */
  readonly either: boolean;
  /** Its slanting ends that may find a partner. */
  readonly ends: readonly End[];
  /** Last of its group. */
  readonly endsGroup: boolean;
}

/** An end that may share its cut: with one of the other way at the same node. */
export interface End {
  readonly node: number;
  /** -1 is the way that is asked for less often. */
  readonly way: 1 | -1;
}

export interface Group {
  /** What a board loses once it holds a piece of the group. */
  readonly setup: number;
  /** For each node half of what a cut shared there saves. */
  readonly nodes: readonly number[];
}

export interface BoardType {
  readonly length: number;
  /** What is left of the length after the trim, and a kerf, for the last piece needs none. */
  readonly room: number;
  /** Items of which one piece is as long as the board: it takes a board untrimmed, alone. */
  readonly alone: readonly number[];
  readonly cost: number;
  readonly count: number;
}

/** How often each item is cut from one board: item indices, rising, and copies. */
export interface Pattern {
  readonly type: number;
  readonly items: readonly number[];
  readonly copies: readonly number[];
}

/** Boards cut alike. */
export interface Cut {
  readonly pattern: Pattern;
  readonly times: number;
}

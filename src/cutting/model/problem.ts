/**
 * The cutting of one size in whole numbers, as the search sees it.
 *
 * Lengths are whole multiples of a unit of about 1e-12 of the longest board, so that sums are exact and "fits" has one answer. With `half` half of what a pair
 * head to head saves, every handed piece is counted `half` short and a board pays `half` for each handed piece left without a partner: the same total as in stock.ts
 * (pieces less `turn` per pair), but a sum over pieces plus a penalty, which bounds well.
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
  /** Length and kerf, less `half` when handed. */
  readonly weight: number;
  readonly demand: number;
  readonly group: number;
  /** Pieces with the same compound cut; -1 for plain ones. */
  readonly key: number;
  /** What a pair of this key saves, halved; 0 for plain ones. */
  readonly half: number;
  /**
   * 1 left, -1 right, 0 plain. 2: either, for a key in which every length is asked as often left as right: then hands can be given after the search
   * (see assignHands), and a board needs at most one handed piece without a partner.
   */
  readonly hand: -1 | 0 | 1 | 2;
  /** Last of its key, last of its group: where the penalty, and the group, end. */
  readonly endsKey: boolean;
  readonly endsGroup: boolean;
  /** What a pair of the key saves, in the caller's unit. */
  readonly turn: number;
}

export interface Group {
  /** What a board loses once it holds a piece of the group. */
  readonly setup: number;
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

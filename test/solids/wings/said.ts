import type { Hand } from "../measure.ts";
import type { RoofFigures } from "./figures.ts";

/**
 * What a program says of a roof with wings, in the shape in which it is compared: inches, degrees, square inches. An adapter makes it from the tables of the
 * worksheet functions; `said` makes it from the solids themselves, so that the comparison can be tested.
 */
export interface Said {
  /** A row for pieces that are alike. */
  readonly members: readonly SaidMember[];
  /** A row for rafters that end on a hip or a valley and are alike. */
  readonly jacks: readonly SaidJack[];
  /** Marks of plates and ridges: positions in order, and the piece at each. */
  readonly lists: readonly SaidList[];
  readonly takeOff: Readonly<Record<Exclude<TakeOffItem, "fascia corners">, number>> & {
    /** Left out where a table does not tell it as a number. */
    readonly "fascia corners"?: number;
  };
}

export type TakeOffItem =
  | "ridges"
  | "hips"
  | "valleys"
  | "eaves"
  | "rakes"
  | "corner rakes"
  | "plan"
  | "sloped"
  | "main, plan"
  | "end, plan"
  /** Corners at which a fascia's outer face is two thicknesses longer, less those at which it is shorter. */
  | "fascia corners"
  | "pieces"
  | "lineal";

export interface SaidMember {
  readonly piece: string;
  readonly member: string;
  /** "" where a member belongs to no plane. */
  readonly side: string;
  readonly left: number;
  readonly right: number;
  readonly plain: number;
  readonly long: number;
  readonly short: number;
  readonly line: number;
  readonly board: number;
  readonly heel: number;
  /** Tilts of its beveled ends, sorted; a text gives two of them to hundredths. */
  readonly tilts: readonly number[];
  readonly tiltsWithin: number;
}

export interface SaidJack {
  readonly side: string;
  readonly left: number;
  readonly right: number;
  readonly long: number;
  readonly short: number;
  readonly board: number;
  readonly headTilt: number;
  readonly headEdge: number;
  readonly headMark: number;
  readonly footTilt: number;
  readonly footMark: number;
}

export interface SaidList {
  readonly name: string;
  /** How many plates it stands for. */
  readonly plates: number;
  readonly marks: readonly { readonly at: number; readonly member: string }[];
}

/** The word for a member in tables: a king valley jack is a valley jack there. */
export const wordOf = (kind: string): string => (kind === "king valley jack" ? "valley jack" : kind);

/** The name of a part of the roof in tables. */
export const sideOf = (part: string): string =>
  part === "main" ? "Main" : part === "end" ? "End" : part.replace("wing", "Wing");

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

type Piece = Omit<SaidMember, "piece" | "left" | "right" | "plain"> & { readonly hand: Hand | "plain" };

/** The pieces of a roof as the rows of MEMBERS measure them. */
export function piecesOf({ rafters, bearers }: RoofFigures): Piece[] {
  const tilted = (all: readonly number[]): number[] => all.filter((tilt) => tilt > 1e-7).sort((a, b) => a - b);
  return [
    ...bearers.map((one): Piece => {
      const faces = [one.left, one.right];
      const ridge = one.kind === "ridge";
      const valley = one.kind === "valley" || one.kind === "valley board";
      return {
        member: one.kind,
        side: "",
        hand: one.hand,
        // A hip's length is its center line's, for its faces are alike; a valley's two faces are told.
        long: ridge ? one.board : valley ? Math.max(...faces) : one.center,
        short: ridge ? one.board : valley ? Math.min(...faces) : one.center,
        line: one.line,
        board: one.board,
        heel: ridge ? 0 : one.heel,
        tilts: tilted(one.headTilts),
        tiltsWithin: 0.005,
      };
    }),
    ...rafters.map((one): Piece => ({
      member: wordOf(one.kind),
      side: sideOf(one.part),
      hand: one.hand,
      long: one.long,
      short: one.short,
      line: one.line,
      board: one.board,
      heel: 0,
      tilts: tilted([one.headTilt, one.footTilt]),
      tiltsWithin: one.footTilt > 0 && one.headTilt > 0 ? 0.005 : 1e-7,
    })),
  ];
}

/** True where two pieces would be one row. */
const alike = (a: Piece, b: Piece): boolean =>
  a.member === b.member &&
  a.side === b.side &&
  near(a.long, b.long) &&
  near(a.short, b.short) &&
  near(a.line, b.line) &&
  near(a.board, b.board) &&
  a.tilts.length === b.tilts.length &&
  a.tilts.every((tilt, i) => near(tilt, b.tilts[i]!));

function grouped<T>(all: readonly T[], same: (a: T, b: T) => boolean): T[][] {
  const groups: T[][] = [];
  for (const one of all) {
    const group = groups.find(([first]) => same(first!, one));
    if (group) group.push(one);
    else groups.push([one]);
  }
  return groups;
}

/** A plate or ridge that has a list of its own by name; the others share one where they are alike. */
export const isNamed = (name: string): boolean => /wing|ridge| to /i.test(name);

/** True where two lists have the same members at the same marks. */
export function sameMarks(one: Pick<SaidList, "marks">, two: Pick<SaidList, "marks">): boolean {
  // Pieces opposite each other on a ridge have one mark.
  const [a, b] = [one, two].map(({ marks }) =>
    [...marks].sort((p, q) => (near(p.at, q.at) ? p.member.localeCompare(q.member) : p.at - q.at)),
  );
  return a!.length === b!.length && a!.every(({ at, member }, i) => near(at, b![i]!.at) && member === b![i]!.member);
}

/** A roof's own figures as a program that makes no mistake would say them. */
export function said(figures: RoofFigures): Said {
  const count = (group: readonly { readonly hand: string }[], hand: string): number =>
    group.filter((one) => one.hand === hand).length;
  const members = grouped(piecesOf(figures), alike).map((group, i): SaidMember => {
    const { hand: _, ...first } = group[0]!;
    return {
      ...first,
      piece: `P${i + 1}`,
      left: count(group, "left"),
      right: count(group, "right"),
      plain: count(group, "plain"),
    };
  });
  const ends = figures.rafters.filter(({ headMark, foot }) => headMark > 0 || foot !== "");
  const jacks = grouped(
    ends,
    (a, b) =>
      a.part === b.part &&
      near(a.long, b.long) &&
      near(a.short, b.short) &&
      near(a.board, b.board) &&
      near(a.headMark, b.headMark) &&
      near(a.footMark, b.footMark),
  ).map((group): SaidJack => ({
    ...group[0]!,
    side: sideOf(group[0]!.part),
    left: count(group, "left"),
    right: count(group, "right"),
  }));
  const { edges, planes, plates, ridges, rafters, bearers } = figures;
  const kinds = new Map(rafters.map((one) => [one.name, `${wordOf(one.kind)} ${one.hand}`]));
  const sum = (of: "plan" | "sloped", part?: string): number =>
    planes.filter((one) => !part || one.part === part).reduce((total, one) => total + one[of], 0);
  return {
    members,
    jacks,
    lists: grouped(
      [...plates, ...ridges].map(({ name, marks }) => ({
        name,
        marks: marks.map(({ at, piece }) => ({ at, member: kinds.get(piece)! })),
      })),
      (one, two) => !isNamed(one.name) && !isNamed(two.name) && sameMarks(one, two),
    ).map((group) => ({ ...group[0]!, plates: group.length })),
    takeOff: {
      ridges: edges.ridges,
      hips: edges.hips + edges.brokenHips,
      valleys: edges.valleys,
      eaves: edges.eaves,
      rakes: edges.rakes,
      "corner rakes": edges.cornerRakes,
      plan: sum("plan"),
      sloped: sum("sloped"),
      "main, plan": sum("plan", "main"),
      "end, plan": sum("plan", "end"),
      "fascia corners": edges.outerCorners - edges.innerCorners,
      pieces: rafters.length + bearers.length,
      lineal: [...rafters, ...bearers].reduce((total, { board }) => total + board, 0),
    },
  };
}

import type { JackRow, Rafter } from "./rafterLines.ts";

/** Rafters that are one piece: the same board and the same cuts, a left and a right one being mirror images. */
export interface Alike {
  /** What is written on them: "J3". */
  readonly mark: string;
  readonly rafters: readonly Rafter[];
}

/** Of a length: pieces whose lengths differ by no more are one. */
const SAME = 1e-9;

/** The distinct rafters of a roof: each kind from the longest on. Jacks of sides and ends are JM and JE where their planes differ. */
export function alike(rafters: readonly Rafter[], rows: readonly JackRow[]): Alike[] {
  const differ = rows.some(({ hip: { near, far } }) => !cutAlike(near.plane, far.plane));
  const stems = new Map<string, Rafter[]>();
  for (const rafter of rafters) {
    const stem = stemOf(rafter, differ);
    stems.set(stem, [...(stems.get(stem) ?? []), rafter]);
  }
  return [...stems].flatMap(([stem, own]) =>
    merged(own).map((rafters, i) => ({ mark: own[0]!.member === "jack" ? `${stem}${i + 1}` : stem, rafters })),
  );
}

function stemOf({ member, plane }: Rafter, differ: boolean): string {
  if (member === "common") return "C";
  if (member === "king common") return plane.end ? "KE" : "K";
  return differ ? (plane.end ? "JE" : "JM") : "J";
}

/** Whether rafters of two planes can be one piece. */
function cutAlike(one: Rafter["plane"], other: Rafter["plane"]): boolean {
  return one.pitch === other.pitch && one.overhang === other.overhang && one.correction === other.correction;
}

/** Those of one length together, longest first. */
function merged(rafters: readonly Rafter[]): Rafter[][] {
  const groups: Rafter[][] = [];
  for (const rafter of [...rafters].sort((a, b) => b.head.at - a.head.at)) {
    const last = groups.at(-1);
    if (last && last[0]!.head.at - rafter.head.at <= SAME * last[0]!.head.at) last.push(rafter);
    else groups.push([rafter]);
  }
  return groups;
}

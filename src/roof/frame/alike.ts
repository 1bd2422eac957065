import type { RoofPlane } from "./blocks.ts";
import type { Layers } from "./layers.ts";
import { footReach, handOf, type Rafter } from "./rafterLines.ts";

/** Rafters that are one piece: the same board and the same cuts, a left and a right one being mirror images. */
export interface Alike {
  /** What is written on them: "J3", "VJ1-A". */
  readonly mark: string;
  readonly rafters: readonly Rafter[];
}

/** Of a length: pieces whose lengths differ by no more are one. */
const SAME = 1e-9;

/** The distinct rafters of a roof: each kind from the longest on. Jacks of sides and ends are JM and JE where their planes differ. */
export function alike({
  rafters,
  rows,
  blocks,
  bearers,
}: Pick<Layers, "rafters" | "rows" | "blocks" | "bearers">): Alike[] {
  const differ = rows.some(({ hip: { near, far, block } }) => block === 0 && !cutAlike(near.plane, far.plane));
  const steeper = new Set(
    bearers.filter(({ kind, near, far }) => kind === "valley" && near.pitch !== far.pitch).map(({ wing }) => wing),
  );
  const stems = new Map<string, Stem>();
  for (const rafter of rafters) {
    const wing = wingOf(rafter, blocks[rafter.of]!.wing?.letter ?? "");
    const stem = stemOf(rafter, wing, differ, steeper.has(wing));
    const key = `${stem} ${wing}`;
    const known = stems.get(key) ?? { stem, wing, rafters: [] };
    known.rafters.push(rafter);
    stems.set(key, known);
  }
  return [...stems.values()].flatMap(({ stem, wing, rafters: own }) => {
    const groups = merged(own);
    const numbered = groups.length > 1 || !/^[CK]/.test(stem) || stem.endsWith("V");
    return groups.map((group, i) => ({ mark: `${stem}${numbered ? i + 1 : ""}${wing && `-${wing}`}`, rafters: group }));
  });
}

interface Stem {
  readonly stem: string;
  readonly wing: string;
  readonly rafters: Rafter[];
}

/** The wing whose letter a rafter carries: of the valley that it stands on or meets or that cuts its tail, else the one that it is set out from. */
function wingOf({ foot, head, tailCut, mouth }: Rafter, own: string): string {
  const valley = foot.bearer ?? (head.bearer?.kind === "valley" ? head.bearer : tailCut?.bearer);
  return mouth ?? valley?.wing ?? own;
}

const MADE_BY_VALLEYS = {
  "valley jack": "VJ",
  "hip-valley cripple": "HV",
  "valley cripple": "VV",
  "jack to the valley": "PV",
} as const;

function stemOf({ member, plane, tailCut, mouth }: Rafter, wing: string, differ: boolean, steeper: boolean): string {
  if (member === "valley jack") return steeper ? (plane.wing ? "VJW" : "VJM") : "VJ";
  if (member in MADE_BY_VALLEYS) return MADE_BY_VALLEYS[member as keyof typeof MADE_BY_VALLEYS];
  // Cut by a valley at its tail, or with no tail in the mouth of a laid-over wing; in the plane that a flush wing shares with an end.
  const apart = tailCut ? "V" : mouth ? "N" : "";
  const shared = wing && plane.wing === "" && plane.end && !tailCut ? "F" : "";
  if (member === "common") return `C${shared}${apart}`;
  if (member === "king common") return `K${plane.end && !shared ? "E" : ""}${shared}${apart}`;
  const side = wing ? (plane.end && !shared ? "E" : "") : differ ? (plane.end ? "E" : "M") : "";
  return `J${side}${shared}${apart}`;
}

/** Whether rafters of two planes can be one piece. */
function cutAlike(one: RoofPlane, other: RoofPlane): boolean {
  return one.pitch === other.pitch && one.overhang === other.overhang && one.correction === other.correction;
}

/** Those of one length and one set of cuts together, longest first. */
function merged(rafters: readonly Rafter[]): Rafter[][] {
  const groups: { readonly cuts: readonly number[]; readonly first: Rafter; readonly rafters: Rafter[] }[] = [];
  const sorted = rafters.map((rafter) => ({ rafter, cuts: cutsOf(rafter) })).sort((a, b) => b.cuts[0]! - a.cuts[0]!);
  for (const { rafter, cuts } of sorted) {
    const most = SAME * Math.max(1, cuts[0]!);
    let i = groups.length - 1;
    while (i >= 0 && groups[i]!.cuts[0]! - cuts[0]! <= most && !isSame(groups[i]!, rafter, cuts, most)) i--;
    const same = groups[i];
    if (same && isSame(same, rafter, cuts, most)) same.rafters.push(rafter);
    else groups.push({ cuts, first: rafter, rafters: [rafter] });
  }
  return groups.map((group) => group.rafters);
}

function isSame(
  { cuts, first }: { readonly cuts: readonly number[]; readonly first: Rafter },
  rafter: Rafter,
  others: readonly number[],
  most: number,
): boolean {
  return (
    // Within the main roof a jack of a side and one of an end are one; else a plane's name stands for its pieces.
    (first.plane.end === rafter.plane.end ||
      (first.member === "jack" && first.plane.wing === "" && rafter.plane.wing === "")) &&
    first.plane.wing === rafter.plane.wing &&
    cutAlike(first.plane, rafter.plane) &&
    cuts.every((cut, i) => Math.abs(cut - others[i]!) <= most)
  );
}

/** What a rafter is cut to: level length, where its foot and tail are, and how they slant towards its hand. */
function cutsOf(rafter: Rafter): number[] {
  const { foot, head, tailCut, plane, over } = rafter;
  const way = handOf(rafter) === "right" ? -1 : 1;
  return [
    head.at - foot.at,
    way * head.per,
    way * foot.per,
    tailCut ? tailCut.at : 0,
    tailCut ? way * tailCut.per : 0,
    // Only a foot that stands over the plate, or is cut by the fascia, is not the same wherever it stands.
    over ? foot.at : 0,
    over ? footReach(rafter, way) : 0,
    over ? footReach(rafter, -way) : 0,
    foot.bearer === null ? plane.overhang : 0,
    head.bearer?.kind === "ridge" ? 0 : 1,
  ];
}

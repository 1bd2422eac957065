import { depthIn } from "./half.ts";
import { arris } from "./measure.ts";
import { mainOf } from "./settingOut.ts";
import { dot, leftOf } from "./vector.ts";
import type { Framed, Roof } from "./assemble.ts";
import type { Half } from "./half.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** Wood that two members may share, cubic inches: what rounding leaves where faces touch. */
const SHARED = 1e-6;
/** How far a head may stand off its bearing, or a member above a roof plane, inches. */
const CLOSE = 1e-6;

interface Standing {
  readonly piece: Framed;
  readonly corners: readonly Vec[];
  readonly min: Vec;
  readonly max: Vec;
}

/** Everything that is wrong with a framed roof, in words: members that overlap, heads off their bearings, members above a roof plane. */
export function faults(shop: Shop, roof: Roof): string[] {
  const standing = roof.members.map((piece): Standing => ({
    piece,
    corners: shop.corners(piece.solid),
    ...piece.solid.boundingBox(),
  }));
  return [
    ...overlaps(shop, standing),
    ...standing.flatMap((one) => bearing(shop, one)),
    ...standing.flatMap((one) => tooHigh(shop, roof, one)),
  ];
}

function overlaps(shop: Shop, standing: readonly Standing[]): string[] {
  const found: string[] = [];
  const byX = [...standing].sort((a, b) => a.min[0] - b.min[0]);
  byX.forEach((one, i) => {
    for (const two of byX.slice(i + 1)) {
      if (two.min[0] >= one.max[0]) break;
      if (two.min[1] >= one.max[1] || one.min[1] >= two.max[1] || two.min[2] >= one.max[2] || one.min[2] >= two.max[2])
        continue;
      const volume = shop.overlap(one.piece.solid, two.piece.solid);
      if (!(volume < SHARED)) found.push(`${one.piece.name} and ${two.piece.name} overlap by ${volume} cubic inches`);
    }
  });
  return found;
}

/** A head must touch its bearing at both of its top corners, and the bearing must reach along to them. */
function bearing(shop: Shop, { piece, corners }: Standing): string[] {
  if (!piece.bears) return [];
  const { face, on } = piece.bears;
  const along = leftOf(face.normal);
  const reach = on
    .flatMap(({ solid }) => shop.corners(solid))
    .filter((c) => Math.abs(depthIn(face, c)) < CLOSE)
    .map((c) => dot(along, c));
  return (["left", "right"] as const).flatMap((hand) => {
    const top = arris(piece, corners, hand).high;
    const gap = depthIn(face, top);
    const at = dot(along, top);
    if (!(Math.abs(gap) <= CLOSE)) return [`${piece.name}: the head's ${hand} corner stands ${gap} off its bearing`];
    return at < Math.min(...reach) - CLOSE || at > Math.max(...reach) + CLOSE
      ? [`${piece.name}: the head's ${hand} corner lies past the end of its bearing`]
      : [];
  });
}

/** The roof planes there are: both main planes, and an end plane at every hipped end. */
function planes({
  corners: {
    all: [a, , , d],
    hips,
  },
}: Roof): { main: Half[]; end: Half[] } {
  const end = hips.map((corner) => corner.sides[1 - mainOf(corner)]!.above);
  return { main: [a.sides[mainOf(a)].above, d.sides[mainOf(d)].above], end };
}

/**
 * How far a member may stand above the main and the end planes, plumb.
 *
 * Main king commons and ridge end half a rafter past the apex, where the end plane is below it by the end pitch of that; their own top lies below the
 * apex by the main pitch of half the ridge. An end king common ends half a rafter short of the apex, and is half a rafter wide to each side of the ridge line.
 */
function allowed(
  { plan, apex, members }: Roof,
  { kind, side }: Framed,
  corners: readonly Vec[],
): { main: number; end: number } {
  const {
    pitch: { slope: main },
    endPitch: { slope: end },
    rafter: { thickness: t },
  } = plan;
  const ridge = members.find((piece) => piece.kind === "ridge");
  const lowered = (main * (ridge?.thickness ?? 0)) / 2;
  if (kind === "ridge") return { main: 0, end: end * (apex - Math.min(...corners.map(([x]) => x))) - lowered };
  if (kind !== "king common") return { main: 0, end: 0 };
  return side === "Main" ? { main: 0, end: (end * t) / 2 - lowered } : { main: ((main - end) * t) / 2, end: 0 };
}

/** How far a member stands above the highest of the main or the end planes at any of its corners, plumb; below 0 when it lies under all. */
export function above(shop: Shop, roof: Roof, { solid }: Framed, which: "main" | "end"): number {
  const corners = shop.corners(solid);
  return Math.max(...planes(roof)[which].flatMap((half) => corners.map((c) => depthIn(half, c))));
}

function tooHigh(shop: Shop, roof: Roof, { piece, corners }: Standing): string[] {
  const most = allowed(roof, piece, corners);
  return (["main", "end"] as const).flatMap((which) => {
    const stands = above(shop, roof, piece, which);
    const may = most[which];
    // Where it may stand above at all, it has to be by just so much.
    const wrong = may > CLOSE ? Math.abs(stands - may) > CLOSE : !(stands <= CLOSE);
    return wrong
      ? [`${piece.name}: stands ${stands} above the ${which} planes, where ${Math.max(0, may)} is to be expected`]
      : [];
  });
}

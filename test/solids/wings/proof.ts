import { depthIn } from "../half.ts";
import type { Half } from "../half.ts";
import { heading, seenFrom } from "../frame.ts";
import { arris, ON } from "../measure.ts";
import type { Solid, Shop } from "../shop.ts";
import { dot, leftOf, sub } from "../vector.ts";
import type { Vec } from "../vector.ts";
import { sideFace } from "./bearer.ts";
import { heightOf, roofHeight } from "./layout.ts";
import type { Against, Rafter } from "./rafters.ts";
import type { WingedRoof } from "./winged.ts";

/** Wood that two members may share, cubic inches: what rounding leaves where faces touch. */
const SHARED = 1e-6;
const CLOSE = 1e-6;

interface Standing {
  readonly name: string;
  readonly solid: Solid;
  readonly min: Vec;
  readonly max: Vec;
}

/** Everything that is wrong with a framed roof, in words: members that overlap, ends off their bearings, rafters without a seat, tops above the roof. */
export function faults(shop: Shop, roof: WingedRoof): string[] {
  const all = [...roof.bearers.all, ...roof.rafters].map(({ name, solid }): Standing => ({
    name,
    solid,
    ...solid.boundingBox(),
  }));
  return [
    ...overlaps(shop, all),
    ...roof.rafters.flatMap((rafter) => bearing(shop, rafter)),
    ...bearerEnds(shop, roof),
    ...roof.rafters.flatMap((rafter) => tooHigh(shop, roof, rafter)),
  ];
}

function overlaps(shop: Shop, all: readonly Standing[]): string[] {
  const found: string[] = [];
  const byX = [...all].sort((a, b) => a.min[0] - b.min[0]);
  byX.forEach((one, i) => {
    for (const two of byX.slice(i + 1)) {
      if (two.min[0] >= one.max[0]) break;
      if (two.min[1] >= one.max[1] || one.min[1] >= two.max[1] || two.min[2] >= one.max[2] || one.min[2] >= two.max[2])
        continue;
      const volume = shop.overlap(one.solid, two.solid);
      if (!(volume < SHARED)) found.push(`${one.name} and ${two.name} overlap by ${volume} cubic inches`);
    }
  });
  return found;
}

/** Where on its top edges a rafter ends: both corners must lie in the face they are cut to, and within it. */
function bearing(shop: Shop, rafter: Rafter): string[] {
  const { name, head, foot, overCorner, station } = rafter;
  const corners = shop.corners(rafter.solid);
  const edges = (["left", "right"] as const).map((side) => arris(rafter, corners, side));
  const off = ({ bearer, face, hand }: Against, point: Vec): string[] => {
    const gap = depthIn(face, point);
    if (!(Math.abs(gap) <= CLOSE)) return [`stands ${gap} off the ${bearer.name}`];
    const side = sideFace(bearer, hand);
    // The end of a ridge is as wide as the ridge; the king commons beside it bear the rest.
    if (dot(side.normal, face.normal) < 0.999999) return [];
    const at = dot(heading(bearer.frame), point);
    const [low, high] = bearer.reach[hand];
    return at < low - CLOSE || at > high + CLOSE ? [`lies past the end of the ${bearer.name}`] : [];
  };
  // Beside an inner corner one face of a rafter without a tail ends over the plate line, and not on the valley.
  const overPlate = (point: Vec): boolean =>
    overCorner && station.plane.overhang === 0 && Math.abs(dot(station.plane.inward, sub(point, station.at))) < CLOSE;
  return [
    ...edges.flatMap(({ high }) => off(head, high).map((words) => `${name}: its head ${words}`)),
    ...(foot ? edges : [])
      .filter(({ low }) => !overPlate(low))
      .flatMap(({ low }) => off(foot!, low).map((words) => `${name}: its foot ${words}`)),
    ...(!foot && !seated(rafter, corners) ? [`${name}: has no seat on its plate`] : []),
    ...(overCorner && !corners.some((c) => Math.abs(c[2]) < ON) ? [`${name}: has no seat over the corner`] : []),
  ];
}

/** A seat: corners level with the plate's top, the outer ones plumb over the plate line. */
const seated = ({ station: { plane, at } }: Rafter, corners: readonly Vec[]): boolean =>
  corners.filter((c) => Math.abs(c[2]) < ON && Math.abs(dot(plane.inward, c) - dot(plane.inward, at)) < ON).length >= 2;

/** A rafter's top lies in its plane, and under the finished roof. */
function tooHigh(shop: Shop, { layout }: WingedRoof, rafter: Rafter): string[] {
  const corners = shop.corners(rafter.solid);
  const top = corners.filter((c) => Math.abs(seenFrom(rafter.frame, c)[2]) < ON);
  const off = Math.max(...top.map((c) => Math.abs(heightOf(rafter.station.plane, c) - c[2])));
  const over = rafter.kind.startsWith("king") ? 0 : Math.max(...top.map((c) => c[2] - roofHeight(layout, c)));
  return [
    ...(off < CLOSE ? [] : [`${rafter.name}: its top is ${off} off its plane`]),
    ...(over < CLOSE ? [] : [`${rafter.name}: stands ${over} above the roof`]),
  ];
}

/** Ends of hips and valleys that touch nothing: of the planes that an end is cut to, one at least is another member's. */
function bearerEnds(shop: Shop, { bearers, rafters }: WingedRoof): string[] {
  const all = [...bearers.all, ...rafters].map((piece) => ({ piece, corners: shop.corners(piece.solid) }));
  const on = (half: Half, corners: readonly Vec[]): Vec[] => corners.filter((c) => Math.abs(depthIn(half, c)) < CLOSE);
  return bearers.all.flatMap((bearer) => {
    if (bearer.kind === "ridge") return [];
    const corners = shop.corners(bearer.solid);
    const meets = (half: Half): boolean => {
      const own = on(half, corners);
      return all.some(({ piece, corners: others }) => {
        if (piece === bearer) return false;
        const theirs = on(half, others);
        // The two faces must lie beside each other, not only in one plane.
        const reaches = [own, theirs].map((face) => face.map((c) => dot(leftOf(half.normal), c)));
        return (
          own.length > 2 &&
          theirs.length > 2 &&
          Math.min(...reaches[0]!) < Math.max(...reaches[1]!) - CLOSE &&
          Math.min(...reaches[1]!) < Math.max(...reaches[0]!) - CLOSE
        );
      });
    };
    return [
      ...(bearer.heads.some(meets) ? [] : [`${bearer.name}: its head bears on nothing`]),
      ...(bearer.kind !== "broken hip" || bearer.feet.some(meets)
        ? []
        : [`${bearer.name}: its foot stands on nothing`]),
    ];
  });
}

import { measured, rowFor, rowsOf } from "./schedule.ts";
import { sideOf } from "./settingOut.ts";
import { dot, leftOf, scale, sub } from "./vector.ts";
import type { Roof } from "./assemble.ts";
import type { Row } from "./schedule.ts";
import type { SideName } from "./settingOut.ts";
import type { Shop } from "./shop.ts";
import type { Vec } from "./vector.ts";

/** A member's edge on a plate as the tape shows it, and what is written there. */
interface Mark {
  readonly at: number;
  readonly member: string;
}

/** One plate of the building, by the way into the building from it. */
interface Plate {
  readonly name: string;
  readonly side: SideName;
  readonly inward: Vec;
}

/** All marks of a plate, running from the hook at its left or right corner for someone who looks at it from outside. */
function marksOn(
  shop: Shop,
  roof: Roof,
  rows: readonly Row[],
  { side, inward }: Plate,
  hook: "left" | "right",
): Mark[] {
  const {
    plan: { span, length },
  } = roof;
  const run = scale(leftOf(inward), hook === "left" ? -1 : 1);
  const corners: readonly Vec[] = [
    [0, 0, 0],
    [length, 0, 0],
    [length, span, 0],
    [0, span, 0],
  ];
  // The hook sits at the plate's corner that lies farthest back along the tape.
  const start = corners.reduce((a, b) => (dot(run, b) < dot(run, a) ? b : a));
  return roof.members
    .filter(
      (piece) => piece.at && piece.kind !== "hip" && piece.side === side && dot(sideOf(piece.at).inward, inward) > 0.5,
    )
    .map((piece): Mark => {
      const row = rowFor(rows, measured(shop, piece));
      return {
        at: Math.min(...shop.corners(piece.solid).map((c) => dot(run, sub(c, start)))),
        member: `${String(row?.["Piece"])}${piece.hand === "plain" ? "" : ` ${piece.hand}`}`,
      };
    })
    .sort((a, b) => a.at - b.at);
}

const same = (marks: readonly Mark[], rows: readonly Row[]): boolean =>
  marks.length === rows.length &&
  marks.every(({ at, member }, i) => Math.abs(at - Number(rows[i]!["Mark"])) < 1e-6 && member === rows[i]!["Member"]);

/** Plates that no list of PLATEMARKS fits, and lists that fit other than as many plates as they say. */
export async function plateCheck(shop: Shop, roof: Roof): Promise<string[]> {
  const members = await rowsOf("MEMBERS", roof.plan);
  const marks = await rowsOf("PLATEMARKS", roof.plan);
  const plates: Plate[] = [
    { name: "near", side: "Main", inward: [0, 1, 0] },
    { name: "far", side: "Main", inward: [0, -1, 0] },
    { name: "west", side: "End", inward: [1, 0, 0] },
    ...(roof.plan.ends === "hip and hip" ? [{ name: "east", side: "End", inward: [-1, 0, 0] } as const] : []),
  ];
  const fitted = new Set<string>();
  const found: string[] = [];
  for (const name of new Set(marks.map((row) => String(row["Plate"])))) {
    const rows = marks.filter((row) => row["Plate"] === name);
    const hook = name.includes("right") ? "right" : "left";
    const fits = plates.filter(
      (plate) => name.startsWith(plate.side) && same(marksOn(shop, roof, members, plate, hook), rows),
    );
    for (const { name: plate } of fits) fitted.add(plate);
    const told = Number(rows[0]!["Plates"]);
    if (fits.length !== told) found.push(`the list "${name}" fits ${fits.length} plates and says ${told}`);
  }
  return [
    ...found,
    ...plates.filter(({ name }) => !fitted.has(name)).map(({ name }) => `no list of marks fits the ${name} plate`),
  ];
}

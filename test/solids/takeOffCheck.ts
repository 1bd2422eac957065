import { inches } from "./agreement.ts";
import type { Agreement } from "./agreement.ts";
import { areas, edge, roofSolid } from "./roofSolid.ts";
import { measured, rowFor, rowsOf } from "./schedule.ts";
import type { Half } from "./half.ts";
import type { Roof } from "./assemble.ts";
import type { Shop } from "./shop.ts";

/** Lengths, areas and lumber of a roof as TAKEOFF gives them, against the roof as one solid and the boards of its framed pieces. */
export async function takeOffCheck(shop: Shop, roof: Roof): Promise<Agreement[]> {
  const { plan, corners } = roof;
  const rows = await rowsOf("TAKEOFF", plan);
  const solid = roofSolid(shop, plan, corners);
  const amount = (item: string): number => {
    const row = rows.find((r) => r["Item"] === item);
    return row ? Number(row["Amount"]) : NaN;
  };
  const feet = (item: string, length: number): Agreement => inches(item, length, amount(item) * 12);
  const squareFeet = (item: string, area: number): Agreement => ({
    ...inches(item, area, amount(item) * 144),
    within: 1e-5,
  });
  const all = (one: readonly Half[], two: readonly Half[]): number =>
    one.reduce((sum, a) => sum + two.reduce((more, b) => more + edge(solid, a, b), 0), 0);
  const { main, end, walls } = solid;
  const total = (halves: readonly Half[], of: "plan" | "sloped"): number =>
    halves.reduce((sum, half) => sum + areas(solid, half)[of], 0);
  const eaves = all(main, walls.main) + all(end, walls.end);
  // Where the fascias do not meet level, one plane's edge runs up the other side's fascia.
  const cornerRake = all(main, walls.end) + all(end, walls.main);
  return [
    feet("Ridge", edge(solid, main[0]!, main[1]!)),
    feet("Hips", all(main, end)),
    feet("Eaves", eaves),
    feet("Gable rake", all(main, walls.gable)),
    feet("Corner rake", cornerRake),
    squareFeet("Main planes, plan", total(main, "plan")),
    squareFeet("Main planes, sloped", total(main, "sloped")),
    squareFeet("End planes, plan", total(end, "plan")),
    squareFeet("End planes, sloped", total(end, "sloped")),
    squareFeet("Roof, plan", total([...main, ...end], "plan")),
    squareFeet("Roof, sloped", total([...main, ...end], "sloped")),
    ...(await lumber(shop, roof, amount)),
  ];
}

/** Pieces and lineal feet of every size, each piece on the board that it was measured to take; MEMBERS says what a size is called. */
async function lumber(shop: Shop, { plan, members }: Roof, amount: (item: string) => number): Promise<Agreement[]> {
  const rows = await rowsOf("MEMBERS", plan);
  const sized = members
    .map((piece) => measured(shop, piece))
    .map((one) => ({ board: one.board, size: String(rowFor(rows, one)?.["Size"]) }));
  return [...new Set(sized.map(({ size }) => size))].flatMap((size) => {
    const own = sized.filter((one) => one.size === size);
    const lineal = own.reduce((sum, { board }) => sum + board, 0);
    return [
      inches(`${size}, pieces`, own.length, amount(`${size}, pieces`)),
      { ...inches(`${size}, lineal`, lineal, amount(`${size}, lineal`) * 12), within: 1e-5 },
    ];
  });
}

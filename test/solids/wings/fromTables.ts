import { spilled } from "../answers.ts";
import { blockOf } from "./plan.ts";
import type { WingedPlan } from "./plan.ts";
import type { Said, SaidJack, SaidList, SaidMember } from "./said.ts";

type Row = Readonly<Record<string, string | number | boolean>>;

type Cells = Awaited<ReturnType<typeof spilled>>;

function rowsOf([headings, ...rows]: Cells): Row[] {
  return rows.map((row) => Object.fromEntries(row.map((cell, i) => [String(headings![i]), cell])));
}

const on = (row: Row, heading: string): number => Number(row[heading] ?? 0);

/** "36.87 / 53.13" as two tilts, a number as one, nothing and 0 as none. */
const tiltsOf = (cell: string | number | boolean | undefined): number[] =>
  String(cell ?? "")
    .split(" / ")
    .map(Number)
    .filter((tilt) => tilt > 0)
    .sort((a, b) => a - b);

/** What the worksheet functions say of a roof with wings. */
export async function fromTables(plan: WingedPlan): Promise<Said> {
  const block = blockOf(plan);
  return tablesSaid(
    await Promise.all(["MEMBERS", "JACKTABLE", "PLATEMARKS", "TAKEOFF"].map((table) => spilled(table, block))),
  );
}

/** What the four tables of a roof say, as they spill. */
export function tablesSaid(tables: readonly Cells[]): Said {
  const [members, jacks, marks, takeOff] = tables.map(rowsOf);
  const words = new Map(members!.map((row) => [String(row["Piece"]), String(row["Member"])]));
  const amount = (item: string): number => on(takeOff!.find((row) => row["Item"] === item) ?? {}, "Amount");
  const ending = (text: string): number =>
    takeOff!.filter((row) => String(row["Item"]).endsWith(text)).reduce((sum, row) => sum + on(row, "Amount"), 0);
  return {
    members: members!.map((row): SaidMember => ({
      piece: String(row["Piece"]),
      member: String(row["Member"]),
      side: String(row["Side"]),
      left: on(row, "Left"),
      right: on(row, "Right"),
      plain: on(row, "Plain"),
      long: on(row, "Long point"),
      short: on(row, "Short point"),
      line: on(row, "Line length"),
      board: on(row, "Shortest board"),
      heel: on(row, "Heel"),
      tilts: tiltsOf(row["Saw tilt"]),
      tiltsWithin: typeof row["Saw tilt"] === "number" ? 0 : 0.005,
    })),
    jacks: jacks!.map((row): SaidJack => ({
      side: String(row["Side"]),
      left: on(row, "Left"),
      right: on(row, "Right"),
      long: on(row, "Long point"),
      short: on(row, "Short point"),
      board: on(row, "Shortest board"),
      headTilt: on(row, "Saw tilt"),
      headEdge: on(row, "Edge angle"),
      headMark: on(row, "Hip mark"),
      footTilt: on(row, "Foot tilt"),
      footMark: on(row, "Foot mark"),
    })),
    lists: [...new Set(marks!.map((row) => String(row["Plate"])))].map((name): SaidList => {
      const own = marks!.filter((row) => row["Plate"] === name);
      return {
        name,
        plates: on(own[0]!, "Plates"),
        marks: own
          .map((row) => {
            const [piece, hand] = String(row["Member"]).split(" ");
            return { at: on(row, "Mark"), member: `${words.get(piece!) ?? piece} ${hand ?? "plain"}` };
          })
          // The row that names an inner corner and its valley is no rafter's.
          .filter(({ member }) => !member.startsWith("valley plain")),
      };
    }),
    takeOff: {
      ridges: 12 * amount("Ridge"),
      hips: 12 * amount("Hips"),
      valleys: 12 * amount("Valleys"),
      eaves: 12 * amount("Eaves"),
      rakes: 12 * amount("Gable rake"),
      "corner rakes": 12 * amount("Corner rake"),
      plan: 144 * amount("Roof, plan"),
      sloped: 144 * amount("Roof, sloped"),
      "main, plan": 144 * amount("Main planes, plan"),
      "end, plan": 144 * amount("End planes, plan"),
      pieces: ending(", pieces"),
      lineal: 12 * ending(", lineal"),
    },
  };
}

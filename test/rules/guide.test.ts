import { headings } from "../../src/registry/columns.ts";
import { cautions } from "../../functions/cautions.ts";
import { changes } from "../../functions/changes.ts";
import { jackTable } from "../../functions/jackTable.ts";
import { lumberOrder } from "../../functions/lumberOrder.ts";
import { members } from "../../functions/members.ts";
import { pieceList } from "../../functions/pieceList.ts";
import { plateMarks } from "../../functions/plateMarks.ts";
import { salvage } from "../../functions/salvage.ts";
import { sawSettings } from "../../functions/sawSettings.ts";
import { sheathing } from "../../functions/sheathing.ts";
import { stickPlan } from "../../functions/stickPlan.ts";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { DEFAULTS, readRoofBlock, ROWS, type Row } from "../../functions/arguments/roofBlock.ts";
import { readLength } from "../../src/measure/readLength.ts";
import { readPitch } from "../../src/measure/readPitch.ts";
import { eachPiece, type CoursePiece } from "../../src/roof/tables/sheathingCourses.ts";
import { takeOff } from "../../src/roof/tables/takeOff.ts";
import { asked } from "../functions/asked.ts";
import { framed, HALL } from "../roof/outlineSpecs.ts";

const guide = readFileSync("functions/GUIDE.md", "utf8");

/** Marks of eave boards and blocks, and of the pieces of a roof with wings. */
const MARKS = [
  "SF",
  "BP",
  "BC",
  "VL",
  "VS",
  "BH",
  "VJ",
  "HV",
  "VV",
  "PV",
  "RA",
  "RB",
  "VB",
  "CN",
  "KN",
  "JN",
  "CV",
  "KV",
];

/** The rows of cells of the table under a heading, its head left out. */
function tableUnder(heading: string): string[][] {
  const section = guide.split(/^#+ /m).find((part) => part.startsWith(`${heading}\n`))!;
  return section
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .slice(1)
    .map((line) =>
      line
        .split("|")
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );
}

describe("the guide's table of the roof block", () => {
  const rows = new Map(
    tableUnder("The roof block").flatMap(([labels, blank, meaning]) =>
      labels!.split(", ").map((label) => [label, { blank: blank!, meaning: meaning! }] as const),
    ),
  );

  it("has every row of the block, in its order", () => {
    expect([...rows.keys()]).toEqual([...ROWS]);
  });

  it("tells the defaults that the block takes", () => {
    const { in: inches, mm } = DEFAULTS;
    expect(rows.get("Spacing")!.blank).toBe(`${inches.spacing} in, ${mm.spacing} mm`);
    expect(rows.get("Seat")!.blank).toBe(`seat ${inches.seat} in, ${mm.seat} mm`);
    expect(rows.get("Rafter")!.blank).toBe(`${inches.rafter}, ${mm.rafter}`);
    expect(rows.get("Span")!.meaning).toContain(`under ${inches.least} in (${mm.least} mm)`);
    expect(rows.get("End trim")!.blank).toBe(`1/2 in, ${mm.trim} mm`);
    expect(inches.trim).toBe(1 / 2);
    expect(rows.get("Allow crown down")!.blank).toBe("no");
    const read = (row: Row, blank: string) =>
      readRoofBlock("roof", [
        ["Span", "24'"],
        ["Length", "36'"],
        ["Pitch", 6],
        [row, blank],
      ]);
    for (const [row, key] of [
      ["Set out from", "setOutFrom"],
      ["Hip top", "hipTop"],
      ["Hip head", "hipHead"],
      ["Ends", "ends"],
      ["Overhang", "overhang"],
      ["Correction", "correction"],
      ["Tail cut", "tailCut"],
      ["Blocking", "blocking"],
      ["Waste", "waste"],
      ["Spares", "spares"],
    ] as const) {
      expect(read(row, "")).toMatchObject({
        [key]: /^\d/.test(rows.get(row)!.blank) ? Number(rows.get(row)!.blank) : rows.get(row)!.blank,
      });
      // What the guide names as the default may be typed, too.
      expect(read(row, rows.get(row)!.blank)).toEqual(read(row, ""));
    }
    const [feet, meters] = rows.get("Boards")!.blank.split(", ");
    expect(read("Boards", feet!)).toMatchObject({ boards: inches.boards });
    expect(
      readRoofBlock("roof", [
        ["Span", "7 m"],
        ["Length", "9 m"],
        ["Pitch", 6],
        ["Boards", meters!],
      ]),
    ).toMatchObject({ boards: mm.boards });
  });

  it("names the other words that a row may hold", () => {
    for (const row of ["Ends", "Set out from", "Hip top", "Hip head"] as const) {
      for (const word of rows
        .get(row)!
        .meaning.split(", ")
        .map((part) => part.replace(/^or /, ""))) {
        expect(
          readRoofBlock("roof", [
            ["Span", "24'"],
            ["Length", "36'"],
            ["Pitch", 6],
            [row, word],
          ]),
        ).toHaveProperty("span", 288);
      }
    }
  });
});

describe("the guide's first jack schedule", () => {
  const table = tableUnder("A first jack schedule");
  const second = table.findIndex(([first]) => first === "Column");

  it("is typed as the guide says, and its column I is the long point", () => {
    const block = table.slice(0, second).map(([row, value]) => [row!, /^\d+$/.test(value!) ? Number(value) : value!]);
    expect(guide).toContain(`JACKTABLE(A1:B${block.length})`);
    const [first, ...jacks] = asked("JACKTABLE", block) as unknown[][];
    expect(jacks.length).toBeGreaterThan(1);
    // The table begins in column D.
    expect(first!["I".charCodeAt(0) - "D".charCodeAt(0)]).toBe("Long point");
    expect(guide).toContain("RAFTER.TAPE(I2)");
  });

  it("has a line for every column", () => {
    const said = table.slice(second + 1).flatMap(([columns]) => columns!.split(", "));
    expect(said.toSorted()).toEqual(headings(jackTable.columns).toSorted());
  });
});

describe("the guide's columns of the other tables", () => {
  // A bar in a cell of the table is escaped; these lines are parted before it.
  const said = tableUnder("Columns of the other tables").map(
    ([table, columns]) => [table!, columns!.split(", ")] as const,
  );
  const tables = {
    MEMBERS: headings(members.columns),
    PLATEMARKS: headings(plateMarks.columns),
    LUMBERORDER: headings(lumberOrder.columns),
    STICKPLAN: headings(stickPlan.columns),
    SALVAGE: headings(salvage.columns),
    SHEATHING: headings(sheathing.columns),
    SAWSETTINGS: headings(sawSettings.columns),
    PIECELIST: headings(pieceList.columns),
    CHANGES: headings(changes.columns),
    CAUTIONS: headings(cautions.columns),
  } as const;

  it.each(Object.entries(tables))("are columns that %s has", (name, columns) => {
    const own = said.filter(([table]) => table === name).flatMap(([, named]) => named);
    expect(own.length).toBeGreaterThan(0);
    expect(own.filter((column) => !(columns as readonly string[]).includes(column))).toEqual([]);
  });
  it("belong to tables that are", () => {
    expect(said.filter(([table]) => !(table in tables))).toEqual([]);
  });
});

describe("the guide's worked sheet count", () => {
  it("is what the take-off counts", () => {
    const { frame, pieces } = framed({ ...HALL, span: 192, length: 288, pitch: 0.75, endPitch: null, overhang: 16 });
    const { courses } = takeOff(frame, pieces);
    const middle = ({ from, to, left, right }: CoursePiece) => to - from - (left + right) / 2;
    const said = (piece: CoursePiece | undefined) =>
      piece ? `${middle(piece).toFixed(1)}, ${piece.offCut ? "off-cut of" : "sheet"} ${piece.sheet}` : "";
    const counted = courses.map(({ side, plane, course, length, runs, sheets }) => {
      const own = eachPiece({ runs });
      return [
        `${side} ${plane}`,
        String(course),
        length.toFixed(1),
        own.reduce((sum, piece) => sum + middle(piece), 0).toFixed(1),
        said(own[0]),
        String(Math.max(0, own.length - 2)),
        said(own.length > 1 ? own.at(-1) : undefined),
        String(sheets),
      ];
    });
    expect(tableUnder("Sheets by courses, worked")).toEqual(counted);
    const sheets = (
      [
        ["Main", 1],
        ["Main", 2],
        ["End", 1],
        ["End", 2],
      ] as const
    ).map(([side, plane]) =>
      courses.filter((one) => one.side === side && one.plane === plane).reduce((sum, one) => sum + one.sheets, 0),
    );
    expect(guide).toContain(`${sheets.join(" + ")} = ${sheets.reduce((sum, one) => sum + one)} in all`);
  });
});

describe("what the guide points to", () => {
  it("its links and drawings are there, and every drawing is shown", () => {
    const targets = [...guide.matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, target]) => target!);
    for (const target of targets) expect(existsSync(`functions/${target}`), target).toBe(true);
    const drawn = readdirSync("functions/drawings").map((name) => `drawings/${name}`);
    const elsewhere = [...readFileSync("README.md", "utf8").matchAll(/\]\(functions\/(drawings\/[^)]+)\)/g)].map(
      ([, target]) => target!,
    );
    expect(drawn.filter((name) => !targets.includes(name) && !elsewhere.includes(name))).toEqual([]);
  });

  it("its headings that README and it link to are there", () => {
    const anchors = new Set(
      [...guide.matchAll(/^#+ (.+)$/gm)].map(([, heading]) =>
        heading!
          .toLowerCase()
          .replace(/[^\p{L}\p{N}\- ]/gu, "")
          .replaceAll(" ", "-"),
      ),
    );
    const asked = [
      ...guide.matchAll(/\]\(#([^)]+)\)/g),
      ...readFileSync("README.md", "utf8").matchAll(/GUIDE\.md#([^)]+)\)/g),
    ].map(([, anchor]) => anchor!);
    expect(asked.length).toBeGreaterThan(10);
    expect(asked.filter((anchor) => !anchors.has(anchor))).toEqual([]);
  });

  it("every function that it names exists", () => {
    const names = new Set(functions.map(({ name }) => name));
    const abbreviations = new Set(["JM", "JE", "KE", "LP", "RAFTER", ...MARKS]);
    const said = [...guide.matchAll(/\b[A-Z]{2,}\b(?!\.md)/g)]
      .map(([word]) => word)
      .filter((word) => !abbreviations.has(word));
    expect(said.length).toBeGreaterThan(5);
    expect(said.filter((word) => !names.has(word))).toEqual([]);
  });
});

describe("what the guide says of cells", () => {
  const quoted = (from: string, to: string) =>
    [...guide.slice(guide.indexOf(from), guide.indexOf(to, guide.indexOf(from))).matchAll(/`([^`]+)`/g)].map(
      ([, text]) => text!,
    );

  it("its pitches and lengths are read, in the unit that it says", () => {
    for (const text of quoted("**Pitch.**", "**Length.**")) expect(readPitch(text), text).toBeCloseTo(0.5, 3);
    for (const text of quoted("Text with marks", "are feet and inches"))
      expect(readLength(text), text).toHaveProperty("unit", "in");
    for (const text of quoted("are feet and inches", "are metric"))
      expect(readLength(text), text).toHaveProperty("unit", "mm");
  });
});

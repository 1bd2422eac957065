import type { RoofFigures } from "./figures.ts";
import { isNamed, piecesOf, said as saidBySolids, sameMarks, sideOf, wordOf } from "./said.ts";
import type { Said, SaidList, SaidMember, TakeOffItem } from "./said.ts";

/** Lengths agree to a millionth of an inch, angles to a ten-millionth of a degree, areas and totals to a billionth of themselves. */
const INCH = 1e-6;
const DEGREE = 1e-7;
const PART = 1e-9;

type Measured = readonly [what: string, measured: number, said: number, within: number];

const off = (all: readonly Measured[]): string[] =>
  all
    .filter(([, measured, said, within]) => !(Math.abs(measured - said) <= within))
    .map(([what, measured, said]) => `${what} measures ${measured}, is said to be ${said}`);

/** Of some rows the one that a piece fits best, and what is wrong with it. Where rows of two wings are the same figures, one of its own side first that still has room for it. */
function best<Row>(
  rows: readonly Row[],
  wrong: (row: Row) => string[],
  hasRoom: (row: Row) => boolean,
  own: (row: Row) => boolean,
): { row: Row; wrong: string[] } | null {
  const judged = rows.map((row) => ({ row, wrong: wrong(row) }));
  const fitting = judged.filter((one) => one.wrong.length === 0);
  const roomy = fitting.filter(({ row }) => hasRoom(row));
  return (
    fitting.length > 0 ? [...roomy.filter(({ row }) => own(row)), ...roomy, ...fitting].slice(0, 1) : judged
  ).reduce<{ row: Row; wrong: string[] } | null>((a, b) => (a && a.wrong.length <= b.wrong.length ? a : b), null);
}

/** Everything in which a program and the solids differ, in words. */
export function differences(figures: RoofFigures, said: Said): string[] {
  return [
    ...members(figures, said),
    ...jacks(figures, said),
    ...lists(figures, said.lists),
    ...takeOff(saidBySolids(figures), said),
  ];
}

const fits = (side: string, row: string): boolean => row === side || (row === "Both" && /^(Main|End)$/.test(side));

/** Hips and valleys that are alike from both sides have no hand in a table. */
const handIn = (
  row: SaidMember,
  { side, hand }: Pick<SaidMember, "side"> & { readonly hand: "left" | "right" | "plain" },
) => (side === "" && row.plain > 0 ? "plain" : hand);

function members(figures: RoofFigures, { members: rows }: Said): string[] {
  const counted = new Map<SaidMember, { left: number; right: number; plain: number }>();
  const found: string[] = [];
  for (const piece of piecesOf(figures)) {
    const at = best(
      rows.filter((row) => row.member === piece.member && (piece.side === "" || fits(piece.side, row.side))),
      (row) => [
        ...off([
          ["the longer face", piece.long, row.long, INCH],
          ["the shorter face", piece.short, row.short, INCH],
          ["the line", piece.line, row.line, INCH],
          ["the board", piece.board, row.board, INCH],
          ...(piece.heel ? [["the heel", piece.heel, row.heel, INCH] as const] : []),
        ]),
        ...(row.tilts.length === piece.tilts.length
          ? off(piece.tilts.map((tilt, i) => ["a tilt", tilt, row.tilts[i]!, Math.max(row.tiltsWithin, DEGREE)]))
          : [`has tilts ${piece.tilts.join(", ")}, is said to have ${row.tilts.join(", ") || "none"}`]),
      ],
      (row) => (counted.get(row) ?? { left: 0, right: 0, plain: 0 })[handIn(row, piece)] < row[handIn(row, piece)],
      (row) => row.side === piece.side,
    );
    const what = `${piece.side} ${piece.member} ${piece.hand}`.trim();
    if (!at) found.push(`${what}: no row`);
    else if (at.wrong.length > 0) found.push(`${what}: ${at.wrong.join("; ")}`);
    else {
      const row = counted.get(at.row) ?? { left: 0, right: 0, plain: 0 };
      row[handIn(at.row, piece)] += 1;
      counted.set(at.row, row);
    }
  }
  return [
    ...found,
    ...rows.flatMap((row) => {
      const { left, right, plain } = counted.get(row) ?? { left: 0, right: 0, plain: 0 };
      return off([
        ["left", left, row.left, 0],
        ["right", right, row.right, 0],
        ["plain", plain, row.plain, 0],
      ]).map((words) => `${row.piece} (${row.side} ${row.member}): ${words}`);
    }),
  ];
}

function jacks({ rafters }: RoofFigures, { jacks: rows }: Said): string[] {
  const left = rows.map(() => ({ left: 0, right: 0 }));
  const found = rafters
    .filter(({ headMark, foot }) => headMark > 0 || foot !== "")
    .flatMap((one) => {
      const at = best(
        rows.filter((row) => fits(sideOf(one.part), row.side)),
        (row) =>
          off([
            ["the longer face", one.long, row.long, INCH],
            ["the shorter face", one.short, row.short, INCH],
            ["the board", one.board, row.board, INCH],
            ["the head's tilt", one.headTilt, row.headTilt, DEGREE],
            ["the head's edge", one.headEdge, row.headEdge, DEGREE],
            ["the head's mark", one.headMark, row.headMark, INCH],
            ["the foot's tilt", one.footTilt, row.footTilt, DEGREE],
            ["the foot's mark", one.footMark, row.footMark, INCH],
          ]),
        (row) => one.hand !== "plain" && left[rows.indexOf(row)]![one.hand] < row[one.hand],
        (row) => row.side === sideOf(one.part),
      );
      if (!at) return [`${one.name}: no row among the jacks`];
      if (at.wrong.length === 0 && one.hand !== "plain") left[rows.indexOf(at.row)]![one.hand] += 1;
      return at.wrong.map((words) => `${one.name}, among the jacks: ${words}`);
    });
  return [
    ...found,
    ...rows.flatMap((row, i) =>
      off([
        ["left", left[i]!.left, row.left, 0],
        ["right", left[i]!.right, row.right, 0],
      ]).map((words) => `jack of ${row.long} (${row.side}): ${words}`),
    ),
  ];
}

/** Every plate and ridge fits a list; a list fits as many plates as it says; what has a wing in its name has that name. */
function lists({ plates, ridges, rafters }: RoofFigures, told: readonly SaidList[]): string[] {
  const kinds = new Map(rafters.map((one) => [one.name, `${wordOf(one.kind)} ${one.hand}`]));
  // A roof without wings has no ridge lists.
  const measured = [...plates, ...(ridges.length > 1 ? ridges : [])].map(({ name, marks }) => ({
    name,
    marks: marks.map(({ at, piece }) => ({ at, member: kinds.get(piece)! })),
  }));
  const fit = (one: Pick<SaidList, "name" | "marks">, list: SaidList): boolean =>
    sameMarks(one, list) &&
    (one.name === list.name || (!isNamed(one.name) && !isNamed(list.name) && !/^(Front|Back)$/.test(list.name)));
  return [
    ...measured
      .filter(({ marks }) => marks.length > 0)
      .filter((one) => !told.some((list) => fit(one, list)))
      .map((one) => {
        const near = told.find(({ name }) => name === one.name);
        const marks = (list: Pick<SaidList, "marks">): string =>
          list.marks.map(({ at, member }) => `${at} ${member}`).join(", ");
        return `${one.name}: no list fits ${marks(one)}${near ? `; it is said to be ${marks(near)}` : ""}`;
      }),
    ...told
      .map((list) => ({ list, count: measured.filter((one) => fit(one, list)).length }))
      .filter(({ list, count }) => list.marks.length > 0 && count !== list.plates)
      .map(({ list, count }) => `the list "${list.name}" fits ${count} plates and says ${list.plates}`),
  ];
}

function takeOff({ takeOff: measured }: Said, { takeOff: told }: Said): string[] {
  return off(
    (Object.keys(told) as TakeOffItem[]).map((item) => [
      item,
      measured[item] ?? NaN,
      told[item] ?? NaN,
      item === "pieces" || item === "fascia corners" ? 0 : Math.max(PART * (measured[item] ?? NaN), INCH),
    ]),
  );
}

import { Failure } from "../../src/measure/result.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import { readRoofBlock } from "../../functions/arguments/roofBlock.ts";
import { grouped } from "../../src/cutting/model/grouped.ts";
import { CellError, Refusal } from "../../src/registry/refusal.ts";
import { frame, type Frame } from "../../src/roof/frame/frame.ts";
import { pieces } from "../../src/roof/frame/pieces.ts";
import { placedBoards } from "../../src/roof/frame/placedBoards.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import { allDrawings } from "../drawing/allDrawings.ts";
import { asked } from "../functions/asked.ts";
import { hashOf } from "./kept.ts";

/** A roof block as cells. */
export type Block = readonly (readonly (string | number)[])[];

/** What one roof answered: each table as it spills or its refusal, and a fingerprint of each drawing. */
export interface Answers {
  readonly tables: Readonly<Record<string, unknown>>;
  readonly drawings: Readonly<Record<string, Fingerprint>>;
}

/** A drawing without its numbers, hashed, and two sums over its numbers; equal drawings have equal ones. */
export interface Fingerprint {
  readonly shape: string;
  readonly numbers: number;
  readonly sum: number;
  readonly weighted: number;
}

/** Asks every table of a roof, and draws it. The order is asked of one roof in eight, for it takes longest. */
export async function answersOf(block: Block, index: number): Promise<Answers> {
  const calls: Call[] = [
    ["JACKTABLE", [block]],
    ["MEMBERS", [block]],
    ["PLATEMARKS", [block]],
    ["TAKEOFF", [block]],
    ["CAUTIONS", [block]],
    ["COMPARE", [block, [[5, 8]], [[16, 24]]]],
    ["SALVAGE", [block, "Main", "left", 60]],
  ];
  if (index % 8 === 0)
    calls.push(
      ["LUMBERORDER", [block, [[96], [144], [192], [240], [480]]]],
      ["STICKPLAN", [block, [[144], [192], [240], [480]]]],
    );
  const tables = await tablesOf(calls);
  return { tables, drawings: typeof tables["MEMBERS"] === "string" ? {} : drawn(block) };
}

/** Asks the tables that show what the frame of a roof is, and what stands in it. Refused, one says why. */
export async function framingOf(block: Block): Promise<Answers> {
  const first = await tablesOf([["MEMBERS", [block]]]);
  if (typeof first["MEMBERS"] === "string") return { tables: first, drawings: {} };
  const others = ["JACKTABLE", "PLATEMARKS", "TAKEOFF", "CAUTIONS", "SHEATHING", "SAWSETTINGS", "PIECELIST"];
  const rest = await tablesOf([
    ...others.map((name): Call => [name, [block]]),
    ["SALVAGE", [block, "Main", "left", 40]],
    ["CHANGES", [block, changed(block, "Overhang", 2)]],
    ["CHANGES", [changed(block, "Length", 8), block], "CHANGES of length"],
  ]);
  return { tables: { ...first, ...rest, boards: boardsOf(block) }, drawings: {} };
}

/** The same roof, a figure of its main column so much more. */
const changed = (block: Block, label: string, by: number): Block =>
  block.map((row) => (row[0] === label ? [label, Number(row[1]) + by, ...row.slice(2)] : row));

/** Every board where it stands, with its faces and marks, by the kind of piece. */
function boardsOf(block: Block): unknown[][] {
  const made = frame(readRoofBlock("roof", block) as RoofSpec) as Frame;
  const kinds = grouped(placedBoards(made, pieces(made)), ({ piece }) => piece.member);
  return [...kinds].map(([kind, boards]) => [kind, ...summaryOf(boards.map(({ piece: _, ...board }) => board))]);
}

/** The same in little room: each table by what it holds. */
export async function summedFramingOf(block: Block): Promise<Answers> {
  const { tables } = await framingOf(block);
  return {
    tables: Object.fromEntries(Object.entries(tables).map(([name, table]) => [name, summaryOf(table)])),
    drawings: {},
  };
}

/** What something holds, hashed without its numbers; how many numbers it has, and two sums of them. */
function summaryOf(it: unknown): (string | number)[] {
  const numbers: number[] = [];
  const rest = JSON.stringify(it, (_, value: unknown) =>
    typeof value === "number" ? numbers.push(value) && 0 : value,
  );
  return [hashOf(rest), numbers.length, ...sumsOf(numbers)];
}

/** The sum of numbers, and one that their order changes too. */
const sumsOf = (numbers: readonly number[]): [sum: number, weighted: number] => [
  numbers.reduce((sum, value) => sum + value, 0),
  numbers.reduce((sum, value, i) => sum + value * ((i % 97) + 1), 0),
];

type Call = readonly [name: string, cells: readonly unknown[], as?: string];

async function tablesOf(calls: readonly Call[]): Promise<Record<string, unknown>> {
  const tables: Record<string, unknown> = {};
  for (const [name, cells, as = name] of calls) {
    const answer = await asked(name, ...cells);
    tables[as] = answer instanceof Refusal ? messageOf(answer) : answer instanceof CellError ? answer.error : answer;
  }
  return tables;
}

function drawn(block: Block): Record<string, Fingerprint> {
  const spec = readRoofBlock("roof", block);
  if (spec instanceof Failure) return {};
  return Object.fromEntries(allDrawings(spec, { width: 640 }).map(([name, svg]) => [name, fingerprint(svg)]));
}

function fingerprint(svg: string): Fingerprint {
  const numbers = (svg.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
  const shape = hashOf(svg.replace(/-?\d+(?:\.\d+)?/g, "#"));
  const [sum, weighted] = sumsOf(numbers).map((value) => Number(value.toFixed(2))) as [number, number];
  return { shape, numbers: numbers.length, sum, weighted };
}

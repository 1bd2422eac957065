import { messageOf } from "../../functions/words/problemText.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import type { Cell } from "../../src/registry/worksheetFunction.ts";
import { asked, type Row } from "./asked.ts";

type Name = "LUMBERORDER" | "STICKPLAN";

/** The rows that a cell would spill, each by its headings. */
export async function rows(name: Name, ...cells: readonly unknown[]): Promise<Row[]> {
  const answer = await asked(name, ...cells);
  if (!Array.isArray(answer)) throw new Error(answer instanceof Refusal ? messageOf(answer) : JSON.stringify(answer));
  const [headings, ...body] = answer as Cell[][];
  return body.map((row) => Object.fromEntries(headings!.map((heading, i) => [heading, row[i]!])));
}

export async function refusal(name: Name, ...cells: readonly unknown[]): Promise<string> {
  const answer = await asked(name, ...cells);
  if (!(answer instanceof Refusal)) throw new Error(JSON.stringify(answer).slice(0, 300));
  return messageOf(answer);
}

export const HEADS = ["Piece", "Size", "Length", "Count"];
export const FEET = `8' to 24' by 2'`;
export const bought = (order: readonly Row[]) =>
  order.slice(0, -1).map((row) => [row["Size"], row["Board"], row["Count"], paid(row)]);
/** The cost of a row, or without prices the length bought. */
export const paid = (row: Row) => (row["Cost"] === "" ? row["Length bought"] : row["Cost"])!;
export const least = (order: readonly Row[]) => order.at(-1)!;

import { planCuts } from "../../src/cutting/planCuts.ts";
import type { CutOptions, CutPlan, StockBoard, StockPiece } from "../../src/cutting/stock.ts";
import { LimitedMap } from "../../src/measure/limitedMap.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { isBlank } from "../../src/registry/cells.ts";
import { optionalLength } from "../../src/registry/parameters.ts";
import { readChoiceCell } from "../../src/registry/readChoiceCell.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import { newReading, startOf, type Reading } from "../../src/registry/reading.ts";
import type { Input, Named, Parameter } from "../../src/registry/worksheetFunction.ts";
import type { ArgumentProblem, BlockProblem } from "./blockProblem.ts";
import { boardsParameter } from "./boardTable.ts";
import { cuttingInput, type CuttingInput } from "./cuttingInput.ts";
import { piecesParameter } from "./pieceList.ts";
import { TRIM, YES_NO } from "./endTrim.ts";

/** A plan and what it was made from. */
export interface CutOrder extends CuttingInput {
  readonly plan: CutPlan;
  /** null: the lengths have no unit. */
  readonly unit: Unit | null;
  readonly kerf: number;
  /** Off every board, both ends together. */
  readonly trim: number;
  readonly crownDown: boolean;
  readonly priced: boolean;
  /** Every price was 0, as a desktop hands over empty cells: the order is by length. */
  readonly zeroPrices: boolean;
  /** Percent that a roof block adds. */
  readonly waste: number;
}

/** Width of the saw cut when it is not given: an eighth of an inch, or 3 mm (common practice, no source). */
export const KERF = { in: 0.125, mm: 3 } as const;

/** No saw for framing cuts wider (common practice, no source). */
const WIDEST = { in: 1, mm: 25 } as const;

const kerfLength = optionalLength(
  "kerf",
  "Width of the saw cut; 0 is allowed.",
  "1/8 in, or 3 mm where the lengths are metric",
  { zero: true, example: `1/8"` },
);

export const kerfParameter: typeof kerfLength = {
  ...kerfLength,
  read(cell, reading) {
    const kerf = kerfLength.read(cell, reading);
    if (typeof kerf !== "number" || reading.unit === null || kerf <= WIDEST[reading.unit]) return kerf;
    return refuse<BlockProblem>(reading, { kind: "kerf too wide", read: cell });
  },
};

/** What boards lose at their ends when it is not given: the row of the roof block, or nothing for a list. */
const trimParameter = optionalLength(
  "trim",
  "Taken off every board, both ends together; 0 is allowed.",
  "the row End trim, or 0 for a list",
  TRIM,
);

/** Whether jacks may lie crown down, when it is not given: the row of the roof block, or no for a list. */
const crownDownParameter: Parameter<boolean | null, "crownDown"> = {
  name: "crownDown",
  description: "Whether a jack may lie end for end, its crown down, where that saves a board or money: yes or no.",
  quantity: "text",
  optional: true,
  defaultText: "the row Allow crown down, or no for a list",
  read(cell, reading) {
    if (isBlank(cell)) return null;
    if (typeof cell === "boolean") return cell;
    const word = readChoiceCell(cell, reading, YES_NO);
    return word instanceof Failure ? word : word === "yes";
  },
};

/** What LUMBERORDER and STICKPLAN take. */
export const orderParameters = [
  piecesParameter,
  boardsParameter,
  kerfParameter,
  trimParameter,
  crownDownParameter,
] as const;

/** The arguments of an order, read; null where the default counts. */
export type OrderArguments = Named<typeof orderParameters>;

/** The plan for what was read: the least that was found, and the bound below which no plan is. */
export async function cutOrder(
  { pieces: source, boards: listed, kerf, trim, crownDown }: OrderArguments,
  { unit }: Pick<Reading, "unit">,
): Promise<Result<CutOrder, ArgumentProblem | StockProblem>> {
  const spec = "roof" in source ? source.roof.frame.spec : null;
  const cuts = {
    kerf: kerf ?? KERF[unit ?? "in"],
    trim: trim ?? spec?.endTrim ?? 0,
    crownDown: crownDown ?? spec?.crownDown ?? false,
  };
  const shortest = Math.min(...listed.map(({ length }) => length));
  if (cuts.trim >= shortest) {
    const place = trim === null ? { argument: "pieces", row: "End trim" } : { argument: "trim" };
    return new Refusal<BlockProblem>({ kind: "trim takes the board", trim: cuts.trim, board: shortest }, place, unit);
  }
  const lists = cuttingInput(source, listed, unit, cuts.trim);
  const { pieces, boards } = lists;
  const plan = await shared(pieces, boards, cuts);
  if (plan instanceof Failure) return placed(plan.problem, lists.rows, unit);
  // A roof's table says itself what no board is long enough for.
  if (plan.sizes.length === 0 && "list" in source) return placed(plan.missing[0]!, lists.rows, unit);
  return {
    ...lists,
    ...cuts,
    plan,
    unit,
    priced: listed.some(({ price }) => price !== null),
    zeroPrices: listed.some(({ zeroPrice }) => zeroPrice),
    waste: spec?.waste ?? 0,
  };
}

/** The order for raw cells, read as LUMBERORDER and STICKPLAN read them; the search is shared with these. */
export async function orderFor(...cells: readonly Input[]): Promise<Result<CutOrder>> {
  const reading = newReading();
  const read: Record<string, unknown> = {};
  for (const [i, parameter] of orderParameters.entries()) {
    const value = parameter.read(cells[i], startOf(reading, parameter.name));
    if (value instanceof Failure) return value;
    read[parameter.name] = value;
  }
  return cutOrder(read as unknown as OrderArguments, reading);
}

const WITH_BOARDS: ReadonlySet<StockProblem["kind"]> = new Set([
  "no board of that size",
  "too few boards",
  "no way found",
]);

/** The core counts pieces; a user's own list has rows. */
function placed(problem: StockProblem, rows: readonly number[], unit: Unit | null): Refusal<StockProblem> {
  const row = "row" in problem ? (rows[problem.row! - 1] ?? null) : null;
  const place = WITH_BOARDS.has(problem.kind)
    ? { argument: "boards" }
    : { argument: "pieces", ...(row === null ? {} : { row }) };
  return new Refusal("row" in problem ? { ...problem, row } : problem, place, unit);
}

/** How many plans are kept; a sheet seldom asks for more. */
const KEPT = 16;
const plans = new LimitedMap<string, Promise<Result<CutPlan, StockProblem>>>(KEPT);

/** Calls on the same lists share one search, which is most of the work. */
function shared(
  pieces: readonly StockPiece[],
  boards: readonly StockBoard[],
  cuts: Required<Pick<CutOptions, "kerf" | "trim" | "crownDown">>,
): Promise<Result<CutPlan, StockProblem>> {
  const key = JSON.stringify([pieces, boards, cuts.kerf, cuts.trim, cuts.crownDown]);
  const known = plans.get(key);
  if (known) return known;
  const plan = planCuts(pieces, boards, cuts);
  plans.set(key, plan);
  // A search that could not be loaded is tried again at the next call.
  void plan.catch(() => plans.delete(key));
  return plan;
}

import { planCuts } from "../../src/cutting/planCuts.ts";
import type { CutPlan, StockBoard, StockPiece } from "../../src/cutting/stock.ts";
import { LimitedMap } from "../../src/measure/limitedMap.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { optionalLength } from "../../src/registry/parameters.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import { refuse } from "../../src/registry/refuse.ts";
import { newReading, startOf, type Reading } from "../../src/registry/reading.ts";
import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { BlockProblem } from "./blockProblem.ts";
import { boardsParameter, type ListedBoard } from "./boardTable.ts";
import { cuttingInput, type CuttingInput } from "./cuttingInput.ts";
import { piecesParameter, type PieceSource } from "./pieceList.ts";

/** A plan and what it was made from. */
export interface CutOrder extends CuttingInput {
  readonly plan: CutPlan;
  /** null: the lengths have no unit. */
  readonly unit: Unit | null;
  readonly kerf: number;
  readonly priced: boolean;
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

/** The plan for what was read: the least that was found, and the bound below which no plan is. */
export async function cutOrder(
  source: PieceSource,
  listed: readonly ListedBoard[],
  kerf: number | null,
  { unit }: Pick<Reading, "unit">,
): Promise<Result<CutOrder, StockProblem>> {
  const cut = kerf ?? KERF[unit ?? "in"];
  const lists = cuttingInput(source, listed, unit);
  const { pieces, boards } = lists;
  const plan = await shared(pieces, boards, cut);
  if (plan instanceof Failure) return placed(plan.problem, source, unit);
  return {
    ...lists,
    plan,
    unit,
    kerf: cut,
    priced: listed.some(({ price }) => price !== null),
    waste: "roof" in source ? source.roof.frame.spec.waste : 0,
  };
}

/** The order for raw cells, read as LUMBERORDER and STICKPLAN read them; the search is shared with these. */
export async function orderFor(pieces: Input, boards: Input, kerf?: Input): Promise<Result<CutOrder>> {
  const reading = newReading("pieces");
  const source = piecesParameter.read(pieces, reading);
  if (source instanceof Failure) return source;
  const listed = boardsParameter.read(boards, startOf(reading, "boards"));
  if (listed instanceof Failure) return listed;
  const cut = kerfParameter.read(kerf, startOf(reading, "kerf"));
  if (cut instanceof Failure) return cut;
  return cutOrder(source, listed, cut, reading);
}

const WITH_BOARDS: ReadonlySet<StockProblem["kind"]> = new Set([
  "no board of that size",
  "too few boards",
  "no way found",
]);

/** The core counts pieces; a user's own list has rows. */
function placed(problem: StockProblem, source: PieceSource, unit: Unit | null): Refusal<StockProblem> {
  const row = "row" in problem && "list" in source ? source.list[problem.row! - 1]!.row : null;
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
  kerf: number,
): Promise<Result<CutPlan, StockProblem>> {
  const key = JSON.stringify([pieces, boards, kerf]);
  const known = plans.get(key);
  if (known) return known;
  const plan = planCuts(pieces, boards, { kerf, crownDown: true });
  plans.set(key, plan);
  return plan;
}

import { FormulaExecuteStageType, SetFormulaCalculationNotificationMutation } from "@univerjs/engine-formula";
import { describe, expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

/** Stands still, as a busy page does, until the time is over in which the engine gathers edits. */
const standStill = () => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 150);

// The engine lets the page work twice in a calculation: before its formulas, and before what hangs on its spills.
const { START_CALCULATION, START_CALCULATION_ARRAY_FORMULA } = FormulaExecuteStageType;
const waits = [START_CALCULATION, START_CALCULATION_ARRAY_FORMULA] as const;

/** Does one thing after the other, each while a calculation waits at its stage. */
function whileWaiting(...edits: readonly (readonly [stage: FormulaExecuteStageType, act: () => void])[]): unknown[] {
  const left = [...edits];
  t.commands.onCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationNotificationMutation.id) return;
    const { stageInfo } = params as { stageInfo?: { stage: FormulaExecuteStageType } };
    if (!left.length || stageInfo?.stage !== left[0]![0]) return;
    left.shift()![1]();
    standStill();
  });
  return left;
}

function typeAll(last: string): void {
  t.type("A1", 3);
  t.type("B1", "=RAFTER.ROWS(A1)");
  // Of the spill alone: it is calculated after its formulas.
  t.type("D1", "=SUM(C1:C9)");
  t.type("E1", last);
}

describe("an edit while the sheet calculates", () => {
  it.each(waits)("at stage %i is calculated, and so is what was being calculated", async (stage) => {
    const left = whileWaiting([stage, () => t.type("A1", 2)]);
    typeAll("=A1*21");
    expect(await t.values("A1:E1")).toEqual([[2, 1, 10, 30, 42]]);
    expect(left).toEqual([]);
  });

  it("before it knows its first formula loses nothing of what was being calculated", async () => {
    const left = whileWaiting([FormulaExecuteStageType.START_DEPENDENCY, () => t.type("A1", 2)]);
    t.type("B1", "=20+1");
    expect(await t.values("A1:B1")).toEqual([[2, 21]]);
    expect(left).toEqual([]);
  });

  it.each(waits.flatMap((first) => waits.map((second) => [first, second] as const)))(
    "at stage %i, and another at stage %i of the next, are both calculated",
    async (first, second) => {
      const left = whileWaiting([first, () => t.type("A1", 2)], [second, () => t.type("A3", 5)]);
      typeAll("=A1*21+A3");
      expect(await t.values("A1:E1")).toEqual([[2, 1, 10, 30, 47]]);
      expect(left).toEqual([]);
    },
  );

  it.each(waits)("at stage %i that moves cells leaves no result where they were", async (stage) => {
    const left = whileWaiting([stage, () => void t.worksheet().insertRowBefore(0)]);
    typeAll("=1+1");
    await t.values("A1");
    expect(await t.values("A1:E2")).toEqual([
      ["", "", "", "", ""],
      [3, 1, 10, 60, 2],
    ]);
    expect(left).toEqual([]);
  });
});

it("a late answer that comes while the sheet calculates reaches its cell and what hangs on it", async () => {
  t.type("A1", 3);
  t.type("B1", "=RAFTER.SLOW(A1)");
  t.type("D1", "=SUM(B1:B9)");
  await t.values("A1");
  // The answer arrives, and is then calculated, while this runs.
  const left = whileWaiting(
    [START_CALCULATION, () => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300)],
    [START_CALCULATION, () => t.type("A5", 1)],
  );
  t.type("F1", "=RAFTER.ROWS(A1)");
  while (t.sheet.late.pending || t.sheet.calculation.busy) await new Promise((resolve) => setTimeout(resolve, 20));
  expect(await t.values("B1:G1")).toEqual([[3, "", 7, "", 1, 10]]);
  expect(left).toEqual([]);
});

it("a calculation that fails ends, and the next goes on", async () => {
  const failing = whileWaiting([
    START_CALCULATION,
    () => {
      const { runtime } = t;
      const set = runtime.setRuntimeData;
      runtime.setRuntimeData = (result) => {
        runtime.setRuntimeData = set;
        set.call(runtime, result);
        throw new RangeError("too deep");
      };
    },
  ]);
  t.type("A1", "=1+1");
  await t.values("A1");
  expect(failing).toEqual([]);
  t.type("A2", "=2+2");
  expect(await t.values("A2")).toEqual([[4]]);
});

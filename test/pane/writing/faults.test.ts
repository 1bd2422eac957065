import { afterEach, describe, expect, it, vi } from "vitest";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { paneState, type PaneState } from "../../../src/pane/state/paneState.ts";
import { blockUnder } from "../../../src/pane/state/sheetBlock.ts";
import { useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { copyPlain } from "../../../src/pane/writing/copyPlain.ts";
import { fill } from "../../../src/pane/writing/fill.ts";
import { putCards } from "../../../src/pane/writing/putCards.ts";
import { roofTables } from "../../../src/pane/writing/roofTables.ts";
import { once, takeBack } from "../../../src/pane/writing/sheetWork.ts";
import { updateBlock } from "../../../src/pane/writing/updateBlock.ts";
import type { ExcelFake } from "../../hosts/excelFake.ts";
import { excelUnderTest } from "../../hosts/excelUnderTest.ts";

const NOTHING = /^Nothing was written/;

/** A pane on the stand-in for Excel. It answers every question with "over" or "yes". */
function pane(): { fake: ExcelFake; state: PaneState } {
  const { fake, host } = excelUnderTest();
  const state = paneState(host);
  state.inputs.value = START_INPUTS;
  state.question.subscribe((question) => {
    const answer = question?.choices.find(({ id }) => id === "over" || id === "yes");
    if (answer) queueMicrotask(() => question!.answer(answer.id));
  });
  return { fake, state };
}
const schedule = roofTables(new Set(["schedule"] as const), START_INPUTS);
const choice = (newSheets: boolean, block = true) => ({ block, tables: () => schedule, newSheets });
/** Every cell, as one text: quicker to compare than a thousand objects. */
const everything = (fake: ExcelFake) => JSON.stringify(fake.everything());
/** The roof block and a table stand in the workbook and are followed. */
async function filled(state: PaneState): Promise<void> {
  await fill(state, choice(true));
  state.written.value = [];
  useBlock(state, (await blockUnder(state.host, { sheet: "Roof", row: 1, column: 0, rows: 1, columns: 1 }))!, "");
}

/** What a button does, and what must be there before. */
const WAYS: Record<
  string,
  { ready?: (t: ReturnType<typeof pane>) => Promise<void>; press: (state: PaneState) => Promise<unknown> }
> = {
  "fill, on new sheets": { press: (state) => fill(state, choice(true)) },
  "fill, over filled cells": {
    ready: async ({ fake }) => {
      for (let row = 0; row < 9; row++) fake.type("Sheet1", row, row % 4, `mine ${row}`);
      fake.sheet("Sheet1")!.cell(0, 0).fill = "#ffee00";
      fake.sheet("Sheet1")!.widths.set(0, 99);
    },
    press: (state) => fill(state, choice(false)),
  },
  "insert a table on the block that is there": {
    ready: async ({ state }) => filled(state),
    press: (state) => fill(state, choice(true, false)),
  },
  "write into the block": {
    ready: async ({ state }) => {
      await filled(state);
      state.inputs.value = { ...state.inputs.value, Span: "26'", Overhang: "20" };
    },
    press: updateBlock,
  },
  "copy a sheet with plain values": { ready: async ({ state }) => filled(state), press: copyPlain },
  "insert the cards": {
    ready: async ({ state }) => {
      state.inputs.value = { ...START_INPUTS, Span: "7'", Length: "9'" };
    },
    press: putCards,
  },
};

describe.each([
  ["before", 1],
  ["half-way", 1],
  ["after", 1],
  ["half-way", 4],
] as const)("calls that Excel fails %s they are done, %i in a row", (when, count) => {
  it.each(Object.entries(WAYS))(
    "%s: at every single call it leaves nothing, or says so and can be undone",
    async (_, { ready, press }) => {
      const start = async () => {
        const t = pane();
        await ready?.(t);
        t.fake.syncs = 0;
        return { ...t, before: everything(t.fake), stood: t.state.written.value.length };
      };
      const whole = await start();
      await press(whole.state);
      const calls = whole.fake.syncs;
      expect(everything(whole.fake)).not.toBe(whole.before);
      expect(calls).toBeGreaterThan(4);
      let failed = 0;
      for (let sync = 1; sync <= calls; sync++) {
        const { fake, state, before, stood } = await start();
        fake.fault = { sync, calls: count, when };
        await press(state);
        fake.fault = null;
        const { value: says } = state.says;
        if (NOTHING.test(says)) {
          failed++;
          expect([sync, state.written.value.length]).toEqual([sync, stood]);
        } else {
          // Written, and only what came after failed; or left in part, which is said.
          expect([sync, says]).toEqual([
            sync,
            expect.stringMatching(
              / written to |holds what |could not all be put back|now follow|^The undo is not finished/,
            ),
          ]);
          expect(state.written.value.length).toBe(stood + 1);
          await once(state, () => takeBack(state));
          expect([sync, state.says.value]).toEqual([sync, expect.stringMatching(/^Undone/)]);
        }
        expect(everything(fake) === before, `call ${sync}`).toBe(true);
      }
      expect(failed).toBeGreaterThan(2);
    },
  );

  it("undo: at every single call it can be pressed again, blames nobody and finishes", async () => {
    const start = async () => {
      const t = pane();
      await WAYS["fill, over filled cells"]!.ready!(t);
      t.fake.type("Sheet1", 0, 9, "beside");
      const before = everything(t.fake);
      await fill(t.state, choice(false));
      await fill(t.state, choice(true));
      return { ...t, before };
    };
    const whole = await start();
    whole.fake.syncs = 0;
    await once(whole.state, () => takeBack(whole.state));
    await once(whole.state, () => takeBack(whole.state));
    expect(everything(whole.fake)).toBe(whole.before);
    const calls = whole.fake.syncs;
    for (let sync = 1; sync <= calls; sync++) {
      const { fake, state, before } = await start();
      fake.syncs = 0;
      fake.fault = { sync, calls: count, when };
      for (let press = 0; press < 6 && state.written.value.length; press++) {
        await once(state, () => takeBack(state));
        expect([sync, press, state.says.value]).toEqual([
          sync,
          press,
          expect.stringMatching(/^Undone|^The undo is not finished/),
        ]);
      }
      expect([sync, state.written.value.length]).toEqual([sync, 0]);
      expect(everything(fake) === before, `call ${sync}`).toBe(true);
    }
  });
});

describe("a sheet that goes on its own", () => {
  afterEach(() => void vi.useRealTimers());

  it("is asked about again when it changes while a question stands", async () => {
    const { fake, state } = pane();
    await filled(state);
    state.inputs.value = { ...state.inputs.value, Span: "26'" };
    const asked: (readonly string[])[] = [];
    const stop = state.question.subscribe((question) => {
      if (!question) return;
      asked.push(question.lines);
      if (asked.length === 1) fake.type("Roof", 1, 1, "25'");
    });
    await updateBlock(state);
    stop();
    expect(asked).toHaveLength(2);
    expect(asked[1]!.join(" ")).toMatch(/has changed meanwhile.*25' becomes 26'/);
    expect(fake.sheet("Roof")!.peek(1, 1).value).toBe("26'");
  });

  it("that never answers is not waited for after a stop, and what comes late can be undone", async () => {
    vi.useFakeTimers();
    const { fake, state } = pane();
    let letGo = () => undefined as void;
    const { host } = state;
    const { write } = host;
    host.write = async (...given) => {
      const written = await write(...given);
      await new Promise<void>((resolve) => (letGo = resolve));
      return written;
    };
    host.takeBack = () => Promise.reject(new Error("Excel is busy."));
    const pressed = fill(state, choice(true));
    await vi.advanceTimersByTimeAsync(1000);
    expect(state.work.value!.shown).toBe(true);
    state.work.value!.stop();
    await vi.advanceTimersByTimeAsync(9000);
    expect(state.work.value).not.toBeNull();
    await vi.advanceTimersByTimeAsync(2000);
    await pressed;
    expect([state.work.value, state.says.value]).toEqual([null, expect.stringContaining("has not answered")]);
    expect(fake.sheets.map(({ name }) => name)).toContain("Roof");
    letGo();
    await vi.advanceTimersByTimeAsync(100);
    expect(state.written.value).toHaveLength(1);
  });

  it("the place is the cell that was selected when the button was pressed", async () => {
    const { fake, state } = pane();
    fake.select(2, 1, 1, 1);
    await fill(state, {
      ...choice(false),
      tables: async () => (fake.select(20, 9, 1, 1), roofTables(new Set(), START_INPUTS)),
    });
    expect(fake.sheet("Sheet1")!.peek(3, 1).value).toBe("Span");
  });
});

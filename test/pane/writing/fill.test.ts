import { describe, expect, it, vi } from "vitest";
import type { Host, WriteStep } from "../../../src/hosts/host.ts";
import { START_INPUTS } from "../../../src/pane/state/fields.ts";
import { fill } from "../../../src/pane/writing/fill.ts";
import { useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { updateBlock } from "../../../src/pane/writing/updateBlock.ts";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { putCards } from "../../../src/pane/writing/putCards.ts";
import { blockUnder } from "../../../src/pane/state/sheetBlock.ts";
import { ownClock } from "../ownClock.ts";
import { sheetHost } from "../sheetHost.ts";

ownClock();

/** A pane on a sheet with a roof block that takes 100 ms to answer anything, and the titles of what was written. */
function pane() {
  const written: string[] = [];
  const { host } = sheetHost(
    [
      ["Span", "24'"],
      ["Length", "40'"],
      ["Pitch", 6],
    ],
    {
      write: async ({ title }: WriteStep) => {
        written.push(title);
        return { title, areas: [{ sheet: "Bid", row: 0, column: 0, rows: 1, columns: 1 }] };
      },
      picture: async () => undefined,
    },
  );
  const slow = Object.fromEntries(
    Object.entries(host).map(([name, part]) => [
      name,
      typeof part === "function" && !name.startsWith("on")
        ? async (...given: unknown[]) => (
            await new Promise((resolve) => setTimeout(resolve, 100)),
            (part as (...all: unknown[]) => unknown)(...given)
          )
        : part,
    ]),
  ) as unknown as Host;
  const state = paneState(slow);
  state.inputs.value = { ...START_INPUTS, Span: "24'", Length: "40'", Pitch: "6" };
  return { state, written };
}

/** Presses eight times, 70 ms apart. */
async function impatiently<T>(press: () => Promise<T>): Promise<T[]> {
  const answers: Promise<T>[] = [];
  for (let i = 0; i < 8; i++) {
    answers.push(press());
    await vi.advanceTimersByTimeAsync(70);
  }
  await vi.advanceTimersByTimeAsync(2000);
  return Promise.all(answers);
}

describe("a button pressed again before the sheet has answered", () => {
  it("fills once, and can be pressed again afterwards", async () => {
    const { state, written } = pane();
    const press = () => fill(state, { block: true, tables: () => [], newSheets: true });
    await impatiently(press);
    expect(written).toHaveLength(1);
    await impatiently(press);
    expect(written).toHaveLength(2);
  });
  it("asks about a block once, and updates it once", async () => {
    const { state, written } = pane();
    const found = blockUnder(state.host, { sheet: "Bid", row: 0, column: 0, rows: 1, columns: 1 });
    await vi.advanceTimersByTimeAsync(500);
    useBlock(state, (await found)!);
    setInput(state, "Span", "30'");
    let asked = 0;
    state.question.subscribe(
      (question) => void (question && (asked++, setTimeout(() => question.answer("yes"), 1000))),
    );
    expect((await impatiently(() => updateBlock(state))).filter(Boolean)).toHaveLength(1);
    expect([asked, written.length]).toEqual([1, 1]);
  });
  it("puts the cards into the sheet once", async () => {
    const { state, written } = pane();
    // Pictures take longer than all the presses.
    await impatiently(() => putCards(state));
    expect(written).toHaveLength(1);
  });
});

import { signal } from "@preact/signals";
import { describe, expect, it, vi } from "vitest";
import type { Host, WriteStep } from "../../../src/hosts/host.ts";
import { emptyWing, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { fill } from "../../../src/pane/writing/fill.ts";
import { useBlock } from "../../../src/pane/state/syncWithSheet.ts";
import { updateBlock } from "../../../src/pane/writing/updateBlock.ts";
import { paneState, setInput, type Question } from "../../../src/pane/state/paneState.ts";
import { putCards } from "../../../src/pane/writing/putCards.ts";
import { texts } from "../../../src/pane/words/texts.ts";
import { ownClock } from "../ownClock.ts";
import { roofRows, sheetHost } from "../sheetHost.ts";
import { blockUnder, readAgain } from "../../../src/pane/state/sheetBlock.ts";
import type { TableToWrite } from "../../../src/pane/writing/layoutFill.ts";

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

describe("what is written", () => {
  const at = { row: 0, column: 0 };
  const { host } = sheetHost([]);
  /** What one press writes for these inputs, what it says, and the field that it names. */
  async function pressed(inputs: Partial<Inputs>, general: string | null = null) {
    const written: WriteStep[] = [];
    const write = async (step: WriteStep) => (
      written.push(step),
      { title: step.title, areas: [{ sheet: "Roof", ...at, rows: 1, columns: 1 }] }
    );
    const own = paneState({ ...host, write });
    own.inputs.value = { ...START_INPUTS, Span: "24'", Length: "40'", Pitch: "6", ...inputs };
    const state = general === null ? own : { ...own, report: signal({ ...own.report.value, general }) };
    const filled = fill(state, { block: true, tables: () => [], newSheets: true });
    await vi.advanceTimersByTimeAsync(500);
    return { field: await filled, says: state.says.value, written };
  }

  it("is nothing while a field is at fault, which is named, or the roof as a whole", async () => {
    const field = await pressed({ Span: "wide" });
    expect([field.written, field.field]).toEqual([[], { row: "Span" }]);
    expect(field.says).toBe(texts.fixFirst("Span"));
    const whole = await pressed({}, "It is upside down.");
    expect([whole.written, whole.field, whole.says]).toEqual([[], null, texts.fixGeneral("It is upside down.")]);
    expect((await pressed({})).written).toHaveLength(1);
  });

  it.each([
    ["", /^(left|right)$/],
    [" ", /^(left|right)$/],
    [" left ", /^left$/],
    [" right ", /^right$/],
  ])(
    "says which valley of a wing runs on to the ridge, so that a later change does not turn it over: %j",
    async (typed, said) => {
      const wing = {
        ...emptyWing("A"),
        Wall: "front",
        "From left corner": "14'",
        "Out from wall": "8'",
        Span: "12'",
        Ends: "gable",
        "Long valley": typed,
      };
      const { written } = await pressed({ wings: [wing] });
      const line = written[0]!.blocks[0]!.cells.find(([label]) => label?.content === "Long valley")!;
      expect(line.at(-1)!.content).toMatch(said);
    },
  );
});

describe("cells that are not empty", () => {
  /** A pane whose sheet has these filled cells at each look, what it is asked, and what it answers. */
  function overFilled(looks: readonly (readonly string[])[], answers: readonly string[]) {
    const written: WriteStep[] = [];
    const asked: string[][] = [];
    const seen: WriteStep[] = [];
    const { host } = sheetHost([], {
      occupied: async (step) => (seen.push(step), looks[seen.length - 1] ?? looks.at(-1)!),
      write: async (step) => {
        written.push(step);
        return { title: step.title, areas: [] };
      },
    });
    const state = paneState(host);
    state.inputs.value = { ...START_INPUTS, Span: "24'", Length: "40'", Pitch: "6" };
    state.question.subscribe((question) => {
      if (!question) return;
      expect(written).toEqual([]);
      asked.push([...question.lines]);
      queueMicrotask(() => question.answer(answers[asked.length - 1] ?? "cancel"));
    });
    const done = async () => {
      const filled = fill(state, { block: true, tables: () => [], newSheets: false });
      await vi.advanceTimersByTimeAsync(500);
      await filled;
    };
    const columns = (steps: readonly WriteStep[]) => steps.map(({ blocks }) => blocks[0]!.column);
    return { state, written, asked, seen, done, columns };
  }

  it.each([["Bid!A1"], ["Bid!A1", "Bid!B4"]])(
    "are named before anything is written, were it one only: %s",
    async (...cells) => {
      const sheet = overFilled([cells], []);
      await sheet.done();
      expect(sheet.asked).toHaveLength(1);
      for (const cell of cells) expect(sheet.asked[0]!.join(" ")).toContain(cell);
      expect(sheet.written).toEqual([]);
    },
  );

  it("are overwritten when the user says so, and no question is asked where none is in the way", async () => {
    const over = overFilled([["Bid!A1"]], ["over"]);
    await over.done();
    expect([over.asked.length, over.written.length]).toEqual([1, 1]);
    const free = overFilled([[]], []);
    await free.done();
    expect([free.asked.length, free.written.length]).toEqual([0, 1]);
  });

  it("are asked about again when one more came meanwhile, but not when one went", async () => {
    const more = overFilled([["Bid!A1"], ["Bid!A1", "Bid!B4"]], ["over", "over"]);
    await more.done();
    expect([more.asked.length, more.written.length]).toEqual([2, 1]);
    expect(more.asked.map((lines) => lines.includes(texts.ask.changedMeanwhile))).toEqual([false, true]);
    const other = overFilled([["Bid!A1"], ["Bid!B4"]], ["over"]);
    await other.done();
    expect([other.asked.length, other.written.length]).toEqual([2, 0]);
    const fewer = overFilled([["Bid!A1", "Bid!B4"], ["Bid!B4"]], ["over"]);
    await fewer.done();
    expect([fewer.asked.length, fewer.written.length]).toEqual([1, 1]);
  });

  it("stay, when the user takes the next free place to the right", async () => {
    const sheet = overFilled([["Bid!A1"], ["Bid!B1"], ["Bid!C1"], []], ["beside"]);
    await sheet.done();
    expect(sheet.columns(sheet.seen)).toEqual([0, 1, 2, 3]);
    expect(sheet.columns(sheet.written)).toEqual([3]);
  });

  it("stay, and it is said, where forty columns to the right are no place free", async () => {
    const sheet = overFilled([["Bid!A1"]], ["beside"]);
    await sheet.done();
    expect(sheet.written).toEqual([]);
    expect(sheet.columns(sheet.seen)).toEqual(Array.from({ length: 41 }, (_, i) => i));
    expect(sheet.state.says.value).toContain(texts.ask.noRoom);
  });

  it("stay, when the user takes new sheets", async () => {
    const sheet = overFilled([["Bid!A1"]], ["sheets"]);
    await sheet.done();
    expect(sheet.written.map(({ blocks }) => blocks[0]!.newSheet)).toEqual([true]);
  });
});

describe("tables on a block that the fields no longer agree with", () => {
  const jacks: TableToWrite = {
    title: "Jacks",
    sheet: "Jacks",
    layout: ({ sheet, row, column }, { block }) => ({
      sheet,
      newSheet: true,
      row,
      column,
      cells: [[{ content: block }]],
    }),
  };
  /** What is asked where the fields say this span, what is written on these answers, and the sheet's span afterwards. */
  async function pressed(span: string, ...answers: string[]) {
    const [rows, titles, asked] = [roofRows(), [] as string[], [] as Question[]];
    const { host } = sheetHost(rows);
    const write: Host["write"] = async (step) => {
      titles.push(step.title);
      if (step.title === "Jacks")
        return { title: step.title, areas: [{ sheet: "Jacks", row: 0, column: 0, rows: 1, columns: 1 }] };
      return host.write(step);
    };
    const state = paneState({ ...host, write });
    await useBlock(state, (await readAgain(state.host, { sheet: "Bid", row: 1, column: 0, rows: 3, columns: 2 }))!);
    setInput(state, "Span", span);
    state.question.subscribe((question) => {
      if (!question) return;
      asked.push(question);
      setTimeout(() => question.answer(answers[asked.length - 1] ?? "cancel"), 10);
    });
    const filled = fill(state, { block: false, tables: () => [jacks], newSheets: true });
    await vi.advanceTimersByTimeAsync(500);
    await filled;
    return {
      asked: asked.map(({ title, lines, choices }) => [title, lines, choices.map(({ id }) => id)]),
      titles,
      span: rows[1]![1],
    };
  }
  const question = [
    texts.ask.differsTitle,
    [texts.differs(["Span"]), texts.ask.differsWhy],
    ["update", "sheet", "cancel"],
  ];

  it("asks nothing while they agree", async () => {
    expect(await pressed("24'")).toEqual({ asked: [], titles: ["Jacks"], span: "24'" });
  });
  it("can have the sheet count, which stays as it is", async () => {
    expect(await pressed("26'", "sheet")).toEqual({ asked: [question], titles: ["Jacks"], span: "24'" });
  });
  it("can have the block updated first", async () => {
    const { asked, titles, span } = await pressed("26'", "update", "yes");
    expect([asked.length, asked[0], titles, span]).toEqual([2, question, [texts.updated, "Jacks"], "26'"]);
  });
  it("are not written on any other answer", async () => {
    expect(await pressed("26'", "cancel")).toEqual({ asked: [question], titles: [], span: "24'" });
    expect(await pressed("26'", "update", "cancel")).toMatchObject({ titles: [], span: "24'" });
  });
});

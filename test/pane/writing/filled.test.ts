import { describe, expect, it } from "vitest";
import type { Area, Host } from "../../../src/hosts/host.ts";
import { blockRows } from "../../../src/pane/state/blockCells.ts";
import { START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";
import { paneState, setInput, type PaneState, type Question } from "../../../src/pane/state/paneState.ts";
import { fill, type Choice } from "../../../src/pane/writing/fill.ts";
import { insert } from "../../../src/pane/writing/insert.ts";
import { roofTables } from "../../../src/pane/writing/roofTables.ts";
import type { TableToWrite } from "../../../src/pane/writing/layoutFill.ts";
import { texts } from "../../../src/pane/words/texts.ts";
import { excelUnderTest } from "../../hosts/excelUnderTest.ts";

/** A pane on the stand-in for Excel, what it was shown, and what it asked; it answers so, and "cancel" after that. */
function pane(more: Partial<Host> = {}, answers: readonly string[] = []) {
  const { fake, host } = excelUnderTest();
  const { show } = host;
  const [shown, asked] = [[] as Area[], [] as Question[]];
  const showing = ({ sheet, row, column, rows, columns }: Area) => shown.push({ sheet, row, column, rows, columns });
  Object.assign(host, { show: (area: Area) => (showing(area), show.call(host, area)), ...more });
  const state = paneState(host);
  state.question.subscribe((question) => {
    if (!question) return;
    asked.push(question);
    queueMicrotask(() => question.answer(answers[asked.length - 1] ?? "cancel"));
  });
  const contentAt = (sheet: string, row: number, column: number) => fake.sheet(sheet)!.peek(row, column);
  return { fake, host, state, shown, asked, contentAt };
}
const takeOff = (await roofTables(new Set(["takeoff"]), START_INPUTS)) as readonly TableToWrite[];
const choice = (more: Partial<Choice> = {}): Choice => ({
  block: true,
  tables: () => takeOff,
  newSheets: true,
  ...more,
});
const CORNER = { row: 0, column: 0, rows: 1, columns: 1 };
/** Under its title, a line for each field that is not empty. */
const BLOCK = { sheet: "Roof", row: 1, column: 0, rows: blockRows(START_INPUTS).length, columns: 2 };

describe("a block that is filled in", () => {
  it("has a name of its own, which its tables read; the fields follow it, and it is shown", async () => {
    const { host, state, shown, contentAt } = pane();
    await host.nameArea("RoofBlock", { sheet: "Sheet1", row: 7, column: 7, rows: 2, columns: 2 });
    await fill(state, choice());
    expect((await host.namedAreas()).get("RoofBlock2")).toEqual(BLOCK);
    expect(contentAt("Take-off", 0, 0).formula).toBe("=RAFTER.TAKEOFF(RoofBlock2)");
    expect(state.link.value).toMatchObject({ area: BLOCK, name: "RoofBlock2", inputs: state.inputs.value });
    expect(shown).toEqual([{ sheet: "Roof", ...CORNER }]);
    expect(state.says.value).toMatch(/^Roof block, Take-off written to Roof!A1:B25, 'Take-off'!A1:/);
    expect(state.written.value).toHaveLength(1);
  });

  it("stays, and can be undone, where the workbook takes no name for it, which is said", async () => {
    const { fake, state, shown } = pane({ nameArea: () => Promise.reject(new Error("Names are locked.")) });
    await fill(state, choice());
    expect(fake.sheets.map(({ name }) => name)).toContain("Roof");
    expect(state.says.value).toBe(texts.notNamed(texts.together([texts.roofBlock, "Take-off"]), "Names are locked."));
    expect([state.written.value.length, state.link.value, shown]).toEqual([1, null, []]);
  });

  it("stays where it cannot be shown", async () => {
    const { state } = pane({ show: () => Promise.reject(new Error("Another sheet is being edited.")) });
    await fill(state, choice());
    expect([state.written.value.length, state.says.value]).toEqual([1, expect.stringMatching(/written to/)]);
  });
});

it("names the cells in its way, with a way round them on this sheet, on others, over them and out", async () => {
  const { fake, state, asked } = pane();
  fake.type("Sheet1", 1, 1, "mine");
  await fill(state, choice({ newSheets: false }));
  const { ask } = texts;
  expect(asked.map(({ answer: _, ...question }) => question)).toEqual([
    {
      title: ask.occupiedTitle,
      lines: [ask.occupied(["Sheet1!B2"]), ask.nothingYet],
      choices: [
        { id: "beside", label: ask.beside },
        { id: "sheets", label: ask.newSheets },
        { id: "over", label: ask.over, sure: ask.overSure(1) },
        { id: "cancel", label: ask.cancel },
      ],
    },
  ]);
});

describe("tables alone", () => {
  async function followed(more: Partial<Host> = {}, answers: readonly string[] = []) {
    const own = pane(more, answers);
    await fill(own.state, choice({ tables: () => [] }));
    own.shown.splice(0);
    return own;
  }

  it("read the block that the fields follow by its name, which stays where it is", async () => {
    const { host, state, shown, contentAt } = await followed();
    const [link, names] = [state.link.value, await host.namedAreas()];
    await fill(state, choice({ block: false }));
    expect(contentAt("Take-off", 0, 0).formula).toBe("=RAFTER.TAKEOFF(RoofBlock)");
    expect([state.link.value, await host.namedAreas()]).toEqual([link, names]);
    expect(shown).toEqual([{ sheet: "Take-off", ...CORNER }]);
  });

  it("bring the block along where the fields follow none", async () => {
    for (const press of [(state: PaneState) => fill(state, choice({ block: false })), insertOne]) {
      const { fake, state } = pane();
      await press(state);
      expect(fake.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Roof", "Take-off"]);
      expect(state.link.value!.area).toEqual(BLOCK);
    }
  });

  it("are inserted on the block that is followed, on a sheet of their own", async () => {
    const { fake, state } = await followed();
    await insertOne(state);
    expect(fake.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Roof", "Take-off"]);
  });

  it("are made of the roof in the sheet; with a new block, of the fields", async () => {
    const { state } = await followed({}, ["sheet"]);
    setInput(state, "Span", "30'");
    const spans: string[] = [];
    const tables = (inputs: Inputs) => (spans.push(inputs.Span), takeOff);
    await fill(state, choice({ block: false, tables }));
    await fill(state, choice({ block: true, tables }));
    expect(spans).toEqual(["24'", "30'"]);
  });

  it("are not written where none is chosen, or one cannot be made, which is said", async () => {
    const { state, fake } = await followed();
    const sheets = fake.sheets.length;
    await fill(state, choice({ block: false, tables: () => [] }));
    expect(state.says.value).toBe(texts.nothingChosen);
    await fill(state, choice({ block: false, tables: () => "The boards are too short." }));
    expect(state.says.value).toBe(texts.fixGeneral("The boards are too short."));
    expect([fake.sheets.length, state.written.value.length]).toEqual([sheets, 1]);
  });

  it("can be stopped while they are worked out", async () => {
    const { state, fake } = await followed();
    const sheets = fake.sheets.length;
    const never = () => new Promise<readonly TableToWrite[]>(() => setTimeout(() => state.work.value!.stop(), 0));
    await fill(state, choice({ block: false, tables: never }));
    expect([state.says.value, fake.sheets.length, state.work.value]).toEqual([texts.stopped, sheets, null]);
  });

  it("that are not written after all leave what was said of the block that was", async () => {
    const { state, fake, asked } = await followed({}, ["update", "yes", "cancel"]);
    fake.type("Sheet1", 0, 0, "mine");
    setInput(state, "Span", "30'");
    await fill(state, choice({ block: false, newSheets: false }));
    expect(asked.map(({ title }) => title)).toEqual([
      texts.ask.differsTitle,
      texts.ask.updateTitle,
      texts.ask.occupiedTitle,
    ]);
    expect([state.says.value, state.written.value.length]).toEqual([texts.written(texts.updated, ["Roof!B2"]), 2]);
    // Nothing went before it the next time.
    await fill(state, choice({ block: false, newSheets: false }));
    expect([state.says.value, state.written.value.length]).toEqual([texts.ask.canceled, 2]);
  });
});

const insertOne = (state: PaneState) => insert(state, takeOff[0]!);

import { messageOf } from "../../../functions/words/problemText.ts";
import { describe, expect, it } from "vitest";
import { EMPTY_INPUTS, START_INPUTS } from "../../../src/pane/state/fields.ts";
import { kerfNow, kerfText, orderNow, type Order } from "../../../src/pane/state/orderNow.ts";
import { report } from "../../../src/pane/state/report.ts";
import { Refusal } from "../../../src/registry/refusal.ts";

const orderOf = async (inputs = START_INPUTS, kerf = "") => (await orderNow({ inputs, kerf })) as Order;

describe("orderNow", () => {
  it("buys the boards that its plan cuts up, and the waste besides, and says that nothing less will do", async () => {
    const { lines, boards, length, proof, plan } = await orderOf();
    const count = (sum: number, one: { count: number }) => sum + one.count;
    const planned = lines.map(({ waste, ...line }) => ({ ...line, count: line.count - waste }));
    expect(plan.sticks.reduce((sum, { times }) => sum + times, 0)).toBe(planned.reduce(count, 0));
    for (const { size, board, count: wanted, leftOver } of planned) {
      const own = plan.sticks.filter((stick) => stick.size === size && stick.length === board);
      expect(own.reduce((sum, { times }) => sum + times, 0)).toBe(wanted);
      expect(own.reduce((sum, { times, leftOver: left }) => sum + times * left, 0)).toBeCloseTo(leftOver, 6);
    }
    expect(lines.some(({ waste }) => waste > 0)).toBe(true);
    expect(new Set(lines.map(({ size, board }) => `${size} ${board}`)).size).toBe(lines.length);
    expect(boards).toBe(lines.reduce(count, 0));
    expect(length).toBe(lines.reduce((sum, line) => sum + line.board * line.count, 0));
    expect(proof).toMatch(/^proved/);
    // Every piece of the roof is on the plan as often as the roof has it.
    const { pieces } = report(START_INPUTS).model!;
    const cut = plan.sticks.flatMap(({ times, pieces: on }) => on.map(({ name, hand }) => ({ name, hand, times })));
    for (const { mark, left, right, plain } of pieces)
      for (const [hand, wanted] of Object.entries({ left, right, plain }))
        expect(
          cut.filter((one) => one.name === mark && one.hand === hand).reduce((sum, { times }) => sum + times, 0),
          `${mark} ${hand}`,
        ).toBe(wanted);
  });

  it("counts the kerf that is typed: a wider one never needs less", async () => {
    const [none, usual, wide] = await Promise.all(
      ["0", "", `1"`].map((kerf) => orderOf({ ...START_INPUTS, Waste: "0" }, kerf)),
    );
    expect(none!.length).toBeLessThanOrEqual(usual!.length);
    expect(usual!.length).toBeLessThanOrEqual(wide!.length);
    expect(none!.plan.sticks).not.toEqual(wide!.plan.sticks);
  });

  it("takes the usual boards where the block names none, in the roof's unit", async () => {
    const metric = { ...EMPTY_INPUTS, Span: "7200", Length: "10300", Pitch: "7", Unit: "mm" };
    const order = await orderOf(metric);
    const { boards } = report(metric).model!.frame.spec;
    expect(order.lines.length).toBeGreaterThan(0);
    for (const { board } of order.lines) expect(boards).toContain(board);
    expect(order.plan.unit).toBe("mm");
  });

  it("names a piece that no board holds", async () => {
    const order = await orderNow({ inputs: { ...START_INPUTS, Boards: "8'" }, kerf: "" });
    expect((order as Order).plan.missing.join()).toMatch(
      /none long enough: [CK] takes a 2x8 of .*none long enough: H takes a 2x10/,
    );
  });
});

describe("kerfText", () => {
  it.each([
    [0.125, "in", `1/8"`],
    [3 / 32, "in", `3/32"`],
    [2.4, "mm", "2.4 mm"],
    [0, "in", `0"`],
  ] as const)("%d in %s reads %s", (kerf, unit, text) => {
    expect(kerfText(kerf, unit)).toBe(text);
  });
});

describe("kerfNow", () => {
  it.each([
    ["", "in", 0.125],
    ["", "mm", 3],
    ["1/8", "in", 0.125],
    ['3/32"', "in", 0.09375],
    ["0", "in", 0],
    ["2.4", "mm", 2.4],
    ["3 mm", "mm", 3],
  ] as const)("%j in %s is %d", (text, unit, kerf) => {
    expect(kerfNow(text, unit)).toBeCloseTo(kerf, 9);
  });
  it.each(["thin", "-1/8", "1e999"])("refuses %j and says what to type", (text) => {
    const read = kerfNow(text, "in");
    expect(read).toBeInstanceOf(Refusal);
    expect(messageOf(read as Refusal)).toMatch(/^kerf: .*1\/8/);
  });
});

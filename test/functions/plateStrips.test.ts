import { describe, expect, it } from "vitest";
import { plateStrips } from "../../functions/plateStrips.ts";
import { framed } from "../roof/anySpec.ts";
import { wingedCases } from "../solids/wings/cases.ts";
import { modelOf } from "../solids/wings/frameOf.ts";

describe("plateStrips", () => {
  // By hand: centers at 24, 48 ... 168 on a plate of 192, boards of 1 1/2.
  it("marks both edges of every rafter, and jacks by their hand", () => {
    const [main] = plateStrips(framed({ span: 144, length: 192 }));
    expect(main!.marks.map(({ name }) => name)).toEqual(["J2 R", "J1 R", "K", "C", "K", "J1 L", "J2 L"]);
    expect(main!.marks.map(({ from, to }) => [from, to])).toEqual(
      [24, 48, 72, 96, 120, 144, 168].map((center) => [center - 0.75, center + 0.75]),
    );
  });

  it("an inner corner is one line, 12' 6\" from the hook where the wing starts there", () => {
    const lists = plateStrips(modelOf(wingedCases["a T with a lower ridge"]!).frame);
    const lines = lists.flatMap(({ marks }) => marks.filter(({ from, to }) => from === to));
    expect(lines.map(({ from }) => from)).toContain(150);
    expect(lines.length).toBeLessThan(lists.flatMap(({ marks }) => marks).length / 4);
  });

  it("gives the wanted lists only", () => {
    const { frame } = modelOf(wingedCases["a T with a lower ridge"]!);
    const names = plateStrips(frame, ({ place }) => place?.kind === "ridge").map(({ name }) => name);
    expect(names).toEqual(["Main ridge", "Wing A ridge"]);
  });
});

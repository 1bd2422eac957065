import { beforeEach, expect, it } from "vitest";
import type { Host } from "../../src/hosts/host.ts";
import { schedule } from "./conformance/steps.ts";
import type { FakeBook } from "./fakeBook.ts";

/** What a copy with plain values must be, on either stand-in for Excel. */
export function plainCopies(make: () => Promise<{ fake: FakeBook; host: Host }>): void {
  let fake: FakeBook;
  let host: Host;
  beforeEach(async () => {
    ({ fake, host } = await make());
    await host.write(schedule(4));
    fake.spill("Jacks", 0, 3, [
      ["Piece", "Long point"],
      ["J1", 16.5],
      ["J2", ""],
    ]);
    fake.sheet("Jacks")!.cell(0, 3).bold = true;
    fake.sheet("Jacks")!.widths.set(3, 99);
  });
  it("looks the same and shows the same, without a formula; the original keeps its own", async () => {
    const original = JSON.stringify(fake.everything());
    const written = await host.copyPlain!("Jacks", "Jacks plain");
    const [from, copy] = [fake.sheet("Jacks")!, fake.sheet("Jacks plain")!];
    expect(fake.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Jacks", "Jacks plain"]);
    for (const [at, cell] of from.cells) {
      const [row, column] = at.split(",").map(Number) as [number, number];
      const { formula, value, format, bold, anchor } = copy.peek(row, column);
      expect([at, formula, value, format, bold, anchor]).toEqual([
        at,
        cell.value,
        cell.value,
        cell.format,
        cell.bold,
        undefined,
      ]);
    }
    expect(copy.widths).toEqual(from.widths);
    expect(from.peek(0, 3).formula).toBe("=RAFTER.JACKTABLE(A1:B2)");
    expect(await host.takeBack(written)).toEqual([]);
    expect(JSON.stringify(fake.everything())).toBe(original);
  });
  it("is not taken back over an edit", async () => {
    const written = await host.copyPlain!("Jacks", "Jacks plain");
    fake.type("Jacks plain", 1, 4, 17);
    expect(await host.takeBack(written)).toEqual(["'Jacks plain'!E2"]);
  });
  it("waits for cells that are under way, and refuses a protected sheet", async () => {
    fake.showAt("Jacks", 0, 3, "#BUSY!");
    await expect(host.copyPlain!("Jacks", "Jacks plain")).rejects.toThrow("still being worked out");
    fake.sheet("Jacks")!.isProtected = true;
    await expect(host.copyPlain!("Jacks", "Jacks plain")).rejects.toThrow("is protected");
    expect(fake.sheets).toHaveLength(2);
  });
}

import { beforeAll, describe, expect, it } from "vitest";
import { functions } from "../../../functions/index.ts";
import { loadBundled } from "../../../src/build/loadBundled.ts";
import type { Book } from "../../../src/xlsx/book.ts";

let calculated: (typeof import("../../../src/hosts/embedded/calculated.ts"))["calculated"];
beforeAll(async () => {
  ({ calculated } = await loadBundled<typeof import("../../../src/hosts/embedded/calculated.ts")>(
    "src/hosts/embedded/calculated.ts",
  ));
});

describe("a book calculated without a page", () => {
  it("has every result, spills and names included, and all else as it was", async () => {
    const look = { format: "0.00", bold: true, borders: { bottom: { line: "thin", color: "#7d8b99" } } } as const;
    const book: Book = {
      title: "Test",
      names: [{ name: "Spacing", formula: "='A sheet'!$A$1" }],
      sheets: [
        {
          name: "A sheet",
          rows: [
            [
              { value: 24 },
              { value: null, formula: "=Spacing*2", look },
              { value: null, formula: '=IF(A1>1,"","no")' },
            ],
            [{ value: null, formula: "=SEQUENCE(2,2)" }],
            [],
            [{ value: null, formula: "=RAFTER.JACKSTEP(8,16)" }],
          ],
          columns: [{ size: 120 }],
          frozenRows: 1,
        },
      ],
    };
    const { sheets, ...rest } = await calculated(book, functions);
    expect(rest).toEqual({ title: "Test", names: book.names });
    expect(sheets[0]).toMatchObject({ name: "A sheet", columns: [{ size: 120 }], frozenRows: 1 });
    const { rows } = sheets[0]!;
    expect(rows[0]).toEqual([
      { value: 24 },
      { value: 48, formula: "=Spacing*2", look },
      { value: "", formula: '=IF(A1>1,"","no")' },
    ]);
    expect(rows[1]).toEqual([
      { value: 1, formula: "=SEQUENCE(2,2)", spill: { rows: 2, columns: 2 } },
      { value: 2, spilled: true },
    ]);
    expect(rows[2]).toEqual([
      { value: 3, spilled: true },
      { value: 4, spilled: true },
    ]);
    // NAVEDTRA 14044, ch. 2: 19.23 in at unit rise 8, 16 in on centers.
    expect(rows[3]![0]!.value).toBeCloseTo(19.23, 2);
  });
});

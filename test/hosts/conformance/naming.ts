import { describe, expect, it } from "vitest";
import type { Sheet } from "./sheet.ts";
import { area, block, step } from "./steps.ts";

/** Names of areas. */
export function naming(sheet: Sheet): void {
  describe("names", () => {
    it("stand for their area until they are moved to another", async () => {
      const { host } = sheet.t;
      await host.nameArea("RoofBlock", area(4, 0, 11, 2));
      await host.nameArea("RoofBlock2", area(0, 27, 1, 1));
      expect(new Map(await host.namedAreas())).toEqual(
        new Map([
          ["RoofBlock", area(4, 0, 11, 2)],
          ["RoofBlock2", area(0, 27, 1, 1)],
        ]),
      );
      await host.nameArea("RoofBlock", area(4, 0, 12, 3));
      expect([...(await host.namedAreas())]).toHaveLength(2);
      expect((await host.namedAreas()).get("RoofBlock")).toEqual(area(4, 0, 12, 3));
    });
    it("may stand on a sheet whose name is quoted", async () => {
      const { host } = sheet.t;
      await host.write(step(block(0, 0, [["a"]], { sheet: "Bob's roof 2", newSheet: true })));
      const there = { ...area(1, 1, 2, 2), sheet: "Bob's roof 2" };
      await host.nameArea("RoofBlock", there);
      expect((await host.namedAreas()).get("RoofBlock")).toEqual(there);
    });
  });
}

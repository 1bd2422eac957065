import { afterEach, beforeEach, describe } from "vitest";
import type { HostUnderTest } from "./hostUnderTest.ts";
import { asking } from "./conformance/asking.ts";
import { naming } from "./conformance/naming.ts";
import { reading } from "./conformance/reading.ts";
import { Sheet } from "./conformance/sheet.ts";
import { takingBack } from "./conformance/takingBack.ts";
import { writing } from "./conformance/writing.ts";

/**
 * What every host must do, written against the port alone; results are compared whole, so that hosts do not differ.
 *
 * `makeHost` gives a fresh workbook with one empty sheet, Sheet1, active, A1 selected.
 */
export function conformance(name: string, makeHost: () => Promise<HostUnderTest>): void {
  const sheet = new Sheet();
  describe(`${name} as a host`, () => {
    beforeEach(async () => void (sheet.t = await makeHost()));
    afterEach(async () => sheet.t.dispose?.());
    reading(sheet);
    writing(sheet);
    takingBack(sheet);
    asking(sheet);
    naming(sheet);
  });
}

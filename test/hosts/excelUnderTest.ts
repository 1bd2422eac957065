import { adapterUnderTest } from "./adapterUnderTest.ts";
import { FakeError } from "./customFunctionsFake.ts";
import { ExcelFake } from "./excelFake.ts";

/** The adapter on the stand-in, with the globals that Excel's page script would bring. */
export function excelUnderTest() {
  const fake = new ExcelFake();
  Object.assign(globalThis, {
    Excel: fake,
    CustomFunctions: { Error: FakeError, ErrorCode: { invalidValue: "#VALUE!" } },
  });
  return adapterUnderTest(fake, async (run, address) => {
    // As Excel calls it: no arguments, then the invocation with the calling cell.
    try {
      return String(run({ address }));
    } catch (error) {
      return (error as FakeError).code;
    }
  });
}

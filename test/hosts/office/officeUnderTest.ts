import type { HostUnderTest } from "../hostUnderTest.ts";
import { adapterUnderTest } from "../adapterUnderTest.ts";
import { loadOffice } from "./loadOffice.ts";
import { OfficeHost } from "./officeHost.ts";

let started: Promise<OfficeHost> | undefined;

/** The vendor's office.js, started once, on a new workbook. */
export async function office(): Promise<OfficeHost> {
  started ??= (async () => {
    const host = new OfficeHost();
    await loadOffice(host);
    return host;
  })();
  const host = await started;
  host.fresh();
  return host;
}

/** The adapter on the vendor's own office.js. */
export async function officeUnderTest(): Promise<HostUnderTest & { fake: OfficeHost }> {
  const fake = await office();
  return adapterUnderTest(fake, async (run, address) => {
    // The runtime wants a name of its own for each function; the last to be given a name has it.
    CustomFunctions.associate("REFUSING", run);
    const { ok, code } = await fake.call("REFUSING", [], address);
    // 7 is #VALUE! on the wire.
    return !ok && code === 7 ? "#VALUE!" : `${String(ok)} ${code}`;
  });
}

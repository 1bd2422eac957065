import type { Area, HostCell } from "../../../src/hosts/host.ts";
import type { HostUnderTest } from "../hostUnderTest.ts";
import { area } from "./steps.ts";

/** The host of the running test, and what its cells hold. */
export class Sheet {
  t!: HostUnderTest;

  /** Formulas, or values where there is none. */
  async contents(of: Area): Promise<HostCell["value"][][]> {
    return (await this.t.host.read(of)).map((row) => row.map(({ formula, value }) => formula ?? value));
  }

  async formats(of: Area): Promise<string[][]> {
    return (await this.t.host.read(of)).map((row) => row.map(({ format }) => format));
  }

  /** All that a step of these tests may change. */
  async everything(): Promise<unknown> {
    return { sheets: await this.t.host.sheets(), cells: await this.t.host.read(area(0, 0, 12, 8)) };
  }
}

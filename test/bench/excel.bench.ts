import { calculated, largeRoof } from "../hosts/office/largeRoof.ts";
import { officeUnderTest } from "../hosts/office/officeUnderTest.ts";
import type { Row } from "./row.ts";

/** The adapter on the vendor's own office.js: what its library takes, for a stand-in beneath it answers at once. */
export async function bench(): Promise<Row[]> {
  const { fake, host } = await officeUnderTest();
  const step = await largeRoof();
  const seconds: number[] = [];
  let cells = 0;
  for (let time = 0; time < 5; time++) {
    fake.fresh();
    const written = await host.write(step);
    cells = await calculated(fake, step);
    const start = performance.now();
    await host.takeBack(written);
    seconds.push((performance.now() - start) / 1000);
  }
  const taken = seconds.sort((a, b) => a - b)[2]!;
  return [
    {
      name: "six tables of an 80' by 160' roof at 12 in taken back, to one second",
      ratio: taken,
      what: `${cells} spilled cells in ${Math.round(taken * 1000)} ms, the stand-in's own work included`,
      most: 1,
    },
  ];
}

import { beforeEach, expect, it, vi } from "vitest";
import type { Host } from "../../../src/hosts/host.ts";
import { calculated, largeRoof } from "./largeRoof.ts";
import type { OfficeHost } from "./officeHost.ts";
import { officeUnderTest } from "./officeUnderTest.ts";

/** Most bytes of a request: a tenth of what Excel on the web takes. */
const MOST_BYTES = 500_000;

let fake: OfficeHost;
let host: Host;
beforeEach(async () => {
  ({ fake, host } = await officeUnderTest());
});

it("six tables of a large roof are written and taken back in light requests, and nothing is kept", async () => {
  const step = await largeRoof();
  const before = fake.everything();
  const table: Record<string, string>[] = [];
  const did = async <T>(what: string, job: () => Promise<T>): Promise<T> => {
    fake.seen = [];
    const result = await job();
    for (const { bytes, answer, actions, flags, did: names } of fake.seen)
      table.push({
        what,
        bytes: `${bytes}`,
        answer: `${answer}`,
        actions: `${actions}`,
        flags: `${flags}`,
        did: names.join(" "),
      });
    for (const { bytes, answer } of fake.seen) expect(Math.max(bytes, answer)).toBeLessThan(MOST_BYTES);
    return result;
  };
  expect(await did("look", () => host.occupied(step))).toEqual([]);
  const written = await did("write", () => host.write(step));
  const cells = await calculated(fake, step);
  expect(cells).toBeGreaterThan(3_000);
  expect(await did("take back", () => host.takeBack(written))).toEqual([]);
  expect(fake.everything()).toEqual(before);
  // The client lets go of what is left after a run, in a request of its own.
  await vi.waitFor(() => expect(fake.kept).toBe(0), 20_000);
  process.stdout.write(printed(table));
  // A question for each spill, not for each cell.
  const asked = table.filter(({ what }) => what === "take back").reduce((sum, { actions }) => sum + Number(actions), 0);
  expect(asked).toBeLessThan(cells);
});

/** What each request was, for people: the flags are those that office.js gives it (1: it may write, 4: Excel cannot undo it, as far as seen). */
function printed(rows: readonly Readonly<Record<string, string>>[]): string {
  const lines = [["", "bytes", "answer", "actions", "flags", "did"], ...rows.map((row) => Object.values(row))];
  return `${lines
    .map((line) =>
      line
        .map((text) => text.padEnd(10))
        .join(" ")
        .trimEnd(),
    )
    .join("\n")}\n`;
}

import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { closedChannels } from "../../src/build/closedChannels.ts";

const core = readFileSync("node_modules/@univerjs/core/lib/es/index.js", "utf8");

/** What is still open, of the channels by which a task waited for its turn. */
async function open(script: string, cancel: boolean): Promise<number> {
  let left = 0;
  class Counted extends MessageChannel {
    constructor() {
      super();
      left++;
      this.port1.addEventListener("close", () => void left--);
    }
  }
  const wait = /^function requestImmediateMacroTask[\s\S]*?^}$/m.exec(script)![0];
  const make = new Function("MessageChannel", `${wait}; return requestImmediateMacroTask;`) as (
    of: unknown,
  ) => (task: () => void) => () => void;
  let called = false;
  const stop = make(Counted)(() => void (called = true));
  if (cancel) stop();
  for (let i = 0; i < 20; i++) await new Promise((resolve) => setImmediate(resolve));
  expect(called).toBe(!cancel);
  if (left > 0) stop();
  return left;
}

it("a channel on which a task waited for its turn is closed after it, as after one that was called off", async () => {
  expect(await open(core, false)).toBe(1);
  expect(await open(closedChannels(core), false)).toBe(0);
  expect(await open(closedChannels(core), true)).toBe(0);
  expect(() => closedChannels("")).toThrow("another way");
});

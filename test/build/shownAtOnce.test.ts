import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { shownAtOnce } from "../../src/build/shownAtOnce.ts";

const page = readFileSync("node_modules/@univerjs/ui/lib/es/index.js", "utf8");

/** How long a script's page waits before it shows the sheet, in milliseconds. */
async function wait(script: string): Promise<number> {
  const shows = /^\t_bootstrapWorkbench\(\) \{[\s\S]*?^\t\}$/m.exec(script)![0];
  const waits: number[] = [];
  const window = { setTimeout: (_: unknown, ms: number) => void waits.push(ms) };
  const shown = (await new Promise((resolve) => {
    const make = new Function("window", "LifecycleStages", `return { ${shows} };`) as (...of: unknown[]) => {
      _bootstrapWorkbench(): void;
    };
    Object.assign(make(window, { Ready: 1 }), {
      bootstrap: resolve,
      disposeWithMe: () => undefined,
      _lifecycleService: { onStage: async () => undefined },
    })._bootstrapWorkbench();
  })) as () => Promise<void>;
  await shown();
  expect(waits.length).toBe(1);
  return waits[0]!;
}

it("the sheet is shown without a wait once all is there", async () => {
  expect(await wait(page)).toBe(300);
  expect(await wait(shownAtOnce(page))).toBe(0);
  expect(() => shownAtOnce("")).toThrow("another way");
});

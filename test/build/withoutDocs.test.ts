import { build } from "esbuild";
import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { withoutDocs } from "../../src/build/withoutDocs.ts";
import { call } from "../../src/registry/call.ts";
import type { WorksheetFunction } from "../../src/registry/worksheetFunction.ts";

describe("a function file without its docs", () => {
  // With a call of its own: its refusals are those of its bundle.
  let bare: readonly WorksheetFunction[];
  let callBare: typeof call;
  beforeAll(async () => {
    const { outputFiles } = await build({
      stdin: {
        contents: 'export { functions } from "./functions/index.ts"; export { call } from "./src/registry/call.ts";',
        resolveDir: ".",
      },
      bundle: true,
      write: false,
      format: "esm",
      target: "node20",
      logLevel: "error",
      plugins: [
        {
          name: "docs",
          setup: ({ onLoad }) =>
            onLoad({ filter: /[\\/]functions[\\/][^\\/]+\.ts$/ }, ({ path }) => ({
              contents: withoutDocs(readFileSync(path, "utf8")),
              loader: "ts",
            })),
        },
      ],
    });
    const address = `data:text/javascript;base64,${Buffer.from(outputFiles[0]!.text).toString("base64")}`;
    ({ functions: bare, call: callBare } = (await import(/* @vite-ignore */ address)) as {
      functions: typeof bare;
      call: typeof call;
    });
  });

  it("has lost summaries, results in words and sources", () => {
    expect(bare.map(({ name }) => name)).toEqual(functions.map(({ name }) => name));
    expect(new Set(bare.flatMap(({ summary, returns, examples }) => [summary, returns, examples.length]))).toEqual(
      new Set(["", 0]),
    );
  });

  it.each(functions.map((definition, i) => [definition.name, definition, i] as const))(
    "%s answers as before",
    async (_, definition, i) => {
      expect(bare[i]!.result).toBe(definition.result);
      for (const { cells } of definition.examples)
        expect(await callBare(bare[i]!, cells)).toEqual(await call(definition, cells));
      expect(await callBare(bare[i]!, ["🪚"])).toEqual(await call(definition, ["🪚"]));
    },
  );

  it("leaves other calls and other properties alone", () => {
    expect(
      withoutDocs(
        `const a = other({ summary: "kept" }); const f = worksheetFunction({ name: "F", summary: "gone", examples: [{ cells: [1], result: [[1]] }, ...MORE], compute: () => ({ returns: "kept" }) });`,
      ),
    ).toBe(
      `const a = other({ summary: "kept" }); const f = worksheetFunction({ name: "F", summary: "", examples: [], compute: () => ({ returns: "kept" }) });`,
    );
  });
});

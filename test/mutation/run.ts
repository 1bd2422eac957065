import { readdirSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
import { rooms } from "./rooms.ts";

/** Lines in a stretch of a sample. */
const STRETCH = 10;

/** Every so many stretches of the lines of these files, counted through all of them from the given one on. */
function sample(files: readonly string[], every: number, from: number): string[] {
  const stretches = files.flatMap((file) =>
    Array.from({ length: Math.ceil(readFileSync(file, "utf8").split("\n").length / STRETCH) }, (_, i) => {
      const first = i * STRETCH + 1;
      return `${file}:${first}-${first + STRETCH - 1}`;
    }),
  );
  return stretches.filter((_, i) => i % every === from % every);
}

/** Puts faults into one room of the code, one at a time, runs its tests on each, and lists those that no test found. */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    every: { type: "string", default: "1" },
    from: { type: "string", default: "0" },
    workers: { type: "string", default: "2" },
  },
});
const [name = "", ...only] = positionals;
const room = rooms[name];
if (room) {
  process.env["LONGPOINT_ROOM"] = name;
  const files = readdirSync(room.folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => `${room.folder}/${file}`)
    .sort();
  await new Stryker({
    testRunner: "vitest",
    vitest: { configFile: "test/mutation/vitest.config.ts", related: false },
    coverageAnalysis: "perTest",
    concurrency: Number(values.workers),
    // Long, for a busy machine is not to be taken for a fault found; a loop without an end is told by how often it comes by.
    timeoutMS: 300_000,
    timeoutFactor: 4,
    mutate: only.length > 0 ? only : sample(files, Number(values.every), Number(values.from)),
    // What the compiler holds: a kind or a choice misspelt does not compile, and words have tests of their own.
    mutator: { excludedMutations: ["StringLiteral"] },
    // A fault in what is made once, when a file is loaded, needs a test run of its own.
    ignoreStatic: true,
    tempDirName: ".cache/mutation",
    ignorePatterns: [".cache", "dist", "samples", "manifest"],
    reporters: ["clear-text", "progress-append-only", "json"],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
    jsonReporter: { fileName: `.cache/mutation-${name}.json` },
  }).runMutationTest();
} else {
  console.error(
    `Name a room: ${Object.keys(rooms).join(", ")}. After it files, or lines of one (src/geometry/faces.ts:20-60), or a sample: --every 12 --from 3.`,
  );
  process.exitCode = 1;
}

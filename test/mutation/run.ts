import { Stryker } from "@stryker-mutator/core";
import { rooms } from "./rooms.ts";

/**
 * Puts faults into one room of the code, one at a time, runs its tests on each, and lists those that no test found.
 *
 * After the room's name: files of it, or lines of a file, if not all is meant. The list goes to .cache/mutation-ROOM.json too.
 */
const [name = "", ...only] = process.argv.slice(2);
const room = rooms[name];
if (room) {
  process.env["LONGPOINT_ROOM"] = name;
  await new Stryker({
    testRunner: "vitest",
    vitest: { configFile: "test/mutation/vitest.config.ts" },
    coverageAnalysis: "perTest",
    concurrency: 2,
    mutate: only.length > 0 ? only : [...room.files],
    // What the compiler holds: a kind or a choice misspelt does not compile, and words have tests of their own.
    mutator: { excludedMutations: ["StringLiteral"] },
    // A fault in what is made once, when a file is loaded, needs a test run of its own.
    ignoreStatic: true,
    tempDirName: ".cache/mutation",
    ignorePatterns: ["dist", "samples", "manifest"],
    reporters: ["clear-text", "json"],
    clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
    jsonReporter: { fileName: `.cache/mutation-${name}.json` },
  }).runMutationTest();
} else {
  console.error(
    `Name a room: ${Object.keys(rooms).join(", ")}. After it a file, or lines of one: src/geometry/faces.ts:20-60.`,
  );
  process.exitCode = 1;
}

import { readdirSync, readFileSync } from "node:fs";
import { relative } from "node:path";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
import { ROOM, rooms, WHOLE } from "./rooms.ts";

type MutantResult = Awaited<ReturnType<Stryker["runMutationTest"]>>[number];

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

/**
 * Puts the faults of these places into the code, one at a time.
 *
 * @param whole each fault is there when the test files are loaded, and runs them all; else it comes when they are loaded, and runs the tests that came by its place.
 */
function faults(mutate: readonly string[], whole: boolean): Promise<MutantResult[]> {
  process.env[WHOLE] = whole ? "yes" : "";
  return new Stryker({
    testRunner: "vitest",
    vitest: { configFile: "test/mutation/vitest.config.ts", related: false },
    coverageAnalysis: "perTest",
    ignoreStatic: !whole,
    concurrency: Number(values.workers),
    // Long, for a busy machine is not to be taken for a fault found; a loop without an end is told by how often it comes by.
    timeoutMS: 120_000,
    timeoutFactor: 4,
    dryRunTimeoutMinutes: 60,
    mutate: [...mutate],
    // What the compiler holds: a kind or a choice misspelt does not compile, and words have tests of their own.
    mutator: { excludedMutations: ["StringLiteral"] },
    tempDirName: ".cache/mutation",
    ignorePatterns: [".cache", "dist", "samples", "manifest"],
    reporters: ["progress-append-only"],
  }).runMutationTest();
}

/** Where a fault is, as Stryker takes it, and as an editor opens it. */
const placeOf = ({ fileName, location: { start, end } }: MutantResult): string =>
  `${relative(".", fileName)}:${start.line}:${start.column - 1}-${end.line}:${end.column - 1}`;

const nameOf = (fault: MutantResult): string => `${placeOf(fault)} ${fault.mutatorName}: ${fault.replacement}`;

const isFound = ({ status }: MutantResult): boolean => status === "Killed" || status === "Timeout";

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
  process.env[ROOM] = name;
  const files = readdirSync(room.folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => `${room.folder}/${file}`)
    .sort();
  const chosen = only.length > 0 ? only : sample(files, Number(values.every), Number(values.from));
  const all = (await faults(chosen, false)).filter(({ status }) => status !== "Ignored");
  // The quick way finds most. What gets past may still be found: a roof is framed once and kept, by some tests as their file is loaded, so that others are handed a sound one.
  const doubtful = all.filter((fault) => !isFound(fault));
  const again = doubtful.length > 0 ? await faults([...new Set(doubtful.map(placeOf))], true) : [];
  const found = new Set(again.filter(isFound).map(nameOf));
  const missed = doubtful.filter((fault) => !found.has(nameOf(fault)));
  for (const fault of missed) console.log(`${fault.status} ${nameOf(fault)}`);
  console.log(
    `${all.length} faults, ${missed.length} got past: ${(100 - (100 * missed.length) / all.length).toFixed(1)} % found.`,
  );
} else {
  console.error(
    `Name a room: ${Object.keys(rooms).join(", ")}. After it files, or lines of one (src/geometry/faces.ts:20-60), or a sample: --every 12 --from 3.`,
  );
  process.exitCode = 1;
}

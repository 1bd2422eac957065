/** A room of the code, and the fast tests that are to find a fault in it. */
export interface Room {
  readonly files: readonly string[];
  readonly tests: readonly string[];
}

/** The tests that mirror a room, and those of the rooms above that hold what it promises; not the slow ones (browser, solids, snapshot, samples). */
export const rooms: Readonly<Record<string, Room>> = {
  measure: { files: ["src/measure/*.ts"], tests: ["test/measure/*.test.ts"] },
  geometry: { files: ["src/geometry/*.ts"], tests: ["test/geometry/*.test.ts"] },
  registry: { files: ["src/registry/*.ts"], tests: ["test/registry/*.test.ts"] },
  roof: { files: ["src/roof/**/*.ts"], tests: ["test/roof/**/*.test.ts", "test/tables/*.test.ts"] },
  cutting: { files: ["src/cutting/**/*.ts"], tests: ["test/cutting/**/*.test.ts"] },
  functions: { files: ["functions/**/*.ts"], tests: ["test/functions/**/*.test.ts"] },
  writing: { files: ["src/pane/writing/*.ts"], tests: ["test/pane/writing/*.test.ts"] },
};

/** The room that the runner was asked for; it reaches the test runner, which is a process of its own, through the environment. */
export const chosenRoom = (): Room => rooms[process.env["LONGPOINT_ROOM"] ?? ""]!;

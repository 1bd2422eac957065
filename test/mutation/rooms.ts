/** A room of the code, and the tests that are to find a fault in it. */
export interface Room {
  readonly folder: string;
  /** Those that mirror the room and what shows it best: each fault runs them all until one fails. */
  readonly tests: readonly string[];
  /** Slow ones, which only what got past the others runs too. */
  readonly slow?: readonly string[];
}

export const rooms: Readonly<Record<string, Room>> = {
  measure: { folder: "src/measure", tests: ["test/measure/*.test.ts"] },
  geometry: { folder: "src/geometry", tests: ["test/geometry/*.test.ts"] },
  registry: { folder: "src/registry", tests: ["test/registry/*.test.ts"] },
  roof: {
    folder: "src/roof",
    tests: [
      "test/roof/**/*.test.ts",
      "test/tables/*.test.ts",
      "test/solids/wings/product.test.ts",
      "test/functions/{reached,arguments/wingRefusals}.test.ts",
      "test/snapshot/winged.test.ts",
    ],
    slow: ["test/snapshot/{rectangular,manyWinged}.test.ts", "test/functions/papers.test.ts"],
  },
  cutting: {
    folder: "src/cutting",
    tests: [
      "test/cutting/**/!(largePlans).test.ts",
      "test/functions/lumberOrder*.test.ts",
      "test/snapshot/orders.test.ts",
    ],
    slow: ["test/cutting/largePlans.test.ts", "test/snapshot/manyOrders.test.ts"],
  },
  functions: {
    folder: "functions",
    tests: ["test/functions/**/!(orderAndPlan|papers|stackedOrder|tableLaws|hostile).test.ts"],
    slow: ["test/functions/**/{orderAndPlan,papers,stackedOrder,tableLaws,hostile}.test.ts"],
  },
  writing: { folder: "src/pane/writing", tests: ["test/pane/writing/*.test.ts"] },
};

/** What the runner was asked for reaches the test runner, which is a process of its own, through the environment. */
export const ROOM = "LONGPOINT_ROOM";
export const WHOLE = "LONGPOINT_WHOLE";

export const chosenRoom = (): Room => rooms[process.env[ROOM] ?? ""]!;

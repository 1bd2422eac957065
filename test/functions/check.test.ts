import { describe, expect, it } from "vitest";
import { asked } from "./asked.ts";

describe("AGREE", () => {
  it.each<[readonly unknown[], string]>([
    [[53.26, 53.25, 0.001], `long by less than 1/16"`],
    [[53.25, 53.26, 0.001], `short by less than 1/16"`],
    [["1340.2 mm", 1340, "0.1 mm"], "long by less than 1 mm"],
    [[53.3125, 53.25, 0.001], `long by 1/16"`],
    [[53.25, 53.25, 0.001], "agrees"],
    [[53.5, 53.25], "agrees"],
    [["1346 mm", 1340], "agrees"],
    [["1347 mm", 1340], "long by 7 mm"],
  ])("%j: %s, never long or short by nothing", (cells, said) => expect(asked("AGREE", ...cells)).toBe(said));
});

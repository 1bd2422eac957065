import { describe, expect, it } from "vitest";
import { flowed, type Block, type Rows } from "../../../src/drawing/packet/pageFlow.ts";

const block = (html: string, height: number, keep = false): Block => ({ html, height, keep });
const rows = (count: number, height: number): Rows => ({
  head: "[",
  foot: "]",
  headHeight: 10,
  rows: Array.from({ length: count }, (_, i) => ({ html: String(i % 10), height })),
});

describe("flowed", () => {
  it("turns the page where a block no longer fits", () => {
    expect(flowed([block("a", 60), block("b", 40), block("c", 1)], 100)).toEqual(["ab", "c"]);
  });
  it("keeps a heading with what follows it", () => {
    expect(flowed([block("a", 70), block("h", 20, true), block("b", 20)], 100)).toEqual(["a", "hb"]);
    expect(flowed([block("a", 70), block("h", 20, true), rows(2, 10)], 100)).toEqual(["a", "h[01]"]);
  });
  it("parts a table between rows, its head over each part", () => {
    expect(flowed([block("a", 60), rows(5, 20)], 100)).toEqual(["a[0]", "[1234]"]);
    expect(flowed([rows(3, 30)], 100)).toEqual(["[012]"]);
  });
  it("gives what is higher than a page one of its own, and never an empty page", () => {
    expect(flowed([block("a", 10), block("b", 500), block("c", 10)], 100)).toEqual(["a", "b", "c"]);
    expect(flowed([rows(2, 500)], 100)).toEqual(["[0]", "[1]"]);
    expect(flowed([], 100)).toEqual([]);
  });
});

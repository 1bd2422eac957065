import { describe, expect, it } from "vitest";
import { remembered } from "../../src/measure/remembered.ts";

describe("remembered", () => {
  const counted = () => {
    const read: string[] = [];
    return { read, reader: remembered((text: string) => (read.push(text), { text })) };
  };

  it("reads a text once and gives the same value again", () => {
    const { read, reader } = counted();
    expect(reader("6/12")).toBe(reader("6/12"));
    expect(reader("6:12")).toEqual({ text: "6:12" });
    expect(read).toEqual(["6/12", "6:12"]);
  });

  it("keeps no long text, and of many the newest", () => {
    const { read, reader } = counted();
    const longest = "1".repeat(64);
    expect(reader(longest)).toBe(reader(longest));
    read.length = 0;
    const long = "1".repeat(65);
    reader(long);
    reader(long);
    expect(read).toHaveLength(2);
    for (let n = 0; n <= 2000; n++) reader(String(n));
    reader("2000");
    expect(read).toHaveLength(2003);
    reader("0");
    expect(read).toHaveLength(2004);
  });
});

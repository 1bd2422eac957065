import { describe, expect, it, vi } from "vitest";
import { asked, number, refusal } from "./asked.ts";

describe("what is no value at all is refused, named and shown", () => {
  it.each([
    ["TRUE", true, "TRUE was read"],
    ["FALSE", false, "FALSE was read"],
    ["not-a-number", NaN, "NaN was read"],
    ["infinity", Infinity, "Infinity was read"],
    ["an emoji", "🏠", `"🏠" was read`],
    ["a word", "four feet", `"four feet" was read`],
    ["an object", {}, "something that is neither number nor text"],
  ])("%s", (_, cell, shown) => {
    expect(refusal("JACKLEN", 6, cell, 1.5, 1.5)).toMatch(new RegExp(`^offset: ${shown.replace("(", "\\(")}.* Type `));
    expect(refusal("JACKLEN", cell, 48, 1.5, 1.5)).toMatch(/^pitch: .* Type /);
    expect(refusal("JACKLEN", 6, 48, 1.5, 1.5, cell)).toMatch(/^otherPitch: .* Type /);
    expect(refusal("JACKLEN", 6, 48, 1.5, 1.5, 6, cell)).toMatch(/^corner: .* Type /);
  });
  it("a length past all reason", () =>
    expect(refusal("JACKLEN", 6, 1e300, 1.5, 1.5)).toMatch(
      /^offset: 1e\+300 was read, which is too long\. Type a length under 1,000,000/,
    ));
  it("a comma gets its own word, for it stands for a decimal point or between thousands", () => {
    const way = "Type a decimal point instead of a decimal comma, and leave out a comma between thousands.";
    expect(refusal("COMMONLEN", 6, "2,62 m", 0)).toBe(`run: "2,62 m" was read. ${way}`);
    expect(refusal("COMMONLEN", 6, "1,200 mm", 0)).toBe(`run: "1,200 mm" was read. ${way}`);
    expect(refusal("COMMONLEN", "26,57°", 144, 0)).toBe(`pitch: "26,57°" was read. ${way}`);
    expect(refusal("JACKTILT", 6, 6, "90,5")).toBe(`corner: "90,5" was read. ${way}`);
    expect(refusal("BOARDFEET", "1,5 x 7,25", 96)).toBe(`size: "1,5 x 7,25" was read. ${way}`);
    expect(refusal("BOARDFEET", "2x8", 96, "1,5")).toBe(`count: "1,5" was read. ${way}`);
  });
  it("a date as text is no pitch", () =>
    expect(refusal("PITCHDEG", "6/12/2026")).toMatch(/^pitch: "6\/12\/2026" was read, which is no pitch\. Type 6, /));
  it("a lone text under 1 says how a flatter pitch is written, and that is read", () => {
    expect(refusal("PITCHDEG", "0.5")).toContain(`Type 6, or a flatter pitch as "1/2 in 12"`);
    expect(number("PITCHRISE", "1/2 in 12")).toBeCloseTo(0.5, 12);
  });
  it("in a metric call the example is metric, and is read", () => {
    expect(refusal("COMMONLEN", 6, "3.6 m", "thick")).toBe(
      `ridgeThickness: "thick" was read, which is no length. Type "38 mm".`,
    );
    expect(number("COMMONLEN", 6, "3.6 m", "38 mm")).toBe(number("COMMONLEN", 6, 3600, 38));
    expect(refusal("JACKLEN", 6, "1.2 m", 0, 38)).toBe(
      `hipThickness: 0 was read; it must be more than 0. Type a length such as "38 mm".`,
    );
    expect(refusal("JACKLEN", 6, "1.2 m", "", 38)).toBe(
      `hipThickness: nothing was given. Type a length, such as "38 mm".`,
    );
    expect(refusal("COMMONLEN", 6, "12'", "thick")).toBe(
      `ridgeThickness: "thick" was read, which is no length. Type 1.5.`,
    );
  });
  it("a fraction over nothing too", () =>
    expect(refusal("COMMONLEN", 6, `9' 4 5/0"`, 0)).toMatch(/^run: .*a fraction over 0/));
});

describe("text of any length", () => {
  const long = (n: number): readonly string[] => [
    "7".repeat(n),
    " ".repeat(n),
    "1-".repeat(n / 2),
    "1'".repeat(n / 2),
    "🏠".repeat(n / 2),
    "1/2 ".repeat(n / 4),
    `${" ".repeat(n)}x`,
  ];
  it("shows 40 characters of it at most", () => {
    for (const text of long(10_000))
      for (const cells of [
        [text, 48, 1.5, 1.5],
        [6, text, 1.5, 1.5],
        [6, 48, 1.5, 1.5, text],
        [6, 48, 1.5, 1.5, 6, text],
      ]) {
        const message = refusal("JACKLEN", ...cells);
        expect(Array.from(message).length).toBeLessThan(220);
        expect(message).toContain("…");
      }
  });
  // Steps, not seconds: every character that a method of a text goes over is counted while the three readers have it.
  it("is not read past what any measure takes: ten times the text takes no more steps", () => {
    const [short, tenfold] = [1_000, 10_000].map((n) =>
      steps(() => {
        for (const text of long(n))
          for (const cells of [
            [text, 48, 1.5, 1.5],
            [6, text, 1.5, 1.5],
            [6, 48, 1.5, 1.5, 6, text],
          ])
            asked("JACKLEN", ...cells);
      }),
    );
    expect(short).toBeGreaterThan(0);
    expect(tenfold).toBeLessThanOrEqual(short! * 1.1);
  });
});

/** How many characters the methods of texts go over while `work` runs. */
function steps(work: () => void): number {
  let count = 0;
  const spies = (["replace", "replaceAll", "trim", "toLowerCase", "split", "match", "slice"] as const).map((name) => {
    const own = String.prototype[name] as (...given: unknown[]) => unknown;
    return vi.spyOn(String.prototype, name).mockImplementation(function (this: string, ...given: unknown[]) {
      count += name === "slice" && typeof given[1] === "number" ? Math.min(this.length, given[1]) : this.length;
      return own.apply(this, given) as never;
    });
  });
  try {
    work();
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
  return count;
}

describe("too many arguments", () => {
  it("are refused with the number of them", () => {
    expect(refusal("JACKLEN", 6, 48, 1.5, 1.5, 6, 90, 1)).toBe(
      "JACKLEN takes 6 arguments at most and was given 7. Remove the last.",
    );
    expect(refusal("PITCHDEG", 6, 7, 8)).toBe("PITCHDEG takes 1 argument at most and was given 3. Remove the last 2.");
  });
});

it("a refusal leaves nothing behind: the next call answers", () => {
  refusal("JACKLEN", 6, "38 mm", `4'`, 1.5);
  expect(number("JACKLEN", 6, `4'`, `1.5"`, 1.5)).toBe(number("JACKLEN", 6, 48, 1.5, 1.5));
});

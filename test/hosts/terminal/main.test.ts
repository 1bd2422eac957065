import { spawn } from "node:child_process";
import { describe, expect, it } from "vitest";

interface Run {
  status: number | null;
  out: string;
  error: string;
}

/** The terminal as a user starts it; `input` goes to its standard input. */
function cell(args: readonly string[], input = "", readOnly?: number): Promise<Run> {
  const child = spawn(process.execPath, ["--import", "tsx", "src/hosts/terminal/main.ts", ...args], {
    stdio: ["pipe", "pipe", "pipe"],
  });
  const run: Run = { status: null, out: "", error: "" };
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    run.out += text;
    if (readOnly !== undefined && run.out.length > readOnly) child.stdout.destroy();
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    run.error += text;
  });
  // A child that was left by its reader ends before it has read everything.
  child.stdin.on("error", () => undefined).end(input);
  return new Promise((resolve) => child.on("close", (status) => resolve({ ...run, status })));
}

describe("the terminal", () => {
  // By hand, from the right triangle: (48 - 1.5 / (2 cos 45°) + 1.5 / 2) * sqrt(1 + 0.5²) = 47.68934 * 1.118034.
  it("prints what the cell would show", async () => {
    const { status, out, error } = await cell(["=RAFTER.JACKLEN(6, 48, 1.5, 1.5)"]);
    expect(Number(out)).toBeCloseTo((48 - 0.75 * Math.SQRT2 + 0.75) * Math.sqrt(1.25), 9);
    expect({ status, error }).toEqual({ status: 0, error: "" });
  });

  it("prints JSON with full precision, in order, and goes on after a refusal", async () => {
    const lines = [
      "=RAFTER.JACKLEN(6, 48, 1.5, 1.5)",
      "",
      "   ",
      'RAFTER.JACKLEN("steep", 48, 1.5, 1.5)',
      "={1,2;3,4}",
      "=1/3",
    ];
    const { status, out } = await cell(["--json"], `\uFEFF${lines.join("\r\n")}`);
    const answers = out
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(answers).toEqual([
      { formula: lines[0], value: expect.closeTo(53.3183028, 7) },
      { formula: lines[3], error: "#VALUE!", message: expect.stringMatching(/pitch.*steep/) },
      {
        formula: lines[4],
        value: [
          [1, 2],
          [3, 4],
        ],
      },
      { formula: lines[5], value: 1 / 3 },
    ]);
    expect(status).toBe(1);
  });

  it("shows a spill as rows with tabs, and the reason of an error apart from the values", async () => {
    const { status, out, error } = await cell(["={1,2;3,4}", "=A1"]);
    expect(out).toBe("1\t2\n3\t4\n#REF!\n");
    expect(error).toMatch(/^=A1: A1: there is no sheet here/);
    expect(status).toBe(1);
  });

  it("answers 2,000 formulas, a line each", async () => {
    const { status, out } = await cell(
      ["--json"],
      Array.from(
        { length: 2000 },
        (_, i) => `=ROUND(RAFTER.JACKLEN(${4 + (i % 9)}, ${24 + i / 100}, 1.5, 1.5), 4)`,
      ).join("\n"),
    );
    expect(status).toBe(0);
    expect(out.trim().split("\n")).toHaveLength(2000);
  });

  it("ends quietly when its reader goes away", async () => {
    const { error } = await cell([], "=1+1\n".repeat(200_000), 10);
    expect(error).toBe("");
  });

  it("explains itself", async () => {
    const { status, out } = await cell(["--help"]);
    expect(status).toBe(0);
    expect(out).toContain("RAFTER.JACKLEN(pitch, offset, hipThickness, jackThickness, [otherPitch], [corner])");
    expect((await cell(["--jsn", "=1"])).error).toMatch(/--jsn.*\n.*--help/);
  });
});

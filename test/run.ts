import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, readFileSync, rmSync } from "node:fs";

/** What one part of the tests came to. */
interface Tally {
  readonly passed: number;
  readonly failed: number;
}

const reports = ".cache/test";

/** Runs a script of package.json, its output going straight through. True when it ended well. */
async function script(name: string, ...options: string[]): Promise<boolean> {
  const command = `npm run -s ${name}${options.length > 0 ? ` -- ${options.join(" ")}` : ""}`;
  const [status] = await once(spawn(command, { shell: true, stdio: "inherit" }), "exit");
  return status === 0;
}

/** A script that is one check: it ends well or not. */
async function check(name: string): Promise<Tally> {
  return (await script(name)) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** A script that runs a test runner, whose report is counted. */
async function tests(name: string): Promise<Tally> {
  const report = `${reports}/${name}.json`;
  rmSync(report, { force: true });
  const well = await script(name, "--reporter=dot", "--reporter=json", `--outputFile.json=${report}`);
  return counted(report, well);
}

/** A test left out counts as failed, and so does a file that could not be read, and a run that ended badly without saying where. */
function counted(report: string, well: boolean): Tally {
  try {
    const { numPassedTests, numTotalTests, testResults } = JSON.parse(readFileSync(report, "utf8"));
    const broken = testResults.filter(
      (file: { status: string; assertionResults: unknown[] }) =>
        file.status !== "passed" && file.assertionResults.length === 0,
    ).length;
    const failed = numTotalTests - numPassedTests + broken;
    return { passed: numPassedTests, failed: failed === 0 && (!well || numTotalTests === 0) ? 1 : failed };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

/** In order; those that stand together run side by side: the first four are one-handed, and a browser's page waits more than it works. */
const parts: readonly (readonly (readonly [string, () => Promise<Tally>])[])[] = [
  [
    ["typecheck", () => check("typecheck")],
    ["lint", () => check("lint")],
  ],
  [
    ["build", () => check("build")],
    ["build:bench", () => check("build:bench")],
  ],
  [
    ["unit", () => tests("unit")],
    ["browser", () => tests("browser")],
  ],
];

mkdirSync(reports, { recursive: true });
const results: (Tally & { readonly name: string; readonly seconds: number })[] = [];
for (const together of parts) {
  console.log(`\n== ${together.map(([name]) => name).join(", ")}`);
  const start = performance.now();
  results.push(
    ...(await Promise.all(
      together.map(async ([name, run]) => ({ name, ...(await run()), seconds: (performance.now() - start) / 1000 })),
    )),
  );
}

const sum = (of: keyof Tally) => results.reduce((total, result) => total + result[of], 0);
console.log("");
for (const { name, passed, failed, seconds } of results)
  console.log(
    `${name.padEnd(12)} ${`${passed} passed`.padStart(12)} ${`${failed} failed`.padStart(10)} ${seconds.toFixed(1).padStart(7)} s`,
  );
console.log(`${sum("passed")} passed, ${sum("failed")} failed`);
process.exitCode = sum("failed") === 0 ? 0 : 1;

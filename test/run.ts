import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";

/** What one part of the tests came to. */
interface Tally {
  readonly passed: number;
  readonly failed: number;
}

const reports = ".cache/test";

/** Runs a script of package.json, its output going straight through. True when it ended well. */
function script(name: string, ...options: string[]): boolean {
  return (
    spawnSync(`npm run -s ${name}${options.length > 0 ? ` -- ${options.join(" ")}` : ""}`, {
      shell: true,
      stdio: "inherit",
    }).status === 0
  );
}

/** A script that is one check: it ends well or not. */
function check(name: string): Tally {
  return script(name) ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** A script that runs a test runner, whose report is counted. */
function tests(name: string): Tally {
  const report = `${reports}/${name}.json`;
  rmSync(report, { force: true });
  const well = script(name, "--reporter=dot", "--reporter=json", `--outputFile.json=${report}`);
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

const parts: readonly (readonly [string, () => Tally])[] = [
  ["typecheck", () => check("typecheck")],
  ["lint", () => check("lint")],
  ["build", () => check("build")],
  ["build:bench", () => check("build:bench")],
  ["unit", () => tests("unit")],
  ["browser", () => tests("browser")],
];

mkdirSync(reports, { recursive: true });
const results = parts.map(([name, run]) => {
  console.log(`\n== ${name}`);
  const start = performance.now();
  const tally = run();
  return { name, ...tally, seconds: (performance.now() - start) / 1000 };
});

const sum = (of: keyof Tally) => results.reduce((total, result) => total + result[of], 0);
console.log("");
for (const { name, passed, failed, seconds } of results)
  console.log(
    `${name.padEnd(12)} ${`${passed} passed`.padStart(12)} ${`${failed} failed`.padStart(10)} ${seconds.toFixed(1).padStart(7)} s`,
  );
console.log(`${sum("passed")} passed, ${sum("failed")} failed`);
process.exitCode = sum("failed") === 0 ? 0 : 1;

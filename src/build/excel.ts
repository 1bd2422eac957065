import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";

// `npm run excel`: builds the add-in, serves it on this machine and opens Excel with it (`npm run excel -- stop` takes it out again).
// The sideloading tool has a package.json and a lock of its own: one of its dependencies needs a compiler on a clean Linux machine, where Excel does not run.
const TOOL = join(import.meta.dirname, "sideload");
const MANIFEST = "dist/excel/manifest.xml";
const where = process.argv.find((arg) => arg === "web" || arg === "stop") ?? "desktop";
const rest = process.argv.slice(2).filter((arg) => arg !== "web" && arg !== "stop");

if (where === "desktop" && process.platform !== "win32" && process.platform !== "darwin") {
  // At once, before anything is loaded or built.
  console.error(`There is no Excel on ${process.platform}: it runs on Windows and on a Mac.
There, run: npm run excel
For Excel in a browser: npm run excel -- web --document <address of a workbook on OneDrive or SharePoint>
By hand, anywhere: npm run build -- --env base=https://your.server, put dist/excel/ there, and in Excel choose Home, Add-ins, More Add-ins, Upload My Add-in, dist/excel/manifest.xml.
To try the functions without Excel: npm start`);
  process.exitCode = 1;
} else if (where === "web" && !rest.includes("--document")) {
  console.error(
    "Excel in a browser needs a workbook to open: npm run excel -- web --document <address of a workbook on OneDrive or SharePoint>",
  );
  process.exitCode = 1;
} else if (await ready()) {
  if (where === "stop") await tool("stop", MANIFEST);
  else {
    const { build } = await import("./build.ts");
    const { DEV_ADDRESS } = await import("./excelAddress.ts");
    await build(DEV_ADDRESS);
    const server = ["--dev-server", "npx tsx src/build/serveExcel.ts", "--dev-server-port", new URL(DEV_ADDRESS).port];
    await tool("start", MANIFEST, where, "--app", "excel", ...server, ...rest);
  }
}

/** Installs the tool as its lock says, once. */
async function ready(): Promise<boolean> {
  return existsSync(join(TOOL, "node_modules")) || run("npm", ["ci", "--prefix", TOOL, "--no-audit", "--no-fund"]);
}

function tool(...args: readonly string[]): Promise<boolean> {
  return run(join(TOOL, "node_modules/.bin/office-addin-debugging"), args);
}

/** Runs a command; its output goes straight through, and its exit status is this script's. */
function run(command: string, args: readonly string[]): Promise<boolean> {
  // They are command scripts on Windows, which only a shell starts; so what has a blank in it is quoted.
  const quoted = [command, ...args].map((arg) => (/\s/.test(arg) ? `"${arg}"` : arg));
  return new Promise((resolve) => {
    spawn(quoted.join(" "), { stdio: "inherit", shell: true }).on("exit", (code) => {
      process.exitCode = code ?? 1;
      resolve(code === 0);
    });
  });
}

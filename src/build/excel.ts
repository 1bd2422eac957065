import { spawn } from "node:child_process";
import { build } from "./build.ts";
import { DEV_ADDRESS } from "./excelAddress.ts";

// `npm run excel`: builds the add-in, serves it on this machine and opens Excel with it (`npm run excel -- stop` takes it out again).
// The sideloading tool is called, not depended on: one of its dependencies needs a compiler on a clean Linux machine.
const TOOL = ["--yes", "office-addin-debugging@7.0.0"];
const where = process.argv.find((arg) => arg === "web" || arg === "stop") ?? "desktop";

if (where === "desktop" && process.platform !== "win32" && process.platform !== "darwin") {
  console.error(`Excel runs on Windows and on a Mac; this is ${process.platform}.
There, run: npm run excel
For Excel in a browser: npm run excel -- web --document <address of a workbook on OneDrive or SharePoint>
By hand, anywhere: npm run build -- --env base=https://your.server, put dist/ there, and in Excel choose Home, Add-ins, More Add-ins, Upload My Add-in, dist/manifest.xml.
To try the functions without Excel: npm start`);
  process.exitCode = 1;
} else if (where === "stop") run([...TOOL, "stop", "dist/manifest.xml"]);
else {
  await build(DEV_ADDRESS);
  const rest = process.argv.slice(2).filter((arg) => arg !== "web");
  run([
    ...TOOL,
    "start",
    "dist/manifest.xml",
    where,
    "--app",
    "excel",
    "--dev-server",
    "npx tsx src/build/serveExcel.ts",
    "--dev-server-port",
    "3000",
    ...rest,
  ]);
}

function run(args: readonly string[]): void {
  // npx is a command script on Windows, which only a shell starts; so each argument with a blank is quoted.
  const tool = spawn(
    "npx",
    args.map((arg) => (/\s/.test(arg) ? `"${arg}"` : arg)),
    { stdio: "inherit", shell: true },
  );
  tool.on("exit", (code) => (process.exitCode = code ?? 1));
}

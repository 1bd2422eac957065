import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync } from "node:fs";
import { createRequire } from "node:module";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const CACHE = join(dirname(fileURLToPath(import.meta.url)), "../../.cache/browser");

/**
 * The path of a Chrome, Chromium or Edge to run the tests in.
 *
 * An installed one is used; else one is got: from Debian where that can be done, else from the package that ships the program.
 *
 * @throws with the one line that says what to install, where none can be had.
 */
export async function findBrowser(): Promise<string> {
  const installed = findInstalled();
  if (installed) return installed;
  process.stderr.write("No Chrome, Chromium or Edge is installed: getting one for the tests ...\n");
  return fromDebian() ?? (await fromRegistry()) ?? fail();
}

function fail(): never {
  throw new Error(
    "The browser tests need Chrome, Chromium or Edge: install one, or set CHROMIUM to the path of its program.",
  );
}

/** The path of an installed browser, or null. CHROMIUM and CHROME_PATH come first. */
export function findInstalled(
  env: NodeJS.ProcessEnv = process.env,
  platform: string = process.platform,
): string | null {
  const named = [env["CHROMIUM"], env["CHROME_PATH"]].filter((path): path is string => Boolean(path));
  for (const path of named)
    if (!existsSync(path)) throw new Error(`CHROMIUM or CHROME_PATH names ${path}, and there is no such file.`);
  return [...named, ...usualPlaces(env, platform)].find((path) => existsSync(path)) ?? null;
}

function usualPlaces(env: NodeJS.ProcessEnv, platform: string): string[] {
  if (platform === "darwin") {
    const apps = ["Google Chrome", "Chromium", "Microsoft Edge"].map(
      (name) => `Applications/${name}.app/Contents/MacOS/${name}`,
    );
    return [`${env["HOME"] ?? ""}/`, "/"].flatMap((home) => apps.map((app) => home + app));
  }
  if (platform === "win32") {
    const roots = [env["PROGRAMFILES"], env["PROGRAMFILES(X86)"], env["LOCALAPPDATA"]].filter((root): root is string =>
      Boolean(root),
    );
    return roots.flatMap((root) => [
      join(root, "Google/Chrome/Application/chrome.exe"),
      join(root, "Chromium/Application/chrome.exe"),
      join(root, "Microsoft/Edge/Application/msedge.exe"),
    ]);
  }
  const names = [
    // Chromium without a window around its pages: the tests take a fifth less with it.
    "chromium-headless-shell",
    "google-chrome-stable",
    "google-chrome",
    "chromium",
    "chromium-browser",
    "microsoft-edge-stable",
    "microsoft-edge",
  ];
  return (env["PATH"] ?? "")
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => names.map((name) => join(folder, name)));
}

function fromDebian(): string | null {
  if (process.platform !== "linux" || !existsSync("/etc/debian_version") || process.getuid?.() !== 0) return null;
  const run = (...args: string[]) =>
    spawnSync("apt-get", args, { stdio: "ignore", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } })
      .status === 0;
  run("update", "-qq");
  const install = (name: string) => run("install", "-y", "-qq", "--no-install-recommends", name);
  return install("chromium-headless-shell") || install("chromium") ? findInstalled() : null;
}

// The package brings the program itself, so nothing is fetched from anywhere but the registry; it is kept out of the project's own packages.
async function fromRegistry(): Promise<string | null> {
  if (process.platform !== "linux") return null;
  mkdirSync(CACHE, { recursive: true });
  const loaded = () =>
    createRequire(join(CACHE, "package.json"))("@sparticuz/chromium") as Packaged | { default: Packaged };
  try {
    if (!existsSync(join(CACHE, "node_modules/@sparticuz/chromium"))) {
      const got = spawnSync(
        "npm",
        ["install", "--no-save", "--no-audit", "--no-fund", "--prefix", CACHE, "@sparticuz/chromium"],
        { stdio: "ignore" },
      );
      if (got.status !== 0) return null;
    }
    const got = loaded();
    const chromium = "default" in got ? got.default : got;
    const path = await chromium.executablePath();
    const starts = spawnSync(path, ["--no-sandbox", "--version"], { stdio: "ignore" }).status === 0;
    return starts ? path : null;
  } catch {
    return null;
  }
}

interface Packaged {
  executablePath(): Promise<string>;
}

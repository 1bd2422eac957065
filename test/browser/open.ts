import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser as Running, Page } from "playwright-core";
import { chromium } from "playwright-core";
import { serve } from "../../src/build/serve.ts";
import { findBrowser } from "./findBrowser.ts";

const DIST = join(dirname(fileURLToPath(import.meta.url)), "../../dist");
// Else the browser calls out by itself: a test that watches requests, or a machine with a closed network, must not see that.
const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const WIDE = { width: 1400, height: 850 };

/** How a page is looked at. */
export interface View {
  readonly colorScheme?: "light" | "dark";
  readonly viewport?: { readonly width: number; readonly height: number };
  /** A device that is touched. Of the first page only. */
  readonly touch?: boolean;
  /** The page may keep itself for use without a network; else it is not asked to, which takes time. Of the first page only. */
  readonly offline?: boolean;
}

/** A built page in a real browser. */
export interface Opened {
  readonly page: Page;
  readonly url: string;
  /** Errors and warnings of the console, and uncaught errors, so far. */
  readonly problems: string[];
  /** Addresses asked for so far, but for data: and blob:. */
  readonly requests: string[];
  /** Opens a page of the folder anew in the same tab, which takes half the time of a new one; what was seen before is forgotten. */
  again(path: string, view: View): Promise<void>;
  /** Leaves the tab as a new one is: an empty page, nobody listening, nothing kept in the browser. */
  clear(): Promise<void>;
  /** Ends the server, as where there is no network. */
  unplug(): Promise<void>;
  close(): Promise<void>;
}

let running: Promise<Running> | null = null;

/** One browser for all the files that a worker runs; each page has a context of its own, so nothing is left from the last. */
export async function browser(): Promise<Running> {
  running ??= findBrowser().then((executablePath) => chromium.launch({ executablePath, args: QUIET }));
  return running;
}

/** Ends the browser, for who does not end with it. */
export async function closeBrowser(): Promise<void> {
  await (await running)?.close();
  running = null;
}

/**
 * Opens a built page, `dist/<folder>/<path>`, and watches what goes wrong and what it asks for.
 *
 * @param scripts what is answered in the place of addresses elsewhere; a function has the whole address, and gives null for what is not there.
 * @param first a script that the page runs before its own.
 */
export async function open(
  folder: string,
  path = "",
  view: View = {},
  scripts: Readonly<Record<string, string | ((address: string) => string | null)>> = {},
  first?: string,
): Promise<Opened> {
  const served = await serve(join(DIST, folder));
  const context = await (
    await browser()
  ).newContext({
    // Without a window nobody is there to allow what a press of Ctrl+C is allowed.
    permissions: ["clipboard-read", "clipboard-write"],
    ...(view.touch && { hasTouch: true, isMobile: true }),
  });
  context.setDefaultTimeout(90_000);
  if (!view.offline)
    await context.addInitScript(() => delete (Navigator.prototype as { serviceWorker?: unknown }).serviceWorker);
  for (const [address, body] of Object.entries(scripts))
    await context.route(address, (route) => {
      const answer = typeof body === "string" ? body : body(route.request().url());
      return route.fulfill(answer === null ? { status: 404 } : { contentType: "text/javascript", body: answer });
    });
  if (first !== undefined) await context.addInitScript(first);
  const page = await context.newPage();
  const problems: string[] = [];
  const requests: string[] = [];
  const watch = () => {
    page.on(
      "console",
      (message) =>
        void (["error", "warning"].includes(message.type()) && problems.push(`${message.type()}: ${message.text()}`)),
    );
    page.on("pageerror", (error) => void problems.push(`uncaught: ${error.message}`));
    page.on("request", (request) => void (/^(data|blob):/.test(request.url()) || requests.push(request.url())));
  };
  watch();
  const again = async (next: string, { colorScheme = "light", viewport = WIDE }: View) => {
    // Nothing of the page before is taken for one of its successor's.
    await page.goto("about:blank");
    // A test that failed has let go of nothing.
    await page.unrouteAll({ behavior: "ignoreErrors" });
    problems.length = requests.length = 0;
    await page.setViewportSize(viewport);
    await page.emulateMedia({ colorScheme, media: null });
    await page.goto(served.url + next);
  };
  await again(path, view);
  return {
    page,
    url: served.url,
    problems,
    requests,
    again,
    async clear() {
      await page.goto("about:blank");
      await page.unrouteAll();
      page.removeAllListeners();
      watch();
      const session = await context.newCDPSession(page);
      await session.send("Storage.clearDataForOrigin", { origin: new URL(served.url).origin, storageTypes: "all" });
      await session.detach();
    },
    unplug: () => served.close(),
    async close() {
      await context.close();
      await served.close();
    },
  };
}

/** Opens the bench page, in the tab of the one before if there is one, and waits until its job is on the screen with every value. */
export async function openBench(path = "", view: View = {}, before?: Opened): Promise<Opened> {
  const opened = before ?? (await open("bench", path, view));
  if (before) await before.again(path, view);
  await opened.page.waitForFunction(() => "longpoint" in window);
  await opened.page.evaluate(() => window.longpoint.ready);
  return opened;
}

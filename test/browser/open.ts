import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Browser as Running, BrowserContextOptions, Page } from "playwright-core";
import { chromium } from "playwright-core";
import { serve } from "../../src/build/serve.ts";
import { findBrowser } from "./findBrowser.ts";

const DIST = join(dirname(fileURLToPath(import.meta.url)), "../../dist");
// Else the browser calls out by itself: a test that watches requests, or a machine with a closed network, must not see that.
const QUIET = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

/** A built page in a real browser. */
export interface Opened {
  readonly page: Page;
  readonly url: string;
  /** Errors and warnings of the console, and uncaught errors, so far. */
  readonly problems: string[];
  /** Addresses asked for so far, but for data: and blob:. */
  readonly requests: string[];
  close(): Promise<void>;
}

let running: Promise<Running> | null = null;

/** One browser for all the tests of a file; each page has a context of its own, so nothing is left from the last. */
async function browser(): Promise<Running> {
  running ??= findBrowser().then((executablePath) => chromium.launch({ executablePath, args: QUIET }));
  return running;
}

/** Ends the browser. For afterAll. */
export async function closeBrowser(): Promise<void> {
  await (await running)?.close();
  running = null;
}

/** Opens a built page, `dist/<folder>/<path>`, and watches what goes wrong and what it asks for. */
export async function open(folder: string, path = "", options: BrowserContextOptions = {}): Promise<Opened> {
  const served = await serve(join(DIST, folder));
  const context = await (await browser()).newContext({ viewport: { width: 1400, height: 850 }, ...options });
  const page = await context.newPage();
  const problems: string[] = [];
  const requests: string[] = [];
  page.on("console", (message) => void (["error", "warning"].includes(message.type()) && problems.push(`${message.type()}: ${message.text()}`)));
  page.on("pageerror", (error) => void problems.push(`uncaught: ${error.message}`));
  page.on("request", (request) => void (/^(data|blob):/.test(request.url()) || requests.push(request.url())));
  await page.goto(served.url + path);
  return {
    page,
    url: served.url,
    problems,
    requests,
    async close() {
      await context.close();
      await served.close();
    },
  };
}

/** Opens the bench page and waits until its sample job is on the screen with every value. */
export async function openBench(options: BrowserContextOptions = {}): Promise<Opened> {
  const opened = await open("bench", "", options);
  await opened.page.waitForFunction(() => "longpoint" in window);
  await opened.page.evaluate(() => window.longpoint.ready);
  return opened;
}

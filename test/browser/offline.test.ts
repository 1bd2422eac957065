import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { sawAddress } from "../../src/pane/writing/printAddress.ts";
import { printAddress } from "../../src/pane/writing/printAddress.ts";
import { ROOT } from "../../src/build/root.ts";
import { writeWorker } from "../../src/build/writeWorker.ts";
import { PACKET_ROOFS, typed } from "../pages/packet/roofs.ts";
import { open, type Opened } from "./open.ts";

const PHONE = { viewport: { width: 390, height: 844 }, touch: true, offline: true } as const;

// A folder of this test's own, which it may change as a newer build would.
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(ROOT, ".cache/pages-"));
  cpSync(join(ROOT, "dist/bench"), folder, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const start = (path: string): Promise<Opened> => open(relative(join(ROOT, "dist"), folder), path, PHONE);
const kept = (t: Opened) => t.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
const caches = (t: Opened) => t.page.evaluate(() => globalThis.caches.keys());

it("opens sheet, packet and saw without a network after a first visit to any of them", async () => {
  const t = await start("saw.html");
  await kept(t);
  await t.unplug();
  await t.again("", PHONE);
  await t.page.waitForFunction(() => "longpoint" in window);
  await t.page.evaluate(() => window.longpoint.ready);
  await t.page.locator("#pane").getByRole("textbox", { name: "Span" }).first().waitFor();
  await t.again(printAddress(typed(PACKET_ROOFS.sample), { packet: true }), PHONE);
  await t.page.locator(".sheet").first().waitFor();
  await t.again(sawAddress("saw.html", typed(PACKET_ROOFS.sample)), PHONE);
  await t.page.locator(".board").first().waitFor();
  expect(t.problems).toEqual([]);
  await t.close();
});

it("a newer build asks, waits through a job, and is loaded when one says so; nothing is lost", async () => {
  const t = await start(sawAddress("saw.html", typed(PACKET_ROOFS.sample)));
  await kept(t);
  const [first] = await caches(t);
  await t.page.locator(".board").first().tap();

  // A build with another text in it.
  const page = join(folder, "saw.html");
  writeFileSync(page, readFileSync(page, "utf8").replace("<title>At the saw", "<title>At the newer saw"));
  writeWorker(folder);
  await t.page.reload();
  await t.page.getByText("A newer Longpoint is ready.").waitFor();
  expect(await t.page.title()).toBe("At the saw");
  await t.page.getByRole("button", { name: "Later" }).tap();
  expect(await t.page.locator("header [role=status]").textContent()).toBe("1 of 61 cut");
  expect(await caches(t)).toContain(first);

  await t.page.reload();
  await t.page.getByRole("button", { name: "Load it now" }).tap();
  await expect.poll(() => t.page.title()).toBe("At the newer saw");
  await expect.poll(() => t.page.locator("header [role=status]").textContent()).toBe("1 of 61 cut");
  expect(t.problems).toEqual([]);
  await t.close();
});

it("keeps no half of a build: where a file is missing, the page works with the network and is not kept", async () => {
  appendFileSync(join(folder, "sw.js"), "\nFILES.push('not-there.js');\n");
  const t = await start(sawAddress("saw.html", typed(PACKET_ROOFS.sample)));
  await t.page.locator(".board").first().tap();
  await expect
    .poll(() => t.page.evaluate(async () => (await navigator.serviceWorker.getRegistration()) === undefined))
    .toBe(true);
  await t.page.getByRole("button", { name: "All pieces" }).tap();
  await t.page.getByText("This page is not kept for use without a network").waitFor();
  await t.close();
});

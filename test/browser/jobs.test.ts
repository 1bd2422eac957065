import { describe, expect, it } from "vitest";
import { bench } from "./bench.ts";

const t = bench();

const edit = (text: string) =>
  t.page.evaluate(
    (content) =>
      window.longpoint.host.write({
        title: "test",
        blocks: [{ sheet: "Bid", row: 30, column: 0, cells: [[{ content }]] }],
      }),
    text,
  );
const cell = async () =>
  (
    await t.page.evaluate(() => window.longpoint.host.read({ sheet: "Bid", row: 30, column: 0, rows: 1, columns: 1 }))
  )[0]![0]!.value;
const title = () => t.page.locator("#files .jobs summary");
const panel = () => t.page.locator("#files .jobs");
const says = () => t.page.locator("#files .message [role=status]");
const kept = () => panel().getByText("This job is kept.", { exact: true }).waitFor({ state: "attached" });
const lines = () => panel().locator("li");
/** Opens the page as a user does for the first time: nothing of a test before is kept. */
async function afresh(): Promise<void> {
  await t.clear();
  await t.open();
}

describe("the job in the page", () => {
  it("is there after a reload, sheet and fields, by its name", async () => {
    await afresh();
    expect(await says().textContent()).toBe("");
    await edit("mine");
    await title().click();
    await panel().getByLabel("Name of this job").fill("Smith barn");
    await t.page.keyboard.press("Enter");
    await t.page.locator("#lp-span").fill("27' 3");
    await expect.poll(() => t.page.evaluate(() => window.longpoint.host.recall("pane"))).toContain("27' 3");
    await kept();
    await t.open();
    expect(await cell()).toBe("");
    await expect.poll(() => says().textContent()).toMatch(/^This browser kept your job Smith barn, changed /);
    await t.page.locator("#files .message").getByRole("button", { name: "Continue" }).click();
    await expect.poll(() => says().textContent()).toBe("Smith barn is as you left it.");
    expect(await title().textContent()).toBe("Job: Smith barn");
    expect(await cell()).toBe("mine");
    await expect.poll(() => t.page.locator("#lp-span").inputValue()).toBe("27' 3");
    await edit("more");
    await kept();
    await title().click();
    await expect.poll(() => lines().count()).toBe(1);
    expect(await lines().textContent()).toContain("in the sheet now");
  });

  it("is one of several; each is deleted by a second press", async () => {
    await afresh();
    await edit("one");
    await kept();
    await t.open();
    await edit("two");
    await kept();
    expect(await title().textContent()).toBe("Job: Ferry landing (2)");
    await title().click();
    await expect.poll(() => lines().count()).toBe(2);
    await lines().nth(1).getByRole("button", { name: "Continue" }).click();
    await expect.poll(() => says().textContent()).toBe("Ferry landing is as you left it.");
    expect(await cell()).toBe("one");
    await title().click();
    await expect.poll(() => lines().count()).toBe(2);
    const other = lines().filter({ hasText: "Ferry landing (2)" });
    await other.getByRole("button", { name: "Delete: Ferry landing (2)" }).click();
    await other.getByRole("button", { name: "Delete for good" }).click();
    await expect.poll(() => lines().count()).toBe(1);
    expect(await says().textContent()).toBe("Ferry landing (2) was deleted from this browser.");
  });

  it("that another tab has is a copy there", async () => {
    await afresh();
    await edit("one");
    await kept();
    const other = await t.page.context().newPage();
    await other.goto(t.url);
    await other.locator("#files .message").getByRole("button", { name: "Continue" }).click();
    await expect
      .poll(() => other.locator("#files .message [role=status]").textContent())
      .toContain("Ferry landing is open in another tab. This is a copy");
    await other.close();
  });

  it("is left alone by the undo of its opening", async () => {
    await afresh();
    await edit("mine");
    await kept();
    await t.open();
    await t.page.locator("#files .message").getByRole("button", { name: "Continue" }).click();
    await expect.poll(() => says().textContent()).toContain("as you left it");
    await t.page.evaluate(() => window.longpoint.undo());
    await edit("of the sample");
    await kept();
    await t.open();
    await title().click();
    await expect
      .poll(() => lines().locator("strong").allTextContents())
      .toEqual(["Ferry landing (2)", "Ferry landing"]);
    await lines().filter({ hasNotText: "(2)" }).getByRole("button", { name: "Continue" }).click();
    await expect.poll(() => says().textContent()).toContain("as you left it");
    expect(await cell()).toBe("mine");
  });
});

describe("a browser that keeps nothing", () => {
  it.each([
    ["has no room", "put", "QuotaExceededError", "This browser has no room left for this job."],
    ["has storage switched off", "open", "SecurityError", "This browser keeps nothing for this page"],
    ["has a newer Longpoint's jobs", "open", "VersionError", "A newer Longpoint keeps its jobs in this browser."],
  ])("%s: says so, and the sheet works on", async (_, act, name, words) => {
    await afresh();
    await t.page.evaluate(() => indexedDB.deleteDatabase("longpoint"));
    await t.page.evaluate(
      ([act, name]) => {
        const fail = () => {
          throw new DOMException("", name);
        };
        if (act === "put") IDBObjectStore.prototype.put = fail;
        // What is open already is closed, as the browser does when its data are cleared.
        else IDBDatabase.prototype.transaction = IDBFactory.prototype.open = fail;
      },
      [act, name],
    );
    await edit("mine");
    await expect.poll(() => title().textContent()).toBe("Job: Ferry landing (not kept)");
    await title().click();
    await panel().getByText(words).waitFor();
    expect(await cell()).toBe("mine");
  });
});

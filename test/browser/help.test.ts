import { describe, expect, it } from "vitest";
import { axeFindings } from "./axeFindings.ts";
import { open } from "./open.ts";

describe.each(["light", "dark"] as const)("the guide, %s", (colorScheme) => {
  it.each([360, 1000])("shows whole at %i px, with its drawings, and has no finding", async (width) => {
    const { page, problems, requests, url, close } = await open("bench", "help/guide.html", {
      colorScheme,
      viewport: { width, height: 800 },
    });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    const drawings = await page.evaluate(() =>
      [...document.images].map(({ naturalWidth, clientWidth, currentSrc }) => ({
        naturalWidth,
        clientWidth,
        narrow: currentSrc.includes("/narrow/"),
      })),
    );
    expect(drawings.length).toBeGreaterThan(5);
    for (const { naturalWidth, clientWidth, narrow } of drawings) {
      expect(naturalWidth).toBeGreaterThan(0);
      // As laid out: a drawing made smaller would have letters too small to read.
      expect(clientWidth).toBe(naturalWidth);
      expect(narrow).toBe(width < 700);
    }
    expect(await axeFindings(page)).toEqual([]);
    expect(problems).toEqual([]);
    expect(requests.filter((address) => !address.startsWith(url))).toEqual([]);
    await close();
  });
});

it("a function's help page leads to the guide", async () => {
  const { page, close } = await open("bench", "help/JACKTABLE.html");
  await page.getByRole("link", { name: "Terms and measurements" }).click();
  await page.getByRole("heading", { name: "The roof block" }).waitFor();
  await close();
});

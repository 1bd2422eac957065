import { expect, it } from "vitest";
import { bench } from "./bench.ts";
import { sheetKeys } from "./sheetKeys.ts";

const t = bench();
const keys = sheetKeys(t);

it.each(["bid", "compare", "check", "metric"])(
  "no request leaves with the sample %s, edited and saved",
  async (name) => {
    await t.open(`?sample=${name}`);
    await t.page.evaluate(() => {
      const broken: string[] = ((window as any).broken = []);
      addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI }) =>
        broken.push(`${effectiveDirective} ${blockedURI}`),
      );
    });
    for (const [i, formula] of [
      '=IMAGE("http://127.0.0.1:9/a.png?c="&A1)',
      '=HYPERLINK("http://127.0.0.1:9/")',
    ].entries())
      await keys.type(4 + i, 7, [[formula, 0]]);
    const saved = t.page.waitForEvent("download");
    await t.page.keyboard.press("Control+s");
    await saved;
    expect(t.requests.filter((url) => !url.startsWith(t.url))).toEqual([]);
    expect(await t.page.evaluate(() => (window as any).broken)).toEqual([]);
  },
);

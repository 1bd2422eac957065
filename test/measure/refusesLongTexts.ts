import { expect, it } from "vitest";
import { Reason } from "../../src/measure/reason.ts";
import { longTexts } from "./anyText.ts";

/** Every reader refuses a 10,000-character text at once: a thousand of each in far less time than one slow pattern would take. */
export function refusesLongTexts(read: (text: string) => unknown): void {
  it.each(longTexts)("refuses 10,000 characters of %s at once", (_, text) => {
    const start = performance.now();
    for (let i = 0; i < 1_000; i++) read(text);
    expect(performance.now() - start).toBeLessThan(1_000);
    const reason = read(text) as Reason;
    expect(reason).toBeInstanceOf(Reason);
    expect(reason.tag).toBe("text too long");
    expect(Array.from(String(reason.figures["text"])).length).toBe(40);
  });
}

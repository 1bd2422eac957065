import { expect, it } from "vitest";
import { Reason } from "../../src/measure/reason.ts";
import { longTexts } from "./anyText.ts";

/** Every reader refuses a 10,000-character text for its length. One that tried its patterns first would meet some here that never end. */
export function refusesLongTexts(read: (text: string) => unknown): void {
  it.each(longTexts)("refuses 10,000 characters of %s", (_, text) => {
    const reason = read(text) as Reason;
    expect(reason).toBeInstanceOf(Reason);
    expect(reason.tag).toBe("text too long");
    expect(Array.from(String(reason.figures["text"])).length).toBe(40);
  });
}

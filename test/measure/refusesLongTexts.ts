import { expect, it } from "vitest";
import { Failure } from "../../src/measure/result.ts";
import { longTexts } from "./anyText.ts";

/** Every reader refuses a 10,000-character text for its length. One that tried its patterns first would meet some here that never end. */
export function refusesLongTexts(read: (text: string) => unknown, kind: string): void {
  it.each(longTexts)("refuses 10,000 characters of %s", (_, text) => {
    expect(read(text)).toEqual(new Failure({ kind }));
  });
}

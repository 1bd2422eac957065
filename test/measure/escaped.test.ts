import { expect, it } from "vitest";
import { escaped } from "../../src/measure/escaped.ts";

it("spells out what HTML takes for its own, and nothing else", () => {
  expect(escaped(`<b title="2' & 3'">`)).toBe("&#60;b title=&#34;2' &#38; 3'&#34;&#62;");
  expect(escaped("plain, 1/2")).toBe("plain, 1/2");
});

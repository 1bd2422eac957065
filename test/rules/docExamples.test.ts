/// <reference types="vite/types/importMeta.d.ts" />
import { describe, expect, it } from "vitest";

const rooms = import.meta.glob<Record<string, unknown>>("../../src/{measure,geometry,roof,cutting,drawing}/**/*.ts", {
  eager: true,
});
const sources = import.meta.glob<string>("../../src/{measure,geometry,roof,cutting,drawing}/**/*.ts", {
  eager: true,
  query: "?raw",
  import: "default",
});

const exported = Object.values(rooms).flatMap((room) => Object.entries(room));
const words = Object.fromEntries(exported);
const run = (code: string): unknown =>
  new Function(...Object.keys(words), `"use strict"; return (${code});`)(...Object.values(words));

const lines = Object.entries(sources).flatMap(([file, text]) =>
  [...text.matchAll(/^\s*\* (\S.*?) +\/\/ => (.+)$/gm)].map(
    ([, code, shown]) => [file.replace("../../", ""), code!, shown!.trim()] as const,
  ),
);

/** A value whose numbers may differ by 1e-9: what is printed is decimal, what is computed is not. */
function near(value: unknown): unknown {
  if (typeof value === "number" && Number.isFinite(value)) return expect.closeTo(value, 9);
  if (Array.isArray(value)) return value.map(near);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, near(part)]));
}

/** Every `@example` line of the core, run: a comment cannot drift from its code. */
describe("examples in comments", () => {
  it.each(lines)("%s: %s => %s", (_, code, shown) => {
    expect(run(code)).toEqual(near(run(shown)));
  });

  it("share one name for one thing, so that each line means one function", () => {
    const names = exported.map(([name]) => name);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  // Rooms above these take and give whole roofs and plans, which no line of a comment holds.
  it("stand at every function of measure and geometry that leaves its file", () => {
    const bare = Object.entries(sources)
      .filter(([file]) => /src\/(measure|geometry)\//.test(file))
      .flatMap(([file, text]) => {
        const functions = [...text.matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export (?:async )?function\*? (\w+)/g)];
        return functions
          .filter(([, comment]) => comment === undefined || !/^\s*\* \S.*? +\/\/ => /m.test(comment))
          .map(([, , name]) => `${file.replace("../../", "")}: ${name}`);
      });
    expect(bare).toEqual([]);
  });
});

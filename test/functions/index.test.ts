import { readdirSync } from "node:fs";
import { expect, it } from "vitest";
import { functions } from "../../functions/index.ts";

const files = readdirSync("functions").filter((file) => file.endsWith(".ts"));

it.each(files)("every definition that %s exports is registered, once", async (file) => {
  const exported = Object.values((await import(`../../functions/${file}`)) as Record<string, unknown>);
  const definitions = exported.filter((one) => typeof one === "object" && one !== null && "run" in one);
  expect(definitions.map((one) => [one, functions.filter((known) => known === one).length])).toEqual(
    definitions.map((one) => [one, 1]),
  );
});

it("every function registered is exported by one of these files", async () => {
  const modules = await Promise.all(files.map((file) => import(`../../functions/${file}`) as Promise<object>));
  const exported = new Set<unknown>(modules.flatMap((one) => Object.values(one) as unknown[]));
  expect(functions.filter((one) => !exported.has(one)).map(({ name }) => name)).toEqual([]);
});

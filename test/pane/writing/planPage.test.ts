import { expect, it } from "vitest";
import { orderNow, type Order } from "../../../src/pane/state/orderNow.ts";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { planLists } from "../../../src/pane/writing/planLists.ts";
import { planPage } from "../../../src/pane/writing/planPage.ts";
import { packetOf } from "../../../src/pane/writing/packetOf.ts";
import { sheetHost } from "../sheetHost.ts";

/** The words of a page, in the order in which they stand. */
const wordsOf = (html: string) =>
  html
    .replace(/^[^]*<body>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replace(/[\s\u00a0\u202f]+/g, " ");

it("says which roof and saw cut it is for, what the order says besides, and lists what to buy and to keep", async () => {
  const state = paneState(sheetHost([]).host);
  setInput(state, "Span", "20'");
  setInput(state, "Length", "30'");
  state.kerf.value = "3/32";
  const found = (await orderNow({ inputs: state.inputs.value, kerf: "3/32" })) as Order;
  const order = { ...found, plan: { ...found.plan, missing: ["no board is long enough"], notes: ["joined once"] } };
  const html = planPage(state, order, "A4", `3/32"`);
  const words = wordsOf(html);
  expect(words).toContain(
    `For a roof of 20' 0" by 30' 0" over the plates. Kerf 3/32". No board is long enough. Joined once.`,
  );
  expect(words).toContain(packetOf(state).stamp);
  const lists = planLists(order, "in", 3 / 32);
  expect(lists).toHaveLength(2);
  for (const { title, rows } of lists) {
    expect(words).toContain(title);
    for (const row of rows) expect(words).toContain(row.filter((text) => text !== "").join(" "));
  }
  // A4 is 210 mm wide.
  expect(html).toMatch(/@page\{size:8\.26\d*in/);
  expect(html.match(/<figure>/g)).toHaveLength(order.plan.sticks.length);
});

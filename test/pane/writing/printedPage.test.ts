import { describe, expect, it } from "vitest";
import type { Host } from "../../../src/hosts/host.ts";
import { emptyWing, START_INPUTS } from "../../../src/pane/state/fields.ts";
import { paneState } from "../../../src/pane/state/paneState.ts";
import { cardsPage } from "../../../src/pane/writing/cards.ts";
import { cardsGiven } from "../../../src/pane/writing/packetOf.ts";
import { keyOf, orderNow, type Order } from "../../../src/pane/state/orderNow.ts";
import { planPage } from "../../../src/pane/writing/planPage.ts";
import { printAddress, type Printed } from "../../../src/pane/writing/printAddress.ts";
import { printedPage } from "../../../src/pane/writing/printedPage.ts";

const CARDS: Printed = { paper: "letter", perPage: 2, plan: false };
const PLAN: Printed = { paper: "A4", perPage: null, plan: true };
function pane(span = "26'", kerf = "") {
  const state = paneState({} as Host);
  state.inputs.value = { ...START_INPUTS, Span: span };
  state.kerf.value = kerf;
  return state;
}
const hashOf = (state: ReturnType<typeof pane>, printed: Printed) => printAddress(state, printed).replace(/^[^#]*/, "");

describe("the address of a page that prints by itself", () => {
  it("has the roof behind the #, which no browser sends to a server, and stays short", () => {
    const state = pane("24' 6\" & <b>");
    state.inputs.value = { ...state.inputs.value, wings: [emptyWing("A")] };
    const url = new URL(printAddress(state, CARDS), "https://example.org/longpoint/");
    expect([url.pathname, url.search]).toEqual(["/longpoint/print.html", ""]);
    // What every browser and mail program takes: 2,000 characters.
    expect(url.href.length).toBeLessThan(2000);
  });
  it("gives the very cards that the pane prints", async () => {
    const state = pane();
    const { model } = state.report.value;
    const own = cardsPage(model!, { paper: "letter", perPage: 2 }, cardsGiven(state));
    expect(await printedPage(hashOf(state, CARDS))).toBe(own);
  });
  it("gives the cutting plan, and cards with its boards", async () => {
    const html = await printedPage(hashOf(pane("24'", "1/8"), PLAN));
    expect(html).toMatch(/<figure>[^]*<figure>/);
    expect(html).toContain("Cutting plan");
    const plain = await printedPage(hashOf(pane(), CARDS));
    expect(await printedPage(hashOf(pane(), { ...CARDS, plan: true }))).not.toBe(plain);
  });
  it("gives cards with the boards of the very plan, and the plan with the saw cut that is typed", async () => {
    const state = pane("20'", "3/8");
    const order = (await orderNow({ inputs: state.inputs.value, kerf: "3/8" })) as Order;
    expect(await printedPage(hashOf(state, PLAN))).toBe(planPage(state, order, "A4", `3/8"`));
    state.found.value = { key: keyOf({ inputs: state.inputs.value, kerf: "3/8" }), order };
    const cards = { paper: "A4", perPage: 4 } as const;
    expect(await printedPage(hashOf(state, { ...cards, plan: true }))).toBe(
      cardsPage(state.report.value.model!, cards, cardsGiven(state)),
    );
  });
  const boardless = pane("24'");
  boardless.inputs.value = { ...boardless.inputs.value, Boards: "long" };
  it.each([
    ["the plan unasked", hashOf(pane(), { ...PLAN, plan: false })],
    ["a paper that is none", hashOf(pane(), { ...CARDS, paper: "napkin" as never })],
    ["three to a page", hashOf(pane(), { ...CARDS, perPage: 3 as never })],
    ["boards that cannot be read", hashOf(boardless, PLAN)],
  ])("gives nothing for %s", async (_, hash) => expect(await printedPage(hash)).toBeNull());
  it.each(["", "#", "#%", "#{}", "#null", hashOf(pane("none"), CARDS), hashOf(pane("24'", "no kerf"), PLAN)])(
    "gives nothing for %j",
    async (hash) => {
      expect(await printedPage(hash)).toBeNull();
    },
  );
});

import { expect, it } from "vitest";
import { paneState, setInput } from "../../../src/pane/state/paneState.ts";
import { drawingAddress, openedElsewhere, printAddress, sawAddress } from "../../../src/pane/writing/printAddress.ts";
import { sheetHost } from "../sheetHost.ts";

const CARDS = { paper: "letter", perPage: 4, plan: false } as const;

const pane = (more: Parameters<typeof sheetHost>[1] = {}) => {
  const state = paneState(sheetHost([], more).host);
  setInput(state, "Span", "20'");
  setInput(state, "Fascia", "");
  state.kerf.value = "1/4";
  return state;
};
/** The page of an address, and what it is asked for. */
function readAddress(address: string): [string, Record<string, unknown>] {
  const [page, hash] = address.split("#") as [string, string];
  return [page, JSON.parse(decodeURIComponent(hash)) as Record<string, unknown>];
}

it("names the page, what is wanted of it, and the roof with its saw cut", () => {
  const state = pane();
  const [, { roof }] = readAddress(drawingAddress(state)) as [string, { roof: { inputs: object } }];
  expect(roof).toMatchObject({ inputs: { Span: "20'", Length: "36'" }, kerf: "1/4" });
  // Empty fields only make it longer.
  expect(Object.keys(roof.inputs)).not.toContain("Fascia");
  expect(readAddress(printAddress(state, CARDS))).toEqual(["print.html", { ...CARDS, roof }]);
  expect(readAddress(printAddress(state, { packet: true }))).toEqual(["print.html", { packet: true, roof }]);
  expect(readAddress(sawAddress("saw.html", state))).toEqual(["saw.html", { roof }]);
  expect(readAddress(drawingAddress(state))).toEqual(["drawing.html", { roof }]);
});

it("opens elsewhere only where the host can", () => {
  const opened: string[] = [];
  const state = pane({ openPage: (address) => void opened.push(address) });
  openedElsewhere(state, CARDS)!();
  expect(opened).toEqual([printAddress(state, CARDS)]);
  expect(openedElsewhere(pane(), CARDS)).toBeUndefined();
});

import { expect, it } from "vitest";
import { paneState } from "../../../src/pane/state/paneState.ts";
import { askedRoof } from "../../../src/pane/writing/askedRoof.ts";
import { drawingAddress } from "../../../src/pane/writing/printAddress.ts";
import { sheetHost } from "../sheetHost.ts";

it("is the roof that the address was made of", () => {
  const state = paneState(sheetHost([]).host);
  state.inputs.value = { ...state.inputs.value, Span: "31' 6 1/2\"", "Job name": "50 % & #7" };
  state.kerf.value = "1/8";
  const address = drawingAddress(state);
  expect(askedRoof(address.slice(address.indexOf("#")))).toMatchObject({ inputs: state.inputs.value, kerf: "1/8" });
});

it.each(["", "#", "#%", "#{", "#{}", "#null", "#7", "#%7B%7D", '#{"roof":7}', '#{"roof":{"inputs":7}}'])(
  "is none behind %s",
  (hash) => expect(askedRoof(hash)).toBeNull(),
);

import { expect, it, vi } from "vitest";
import { paneState } from "../../../src/pane/state/paneState.ts";
import { keyOf, orderNow, type Order } from "../../../src/pane/state/orderNow.ts";
import { setInput } from "../../../src/pane/state/paneState.ts";
import { Failure } from "../../../src/measure/result.ts";
import { roofStamp } from "../../../src/roof/tables/roofStamp.ts";
import { cardsGiven, packetOf } from "../../../src/pane/writing/packetOf.ts";
import { ownClock } from "../ownClock.ts";
import { sheetHost } from "../sheetHost.ts";

ownClock();

function pane() {
  vi.setSystemTime(new Date(2031, 4, 9));
  const state = paneState(sheetHost([]).host);
  setInput(state, "Span", "20'");
  setInput(state, "Job name", "Barn");
  return state;
}

it("says the job, the day in words and the stamp of the roof with its saw cut", () => {
  const state = pane();
  const { spec } = state.report.value.model!.frame;
  // The usual saw cut is an eighth.
  expect(packetOf(state)).toEqual({ job: "Barn", date: "May 9, 2031", stamp: roofStamp(spec, 1 / 8) });
  state.kerf.value = '3/32"';
  expect(packetOf(state).stamp).toBe(roofStamp(spec, 3 / 32));
});

it("has the boards of the cutting plan while it is the plan of this roof and saw cut", async () => {
  const state = pane();
  const packet = packetOf(state);
  expect(cardsGiven(state)).toEqual({ packet });
  const order = (await orderNow({ inputs: state.inputs.value, kerf: "" })) as Order;
  state.found.value = { key: keyOf({ inputs: state.inputs.value, kerf: "" }), order };
  expect(cardsGiven(state)).toEqual({ packet, sticks: order.plan.sticks });
  state.kerf.value = "1/4";
  expect(cardsGiven(state)).toEqual({ packet: packetOf(state) });
  state.found.value = { key: keyOf({ inputs: state.inputs.value, kerf: "1/4" }), order: new Failure({ kind: "" }) };
  expect(cardsGiven(state)).toEqual({ packet: packetOf(state) });
});

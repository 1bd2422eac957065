import type { PaneState } from "../../../src/pane/state/paneState.ts";
import { emptyWing, START_INPUTS, type Inputs } from "../../../src/pane/state/fields.ts";

/** The roofs whose packets are looked at: as the pane starts, with a wing, metric with two pitches, and one of some 500 pieces. */
export const PACKET_ROOFS = {
  sample: { ...START_INPUTS, "Job name": "Weighhouse, north roof" },
  winged: {
    ...START_INPUTS,
    "Job name": "W".repeat(10_000),
    wings: [
      { ...emptyWing("A"), Wall: "front", "From left corner": "8'", "Out from wall": "10'", Span: "14'", Ends: "hip" },
    ],
  },
  metric: {
    ...START_INPUTS,
    Unit: "mm",
    Span: "7.2 m",
    Length: "10.8 m",
    Pitch: "30°",
    "End pitch": "35°",
    Spacing: "600",
    Overhang: "450",
    Rafter: "38 x 184",
    Hip: "38 x 235",
    Ridge: "38 x 235",
    Seat: "89",
    Boards: "2.4 m to 7.2 m by 0.6 m",
  },
  long: { ...START_INPUTS, Length: "240'", Spacing: "12" },
} as const satisfies Record<string, Inputs>;

/** What an address is made from. */
export const typed = (inputs: Inputs) =>
  ({ inputs: { value: inputs }, kerf: { value: "" } }) as Pick<PaneState, "inputs" | "kerf">;

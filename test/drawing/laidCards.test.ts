import { describe, expect, it } from "vitest";
import { cutCards } from "../../src/drawing/cards/cutCard.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import { framed } from "../roof/outlineSpecs.ts";
import { WINGED_ROOFS } from "./wingedRoofs.ts";

/** 24 by 40 feet at 6 in 12, a gabled wing of 16 by 10 from 12' 6", laid over 1/2 in of sheathing: lengths worked by hand in test/roof/laidOver.test.ts. */
const T = WINGED_ROOFS["T"]!;
const { frame, pieces } = framed({
  ...T,
  wings: T.wings.map((wing) => ({ ...wing, framing: "laid over", sheathing: 0.5 })),
});
const cards = cutCards(frame, pieces, { length: (value) => lengthText(value, "in") });
const card = (mark: string) => cards.find((one) => one.mark.split(", ").includes(mark))!;
const said = (mark: string) =>
  `${card(mark).steps.join("\n")}\n${card(mark).drawing(900, false)}`.replaceAll("&#34;", `"`).replaceAll("&#39;", "'");

describe("cut cards of a wing laid over", () => {
  it.each([
    // 136.1668 and 121.5765 on its edges; across the flat 41.81 and 48.19.
    [
      "VB-A",
      [`11' 4 3/16" along that edge`, `VJ1-A 3' 0"; VJ2-A 6' 0"; VJ3-A 9' 0"`, "lower end 41.81°", "upper end 48.19°"],
    ],
    ["VB-A", [`Right edge 11' 4 3/16"`, `Left edge 10' 1 9/16"`, `edge 2" inside that line`, "53.13°"]],
    // 75.4984 and 73.8214; the seat 12.2984; toe at 24 x 1.5 up the board's edge.
    ["VJ1-A", [`Mark 6' 3 1/2" down`, `1' 0 5/16" to the underside`, "tilt 26.57°", `toe 3' 0" up`]],
    ["VJ1-A", [`Right face 6' 3 1/2"`, `Left face 6' 1 13/16"`, "Foot: Saw tilt 26.57°", "Head: square across"]],
    // 214.1320 on top, 14.5 less below.
    ["R-A", [`17' 10 1/8" along the top, 16' 7 5/8" along the bottom`, "63.43° from square"]],
    ["CN-A", ["No tail"]],
  ])("tell the worked figures: %s %#", (mark, texts) => {
    for (const text of texts) expect(said(mark)).toContain(text);
  });
});

import { input } from "./cells.ts";
import { LUMBER, pitch, winged } from "./winged.ts";

/** An L: a wing that runs on from the left end wall, with a broken hip. The building is invented. */
export const lShaped = winged({
  name: "l-shaped",
  says: "An L-shaped roof: one valley, and a hip that stops at the wing's ridge",
  job: "Boat house with a workshop wing",
  about: "An invented L-shaped building.",
  block: [
    ["Wall", null, input("front")],
    ["From left corner", null, input("flush left")],
    ["Out from wall", null, input("12'")],
    ["Span", input("24'"), input("16'")],
    ["Length", input("40'"), null],
    ["Pitch", pitch, input("")],
    ["Ends", input("hip and hip"), input("hip")],
    ...LUMBER,
  ],
  figures: (cell) => [
    [
      "Valley, inner corner to crossing",
      `=RAFTER.VALLEYLEN(${cell("Pitch", "main")},RAFTER.INCHES(${cell("Span", "wing")})/2)`,
    ],
    ["Hip, corner to apex", `=RAFTER.HIPLEN(${cell("Pitch", "main")},RAFTER.INCHES(${cell("Span", "main")})/2)`],
    ["Mark of a foot 4' from the inner corner", `=RAFTER.VALLEYMARK(${cell("Pitch", "main")},48,1.5)`],
    ["Step of the valley jacks", `=RAFTER.JACKSTEP(${cell("Pitch", "main")},${cell("Spacing", "main")})`],
  ],
});

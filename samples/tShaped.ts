import { input } from "./cells.ts";
import { LUMBER, pitch, winged } from "./winged.ts";

/** A T: a lower wing in the middle of the front, with a long and a shorter valley. The building is invented. */
export const tShaped = winged({
  name: "t-shaped",
  says: "A T-shaped roof: a long and a shorter valley, and the cripples between them",
  job: "Meeting house with an entrance wing",
  about: "An invented T-shaped building.",
  block: [
    ["Wall", null, input("front")],
    ["From left corner", null, input("12' 6")],
    ["Out from wall", null, input("10'")],
    ["Span", input("24'"), input("16'")],
    ["Length", input("40'"), null],
    ["Pitch", pitch, input("")],
    ["Ends", input("hip and hip"), input("gable")],
    ...LUMBER,
    ["Long valley", null, input("left")],
  ],
  figures: (cell) => {
    const main = cell("Pitch", "main");
    const half = (column: "main" | "wing") => `RAFTER.INCHES(${cell("Span", column)})/2`;
    return [
      ["Long valley, line length", `=RAFTER.VALLEYLEN(${main},${half("main")})`],
      ["Long valley to the main ridge's face, center", `=RAFTER.VALLEYTORIDGE(${main},${half("main")},1.5)`],
      ["Shorter valley to the long one's side, center", `=RAFTER.VALLEYTOVALLEY(${main},${half("wing")},1.5)`],
      [
        "Valley cripple one spacing from the crossing",
        `=RAFTER.VALLEYCRIPPLE(${main},2*${cell("Spacing", "main")},1.5,1.5)`,
      ],
      ["Mark of a foot 4' from the inner corner", `=RAFTER.VALLEYMARK(${main},48,1.5)`],
    ];
  },
});

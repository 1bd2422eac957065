import { readRoof, type RoofModel } from "../../functions/arguments/roofModel.ts";
import { plateStrips } from "../../functions/plateStrips.ts";
import type { Row } from "../../functions/arguments/roofBlock.ts";
import { drawApex } from "../drawing/views/drawApex.ts";
import { drawCorner } from "../drawing/views/drawCorner.ts";
import { drawCourses } from "../drawing/views/drawCourses.ts";
import { drawEnds } from "../drawing/views/drawEnds.ts";
import { drawFrame3d } from "../drawing/views/drawFrame3d.ts";
import { drawHip } from "../drawing/views/drawHip.ts";
import { drawHipTops } from "../drawing/views/drawHipTops.ts";
import { drawJack } from "../drawing/views/drawJack.ts";
import { drawPlates } from "../drawing/views/drawPlates.ts";
import { drawPlan } from "../drawing/views/drawPlan.ts";
import { drawSetOut } from "../drawing/views/drawSetOut.ts";
import { drawValley } from "../drawing/views/drawValley.ts";
import type { DrawingOptions } from "../drawing/canvas/canvas.ts";
import { lengthText } from "../measure/lengthText.ts";
import { messageOf } from "../../functions/words/problemText.ts";
import { Failure } from "../measure/result.ts";
import { takeOff } from "../roof/tables/takeOff.ts";
import { standaloneSvg } from "./standaloneSvg.ts";

/** The reading room that the guide draws and counts: an invented small hall. */
const HALL: Readonly<Partial<Record<Row, string | number>>> = { Span: "16'", Length: "24'", Pitch: 9, Overhang: 16 };

/** Widths in pixels that the guide's drawings are laid out for: a page, and a phone. */
export const GUIDE_WIDTHS = { wide: 680, narrow: 300 } as const;

/** The drawings of functions/GUIDE.md by file name, laid out for a width in pixels and made by what draws in the pane. */
export function guideDrawings(width: number): Readonly<Record<string, string>> {
  const options: DrawingOptions = { width, length: (value) => lengthText(value, "in") };
  const hall = model({});
  const longest = hall.pieces.find(({ mark }) => mark === "J1")!;
  const odd = (title: string, rows: typeof HALL) => ({ title, ...model({ Span: "18'", ...rows }) });
  // Ends flatter than the sides need a longer hall.
  const top = (title: string, rows: typeof HALL) => ({ title, ...model({ Length: "32'", ...rows }) });
  const apex = (title: string, rows: typeof HALL, end: "hip" | "gable" = "hip") => ({ title, ...model(rows), end });
  const ell = winged({
    Wall: "front",
    "From left corner": "flush left",
    "Out from wall": "12'",
    Span: "16'",
    Ends: "hip",
  });
  const tee = winged({ Wall: "back", "From left corner": "10'", "Out from wall": "8'", Span: "14'", Ends: "hip" });
  const over = winged({
    Wall: "front",
    "From left corner": "12' 6",
    "Out from wall": "10'",
    Span: "16'",
    Ends: "gable",
    "Wing framing": "laid over",
  });
  const valley = tee.pieces.find(({ mark }) => mark === "VL-A")!;
  const drawings = {
    "wing-plan": drawPlan(ell.frame, ell.pieces, options),
    "wing-frame": drawFrame3d(ell.frame, ell.pieces, options),
    "wing-valleys": drawValley(tee.frame, tee.pieces, "A", options),
    "wing-valley-ends": drawEnds(tee.frame, valley, options),
    "wing-plates": drawPlates(
      plateStrips(
        ell.frame,
        ({ place }) => place?.kind !== "end" && !(place?.kind === "wall" && place.wall === "back"),
      ),
      options,
    ),
    "wing-laid-over": drawFrame3d(over.frame, over.pieces, options),
    plan: drawPlan(hall.frame, hall.pieces, options),
    frame: drawFrame3d(hall.frame, hall.pieces, options),
    jack: drawJack(longest, "right", options),
    hip: drawHip(hall.frame, hall.pieces, options),
    "hip-top": drawHipTops(
      [
        top("Dropped", {}),
        top("Backed", { "Hip top": "backed" }),
        top("Dropped, ends at 6 in 12", { "End pitch": 6 }),
        top("Shifted, ends at 6 in 12", { "End pitch": 6, "Hip top": "shifted" }),
      ],
      options,
    ),
    corner: drawCorner(hall.frame, hall.pieces, options),
    "set-out": drawSetOut(
      [odd("From the king common", {}), odd("From the corner", { "Set out from": "corner" })],
      options,
    ),
    apex: drawApex(
      [
        apex("King commons", {}),
        apex("Hips on the ridge", { "Hip head": "ridge" }),
        apex("Square pyramid", { Length: "16'" }),
        apex("The gable's end", { Ends: "hip and gable" }, "gable"),
      ],
      options,
    ),
    courses: drawCourses(takeOff(hall.frame, hall.pieces), options),
  };
  return Object.fromEntries(Object.entries(drawings).map(([name, drawing]) => [`${name}.svg`, standaloneSvg(drawing)]));
}

/** A worked wing of the guide on its main roof of 24' by 40'. */
function winged(wing: Readonly<Record<string, string>>): RoofModel {
  const main = { Span: "24'", Length: "40'", Pitch: 6, Overhang: 16 };
  const given: Readonly<Record<string, string | number>> = main;
  const rows = [...new Set([...Object.keys(main), ...Object.keys(wing)])];
  return modelOf(rows.map((row) => [row, given[row] ?? null, wing[row] ?? null]));
}

const model = (rows: typeof HALL): RoofModel => modelOf(Object.entries({ ...HALL, ...rows }));

function modelOf(block: readonly (readonly (string | number | null)[])[]): RoofModel {
  const read = readRoof("roof", block);
  if (read instanceof Failure) throw new Error(messageOf(read));
  return read;
}

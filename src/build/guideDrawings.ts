import { readRoof, type RoofModel } from "../../functions/arguments/roofModel.ts";
import type { Row } from "../../functions/arguments/roofBlock.ts";
import { drawApex } from "../drawing/views/drawApex.ts";
import { drawCorner } from "../drawing/views/drawCorner.ts";
import { drawCourses } from "../drawing/views/drawCourses.ts";
import { drawFrame3d } from "../drawing/views/drawFrame3d.ts";
import { drawHip } from "../drawing/views/drawHip.ts";
import { drawHipTops } from "../drawing/views/drawHipTops.ts";
import { drawJack } from "../drawing/views/drawJack.ts";
import { drawPlan } from "../drawing/views/drawPlan.ts";
import { drawSetOut } from "../drawing/views/drawSetOut.ts";
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
  const drawings = {
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

function model(rows: typeof HALL): RoofModel {
  const read = readRoof("roof", Object.entries({ ...HALL, ...rows }));
  if (read instanceof Failure) throw new Error(messageOf(read));
  return read;
}

import type { DrawingOptions } from "../../drawing/canvas/canvas.ts";
import { drawCorner } from "../../drawing/views/drawCorner.ts";
import { drawFrame3d, type Turned } from "../../drawing/views/drawFrame3d.ts";
import { drawHip } from "../../drawing/views/drawHip.ts";
import { drawValley } from "../../drawing/views/drawValley.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { ViewName } from "../state/looking.ts";

/** A view of the roof as SVG: any but the plan, which is there at first. */
export function drawView(
  view: Exclude<ViewName, "plan">,
  { frame, pieces }: RoofModel,
  options: DrawingOptions,
  turned: Turned,
): string {
  switch (view) {
    case "corner":
      return drawCorner(frame, pieces, options);
    case "valley":
      return drawValley(frame, pieces, null, options);
    case "hip":
      return drawHip(frame, pieces, options);
    case "round":
      return drawFrame3d(frame, pieces, options, turned);
  }
}

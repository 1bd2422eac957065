import { drawPlan, type PlanOptions } from "../../drawing/views/drawPlan.ts";
import { drawCorner } from "../../drawing/views/drawCorner.ts";
import { drawFrame3d, type Turned } from "../../drawing/views/drawFrame3d.ts";
import { drawHip } from "../../drawing/views/drawHip.ts";
import { drawPlates } from "../../drawing/views/drawPlates.ts";
import { drawValley } from "../../drawing/views/drawValley.ts";
import { plateStrips } from "../../../functions/plateStrips.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { ViewName } from "../state/looking.ts";

/** A view of the roof as SVG. */
export function drawView(view: ViewName, { frame, pieces }: RoofModel, options: PlanOptions, turned: Turned): string {
  switch (view) {
    case "plan":
      return drawPlan(frame, pieces, options);
    case "corner":
      return drawCorner(frame, pieces, options);
    case "valley":
      return drawValley(frame, pieces, null, options);
    case "plates":
      return drawPlates(plateStrips(frame), options);
    case "hip":
      return drawHip(frame, pieces, options);
    case "round":
      return drawFrame3d(frame, pieces, options, turned);
  }
}

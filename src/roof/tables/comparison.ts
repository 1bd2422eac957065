import { hipsIn, type Frame } from "../frame/frame.ts";
import { jackStep } from "../members/jack.ts";
import { firstHip, type Piece } from "../frame/piece.ts";
import { pieceBoardFeet } from "./pieceBoardFeet.ts";

/** What two framings of a roof can be compared by. */
export type Compared = "longest jack" | "step" | "jacks" | "hip length" | "board feet" | "roof area" | "ridge height";

/** One figure of a framed roof: lengths and the sloped area in the roof's unit; the step is the main side's, the hip is to its head. */
export function comparedFigure(what: Compared, frame: Frame, pieces: readonly Piece[]): number {
  const jacks = pieces.filter(({ member }) => member === "jack");
  switch (what) {
    case "longest jack":
      return Math.max(...jacks.map(({ longPoint }) => longPoint));
    case "step":
      return jackStep(hipsIn(frame)[0]!.near, frame.spec.spacing);
    case "jacks":
      return jacks.reduce((sum, { left, right }) => sum + left + right, 0);
    case "hip length":
      return firstHip(pieces).longPoint;
    case "board feet":
      return pieces.reduce((sum, piece) => sum + pieceBoardFeet(piece, frame.spec.unit), 0);
    case "ridge height":
      // Where the main planes meet, over the plates.
      return frame.heel + (frame.spec.pitch * frame.spec.span) / 2;
    case "roof area":
      return frame.surface.faces.reduce((sum, { sloped }) => sum + sloped, 0);
  }
}

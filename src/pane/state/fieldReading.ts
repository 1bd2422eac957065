import type { Row } from "../../../functions/arguments/roofBlock.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { hipsIn, type Frame } from "../../roof/frame/frame.ts";
import type { RoofSpec, Section } from "../../roof/frame/roofSpec.ts";
import { texts } from "../words/texts.ts";

/** How a row of the block was understood, in the roof's unit; with the frame, also what follows where the row is left empty. */
export function fieldReading(row: Row, spec: RoofSpec, frame: Frame | null): string {
  const { unit } = spec;
  const length = (value: number | null | undefined) =>
    value === null || value === undefined ? "" : lengthText(value, unit);
  const small = (value: number) =>
    unit === "in" && Math.abs(value) < 12 ? lengthText(value, unit, 64) : lengthText(value, unit);
  const pitch = (slope: number) => `${number(slope * 12)} in 12, ${slopeAngle(slope).toFixed(2)}°`;
  const section = (size: Section | null) =>
    size
      ? unit === "mm"
        ? `${number(size.thickness)} x ${number(size.depth)} mm`
        : `${small(size.thickness)} x ${small(size.depth)}`
      : texts.noRidge;
  switch (row) {
    case "Span":
      return length(spec.span);
    case "Length":
      return length(spec.length);
    case "Pitch":
      return pitch(spec.pitch);
    case "End pitch":
      return pitch(spec.endPitch ?? spec.pitch);
    case "Spacing":
      return length(spec.spacing);
    case "Overhang":
      return length(spec.overhang);
    case "End overhang":
      return length(spec.endOverhang ?? (frame ? hipsIn(frame)[0]!.far.plane.overhang : undefined));
    case "Rafter":
      return section(spec.rafter);
    case "Hip":
      return section(spec.hip);
    case "Ridge":
      return section(spec.ridge);
    case "Seat":
      return length(spec.seat ?? (frame ? hipsIn(frame)[0]!.near.plane.seat : undefined));
    case "Heel":
      return length(spec.heel ?? frame?.heel);
    case "Correction":
      return small(spec.correction);
    case "End correction":
      return small(spec.endCorrection);
    case "Boards":
      return texts.boardsUnderstood(spec.boards.length, length(spec.boards[0]), length(spec.boards.at(-1)));
    case "Waste":
      return `${number(spec.waste)} %`;
    case "Spares":
      return texts.pieces(spec.spares);
    case "Unit":
    case "Ends":
    case "Set out from":
    case "Hip top":
    case "Hip head":
      // What is chosen reads as it is.
      return "";
  }
}

const number = (value: number) => String(Number(value.toFixed(3)));

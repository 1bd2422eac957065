import type { Row } from "../../../functions/arguments/roofBlock.ts";
import type { WingRow } from "../../../functions/arguments/wingRows.ts";
import { slopeAngle } from "../../geometry/angle.ts";
import { lengthText } from "../../measure/lengthText.ts";
import type { Unit } from "../../measure/unit.ts";
import { hipsIn, valleysIn, type Frame } from "../../roof/frame/frame.ts";
import type { RoofSpec, Section, WingSpec } from "../../roof/frame/roofSpec.ts";
import { texts } from "../words/texts.ts";

/** How a row of the block was understood, in the roof's unit; with the frame, also what follows where the row is left empty. */
export function fieldReading(row: Row, spec: RoofSpec, frame: Frame | null): string {
  return READINGS[row]?.(spec, sayIn(spec.unit), frame) ?? "";
}

/** How a row of a wing was understood, its blank rows as what stands for them. */
export function wingReading(row: WingRow, wing: WingSpec, main: RoofSpec, frame: Frame | null): string {
  const { length, size } = sayIn(main.unit);
  const level = main.overhang * main.pitch;
  const endPitch = wing.endPitch ?? wing.pitch;
  switch (row) {
    case "From left corner":
      return typeof wing.from === "number" ? length(wing.from) : "";
    case "Out from wall":
      return length(wing.out);
    case "Span":
      return length(wing.span);
    case "Pitch":
      return pitchText(wing.pitch);
    case "End pitch":
      return wing.end === "hip" ? pitchText(endPitch) : "";
    case "Overhang":
      return length(wing.overhang ?? level / wing.pitch);
    case "End overhang":
      return length(wing.endOverhang ?? level / endPitch);
    case "Ridge":
      return size(wing.ridge);
    case "Long valley":
      return frame ? (longValley(frame, wing.letter) ?? texts.noLongValley) : "";
    default:
      return "";
  }
}

/** The side of a wing's valley that runs on to the main ridge; null where both end alike. */
export function longValley(frame: Frame, letter: string): "left" | "right" | null {
  return valleysIn(frame).find(({ wing, role }) => wing === letter && role === "supporting")?.side ?? null;
}

interface Say {
  length(value: number | null | undefined): string;
  /** Finer than a length of a roof. */
  small(value: number): string;
  size(size: Section | null): string;
}

function sayIn(unit: Unit): Say {
  // A size is read beside its name: the mark of its unit would only take room.
  const bare = (value: number) => small(value).replace(/"$/, "");
  const small = (value: number) => lengthText(value, unit, Math.abs(value) < 12 ? 64 : 16);
  return {
    length: (value) => (value === null || value === undefined ? "" : lengthText(value, unit)),
    small,
    size: (size) =>
      size === null
        ? texts.noRidge
        : unit === "mm"
          ? `${figure(size.thickness)} × ${figure(size.depth)}`
          : `${bare(size.thickness)} × ${bare(size.depth)}`,
  };
}

/** Rows that are left out are chosen from a list, and read as they are. */
const READINGS: Partial<Record<Row, (spec: RoofSpec, say: Say, frame: Frame | null) => string>> = {
  Span: ({ span }, { length }) => length(span),
  Length: ({ length: along }, { length }) => length(along),
  Pitch: ({ pitch }) => pitchText(pitch),
  "End pitch": ({ endPitch, pitch }) => pitchText(endPitch ?? pitch),
  Spacing: ({ spacing }, { length }) => length(spacing),
  Overhang: ({ overhang }, { length }) => length(overhang),
  "End overhang": ({ endOverhang }, { length }, frame) =>
    length(endOverhang ?? (frame && hipsIn(frame)[0]!.far.plane.overhang)),
  Rafter: ({ rafter }, { size }) => size(rafter),
  Hip: ({ hip }, { size }) => size(hip),
  Valley: ({ valley }, { size }) => size(valley),
  Ridge: ({ ridge }, { size }) => size(ridge),
  Seat: ({ seat }, { length }, frame) => length(seat ?? (frame && hipsIn(frame)[0]!.near.plane.seat)),
  Heel: ({ heel }, { length }, frame) => length(heel ?? frame?.heel),
  Correction: ({ correction }, { small }) => small(correction),
  "End correction": ({ endCorrection }, { small }) => small(endCorrection),
  Boards: ({ boards }, { length }) => texts.boardsUnderstood(boards.length, length(boards[0]), length(boards.at(-1))),
  Fascia: ({ fascia }, { size }) => (fascia ? size(fascia) : texts.none),
  "Sub-fascia": ({ subFascia }, { size }) => (subFascia ? size(subFascia) : texts.none),
  "End trim": ({ endTrim }, { small }) => small(endTrim),
  Waste: ({ waste }) => `${figure(waste)} %`,
  Spares: ({ spares }) => texts.pieces(spares),
};

const figure = (value: number) => String(Number(value.toFixed(3)));
const pitchText = (slope: number) => `${figure(slope * 12)} ${texts.units.pitch}, ${slopeAngle(slope).toFixed(2)}°`;

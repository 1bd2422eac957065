import type { Row } from "../../../functions/arguments/roofBlock.ts";
import { isNominal } from "../../measure/isNominal.ts";
import { nominalOf } from "../../measure/nominalOf.ts";
import { halfUp } from "../../measure/halfUp.ts";
import { readSize } from "../../measure/readSize.ts";
import { Failure } from "../../measure/result.ts";
import { sizeName } from "../../measure/sizeName.ts";
import { tapeText } from "../../measure/tapeText.ts";
import { MM_PER_INCH, type Unit } from "../../measure/unit.ts";
import type { WingRow } from "../../../functions/arguments/wingRows.ts";
import type { RoofSpec, Section, WingSpec } from "../../roof/frame/roofSpec.ts";
import { START_BOARDS, type Inputs, type WingInputs } from "./fields.ts";
import type { PaneState } from "./paneState.ts";

/** Chooses the unit, and turns what is typed into it where all of it can be read. */
export function changeUnit(state: PaneState, to: string): void {
  const { model } = state.report.value;
  const spec = model?.frame.spec;
  const inputs = { ...state.inputs.value, Unit: to };
  state.inputs.value = spec && (to === "in" || to === "mm") && to !== spec.unit ? inUnit(inputs, spec, to) : inputs;
}

/** Every length and size that is typed, in the other unit: to the millimeter, or the sixteenth. Empty fields stay empty. */
export function inUnit(inputs: Inputs, spec: RoofSpec, to: Unit): Inputs {
  const length = (value: number) => (to === "mm" ? String(halfUp(value * MM_PER_INCH)) : tapeText(value / MM_PER_INCH));
  const sizes = (section: Section | null) => (section ? sizeIn(section, to) : "none");
  const turned: Partial<Record<Row, string>> = {
    Span: length(spec.span),
    Length: length(spec.length),
    Spacing: length(spec.spacing),
    Overhang: length(spec.overhang),
    "End overhang": spec.endOverhang === null ? "" : spec.endOverhang === 0 ? "none" : length(spec.endOverhang),
    Seat: spec.seat === null ? "" : length(spec.seat),
    Heel: spec.heel === null ? "" : length(spec.heel),
    Correction: spec.correction === 0 ? "0" : length(spec.correction),
    "End correction": spec.endCorrection === 0 ? "0" : length(spec.endCorrection),
    "End trim": spec.endTrim === 0 ? "0" : length(spec.endTrim),
    Rafter: sizes(spec.rafter),
    Hip: sizes(spec.hip),
    Valley: sizes(spec.valley),
    Ridge: sizes(spec.ridge),
    Fascia: sizes(spec.fascia),
    "Sub-fascia": sizes(spec.subFascia),
    // Lengths on hand are not sold in the other unit: those that the pane starts with stand in.
    Boards: START_BOARDS[to],
  };
  const kept = Object.fromEntries(
    Object.entries(turned).filter(([row]) => inputs[row as Row].trim() !== ""),
  ) as Partial<Record<Row, string>>;
  return { ...inputs, ...kept, Unit: to, wings: inputs.wings.map((wing, i) => wingInUnit(wing, spec.wings[i]!)) };

  function wingInUnit(wing: WingInputs, { from, out, span, overhang, endOverhang, ridge }: WingSpec): WingInputs {
    const level = (value: number | null) => (value === null ? "" : value === 0 ? "none" : length(value));
    const own: Partial<WingInputs> = {
      "From left corner": typeof from === "number" ? length(from) : wing["From left corner"],
      "Out from wall": length(out),
      Span: length(span),
      Overhang: level(overhang),
      "End overhang": level(endOverhang),
      Ridge: sizes(ridge),
    };
    return {
      ...wing,
      ...Object.fromEntries(Object.entries(own).filter(([row]) => wing[row as WingRow].trim() !== "")),
    };
  }
}

/** A nominal size keeps its name in any unit; an actual one is measured anew. */
function sizeIn({ name, thickness, depth }: Section, to: Unit): string {
  const read = readSize(name);
  if (read instanceof Failure) return name;
  if (isNominal(read)) return read.name;
  if (to === "mm") return sizeName(halfUp(thickness * MM_PER_INCH), halfUp(depth * MM_PER_INCH), "mm");
  const nominal = nominalOf(read);
  return nominal
    ? sizeName(nominal.nominalThickness, nominal.nominalDepth, "nominal")
    : sizeName(sixteenth(thickness / MM_PER_INCH), sixteenth(depth / MM_PER_INCH), "in");
}

const sixteenth = (inches: number) => halfUp(inches * 16) / 16;

import { LETTERS } from "../../../functions/arguments/wingColumns.ts";
import { lengthText } from "../../measure/lengthText.ts";
import type { RoofSpec } from "../../roof/frame/roofSpec.ts";
import { texts } from "../words/texts.ts";
import { emptyWing, WING_FIELDS, type WingInputs } from "./fields.ts";
import type { PaneState } from "./paneState.ts";

/** The letter that the next wing gets: the first that is free; null where all are taken. */
export function nextLetter(wings: readonly WingInputs[]): string | null {
  return LETTERS.find((letter) => wings.every((wing) => wing.letter !== letter)) ?? null;
}

/** Adds a wing that the roof can be framed with, to be changed from there: half as wide as the main roof, near the middle of a free wall. */
export function addWing(state: PaneState): string | null {
  const inputs = state.inputs.value;
  const letter = nextLetter(inputs.wings);
  if (letter === null) return null;
  const wing = { ...emptyWing(letter), ...start(state.report.value.model?.frame.spec ?? null, inputs.wings) };
  const wings = [...inputs.wings, wing].sort((a, b) => (a.letter < b.letter ? -1 : 1));
  state.inputs.value = { ...inputs, wings };
  state.says.value = texts.wingAdded(letter);
  return letter;
}

export function removeWing(state: PaneState, letter: string): void {
  const inputs = state.inputs.value;
  state.inputs.value = { ...inputs, wings: inputs.wings.filter((wing) => wing.letter !== letter) };
  state.says.value = texts.wingRemoved(letter);
}

function start(spec: RoofSpec | null, wings: readonly WingInputs[]): Partial<WingInputs> {
  const words = Object.fromEntries(WING_FIELDS.map((field) => [field.row, field.start]));
  const wall = wings.some((wing) => wing.Wall.trim().toLowerCase() === "front") ? "back" : "front";
  if (!spec) return { ...words, Wall: wall };
  // Whole feet, or half meters.
  const whole = spec.unit === "mm" ? 500 : 12;
  const down = (value: number) => Math.max(whole, Math.floor(value / whole) * whole);
  const span = down(spec.span / 2);
  const text = (value: number) => lengthText(value, spec.unit);
  return {
    ...words,
    Wall: wall,
    // Left of the middle: there both valleys of a roof half as long again as wide would run into its king commons.
    "From left corner": text(down((spec.length - span) / 2 - whole)),
    "Out from wall": text(down(span / 2)),
    Span: text(span),
  };
}

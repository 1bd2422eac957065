import { lengthText } from "../../measure/lengthText.ts";
import type { RoofSpec } from "../../roof/frame/roofSpec.ts";
import { texts } from "../words/texts.ts";

/** A roof in a few words, so that nobody prints another: its span, its length and its pitch. */
export function roofName({ span, length, pitch, unit }: RoofSpec): string {
  const rise = Number((pitch * 12).toPrecision(6));
  return `${lengthText(span, unit)} x ${lengthText(length, unit)}, ${rise} ${texts.units.pitch}`;
}

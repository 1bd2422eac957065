import { lengthText } from "../../src/measure/lengthText.ts";
import type { Unit } from "../../src/measure/unit.ts";
import type { PlaneGroup } from "../../src/roof/tables/planeGroups.ts";
import type { TakeOff } from "../../src/roof/tables/takeOff.ts";

/** Lengths in groups: "4 of 14' 11 5/16\"". */
function groupedLengths(lengths: readonly number[], unit: Unit): string {
  const texts = lengths.map((length) => lengthText(length, unit));
  return [...new Set(texts)].map((text) => `${texts.filter((one) => one === text).length} of ${text}`).join(", ");
}

/** How the length of the hips comes about. */
export function hipsHow({ hips, brokenHips }: TakeOff, unit: Unit): string {
  const whole = hips.slice(0, hips.length - brokenHips);
  if (brokenHips === 0 && new Set(whole.map((one) => lengthText(one, unit))).size === 1)
    return `${whole.length} from apex to fascia, each ${lengthText(whole[0]!, unit)}`;
  const parts = [
    ...(whole.length > 0 ? [`from apex to fascia: ${groupedLengths(whole, unit)}`] : []),
    ...(brokenHips > 0 ? [`broken, from apex to crossing: ${groupedLengths(hips.slice(whole.length), unit)}`] : []),
  ];
  return parts.join("; ");
}

/** How the length of the valleys comes about. */
export const valleysHow = ({ valleys }: TakeOff, unit: Unit): string =>
  `from fascia to crossing: ${groupedLengths(valleys, unit)}; lining and flashing go by this`;

/** The eaves of the planes of one name: "main 2 x 26' 8\"", or where they differ each by itself. */
export function eavesOf({ side, faces }: PlaneGroup, unit: Unit): string {
  const texts = faces.map(({ eave }) => lengthText(eave, unit));
  const name = side.startsWith("Wing") ? side : side.toLowerCase();
  const alike = faces.every(({ eave }) => Math.abs(eave - faces[0]!.eave) < 1e-6);
  return alike ? `${name} ${texts.length} x ${texts[0]!}` : `${name} ${texts.join(" + ")}`;
}

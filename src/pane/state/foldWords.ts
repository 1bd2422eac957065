import { lookTexts } from "../words/lookTexts.ts";
import { FIELDS, inputAt, WING_FIELDS, type Field, type FoldName, type Inputs } from "./fields.ts";
import { columnReport, type Report } from "./report.ts";

/** One value of a folded group in words, and whether it differs from the default. */
export interface Said {
  readonly words: string;
  readonly own: boolean;
}

/** The fields of a fold. */
export function fieldsIn(fold: FoldName): readonly Field[] {
  return fold === "wing" ? WING_FIELDS.filter((one) => one.fold) : FIELDS.filter((one) => one.fold === fold);
}

/** What a folded group holds: what differs from the default first, then what a reader looks for anyway. */
export function foldWords(fold: FoldName, inputs: Inputs, report: Report, wing?: string): readonly Said[] {
  const { understood } = columnReport(report, wing);
  const said = fieldsIn(fold).flatMap(({ row, start, kind }): Said[] => {
    const value = inputAt(inputs, wing === undefined ? { row } : { row, wing }).trim();
    const own = value !== "" && value.toLowerCase() !== start.toLowerCase();
    const words = lookTexts.says[wing === undefined ? row : ""];
    const read = understood[row] || value;
    // A choice that is left out is the default, and says it.
    if (!own && (!words || (value === "" && read === "" && kind !== "choice"))) return [];
    return [{ own, words: words ? words(value || start, read) : `${row.toLowerCase()} ${read}` }];
  });
  return [...said.filter(({ own }) => own), ...said.filter(({ own }) => !own)];
}

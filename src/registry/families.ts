import type { WorksheetFunction } from "./worksheetFunction.ts";

/** The functions of one family, and its name as a heading. */
export interface Family {
  readonly name: string;
  readonly heading: string;
  readonly functions: readonly WorksheetFunction[];
}

/** The families in the order in which their functions come. */
export function families(functions: readonly WorksheetFunction[]): readonly Family[] {
  const names = [...new Set(functions.map(({ family }) => family))];
  return names.map((name) => ({
    name,
    heading: name[0]!.toUpperCase() + name.slice(1),
    functions: functions.filter(({ family }) => family === name),
  }));
}

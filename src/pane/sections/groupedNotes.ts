import type { Cell } from "../../registry/worksheetFunction.ts";

/** The notes of a table, each once with the pieces it belongs to: a column of long texts would make every row tall. */
export function groupedNotes(table: readonly (readonly Cell[])[]): { note: string; pieces: string[] }[] {
  const [headings, ...rows] = table as [readonly Cell[], ...(readonly Cell[])[]];
  const at = headings.indexOf("Note");
  const groups = new Map<string, string[]>();
  for (const row of rows)
    for (const note of String(row[at] ?? "").split("; "))
      if (note !== "") groups.set(note, [...(groups.get(note) ?? []), String(row[0])]);
  return [...groups].map(([note, pieces]) => ({ note, pieces }));
}

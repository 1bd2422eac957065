import { noteText } from "../../../functions/words/notes.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Piece } from "../../roof/frame/piece.ts";

/** The notes of some pieces, each once with the marks it belongs to: a column of long texts would make every row tall. */
export function groupedNotes(
  pieces: readonly Pick<Piece, "mark" | "notes">[],
  unit: Unit,
): { note: string; marks: string[] }[] {
  const groups = new Map<string, string[]>();
  for (const { mark, notes } of pieces)
    for (const note of notes.map((one) => noteText(one, unit))) groups.set(note, [...(groups.get(note) ?? []), mark]);
  return [...groups].map(([note, marks]) => ({ note, marks }));
}

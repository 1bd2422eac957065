import { workbookPath } from "./fileSheets.ts";
import { Parts } from "./parts.ts";

// What cells are read from; all else may be broken, or of a newer program.
const OF_BOOK = new Set(["worksheet", "sharedStrings", "styles", "theme", "sheetMetadata"]);

/** A file with its cells only: no drawing, comment, table or other part that cells do without. */
export function cellsOnly(bytes: Uint8Array): Uint8Array {
  const parts = new Parts(bytes);
  const before = parts.reached();
  const workbook = workbookPath(parts);
  const ids = (from: string, drop: (kind: string) => boolean) =>
    new Set(
      parts
        .relations(from)
        .filter(({ kind }) => drop(kind))
        .map(({ id }) => id),
    );
  for (const { kind, to } of parts.relations(workbook))
    if (kind === "worksheet" && to !== null && parts.has(to))
      parts.unrelate(
        to,
        ids(to, () => true),
      );
  parts.unrelate(
    workbook,
    ids(workbook, (kind) => !OF_BOOK.has(kind)),
  );
  parts.removeUnreached(before);
  return parts.bytes();
}

import type { HostCell } from "../../src/hosts/host.ts";

/** Cells as a host reads them, from plain contents; what starts with "=" is a formula that shows 0. */
export function cellsOf(rows: readonly (readonly (string | number)[])[]): HostCell[][] {
  return rows.map((row) =>
    row.map((content) =>
      typeof content === "string" && content.startsWith("=")
        ? { formula: content, value: 0, format: "General" }
        : { formula: null, value: content, format: "General" },
    ),
  );
}

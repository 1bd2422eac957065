/** A cell as it can be shown in a message: text in quotes, and never more than 40 characters of it. */
export function shown(cell: unknown): string {
  if (typeof cell === "string")
    return `"${Array.from(cell.slice(0, 80)).slice(0, 40).join("")}${cell.length > 40 ? "…" : ""}"`;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number" || typeof cell === "bigint") return String(cell);
  return Array.isArray(cell) ? "a range of cells" : "something that is neither number nor text";
}

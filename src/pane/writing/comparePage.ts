import { paperPage } from "../../drawing/canvas/paperPage.ts";
import { escaped } from "../../measure/escaped.ts";

/** A table as a printable page, black and white, that needs nothing else. */
export function comparePage(
  title: string,
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  notes: readonly string[],
): string {
  const cells = (tag: string, of: readonly string[]) => of.map((one) => `<${tag}>${escaped(one)}</${tag}>`).join("");
  const lines = rows.map((row) => `<tr>${cells("td", row)}</tr>`).join("");
  return paperPage(
    title,
    `body{color:#000;background:#fff;font:10pt/1.35 sans-serif;margin:0.4in}h1{font-size:14pt;margin:0 0 8pt;overflow-wrap:anywhere}
table{border-collapse:collapse;font-variant-numeric:tabular-nums}th,td{border-bottom:0.5pt solid #000;padding:3pt 8pt;text-align:right}
th:first-child,td:first-child{text-align:left}p{margin:6pt 0 0}`,
    `<h1>${escaped(title)}</h1><table><thead><tr>${cells("th", headings)}</tr></thead><tbody>${lines}</tbody></table>${notes.map((note) => `<p>${escaped(note)}</p>`).join("")}`,
  );
}

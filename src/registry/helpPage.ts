import { families } from "./families.ts";
import { formulaText } from "./formulaText.ts";
import { kindText, signature } from "./parameterText.ts";
import { escaped } from "../measure/escaped.ts";
import { plainPage } from "./plainPage.ts";
import { resultRows } from "./resultRows.ts";
import type { Example, WorksheetFunction } from "./worksheetFunction.ts";

/** The guide's page, which stands beside the help pages. */
export const GUIDE_PAGE = "guide.html";

/** Pages about the program, beside the help pages. */
const ABOUT = [
  ["support.html", "Support"],
  ["first-steps.html", "Twenty steps to try in Excel"],
  ["privacy.html", "Privacy"],
  ["terms.html", "Terms"],
] as const;

/** Where a function's help page stands, from the pages' root: `help/JACKLEN.html`. */
export function helpPath({ name }: Pick<WorksheetFunction, "name">): string {
  return `help/${name}.html`;
}

/** The help page of one function: plain HTML that needs nothing else, so that it shows offline. `when` says when a problem comes up. */
export function helpPage(definition: WorksheetFunction, when: (kind: string) => string): string {
  const { name, summary, parameters, returns, examples } = definition;
  const refuses = Object.keys(definition.refuses ?? {});
  const meanings = parameters.map(
    (parameter) =>
      `<dt><code>${escaped(parameter.name)}</code></dt><dd>${escaped(parameter.description)}<br>Written as ${escaped(kindText(parameter))}.</dd>`,
  );
  return plainPage(name, [
    `<nav><a href="index.html">All functions</a> <a href="${GUIDE_PAGE}">Terms and measurements</a></nav>`,
    `<h1>${escaped(name)}</h1>`,
    `<p>${escaped(summary)}</p>`,
    `<p><code>=${escaped(signature(definition))}</code></p>`,
    ...(meanings.length === 0 ? [] : [`<h2>Arguments</h2>`, `<dl>${meanings.join("")}</dl>`]),
    `<h2>Result</h2>`,
    `<p>Returns ${escaped(returns)}</p>`,
    `<h2>Examples</h2>`,
    ...examples.map((example) => worked(definition, example)),
    ...(refuses.length === 0
      ? []
      : [
          `<h2>When there is no result</h2>`,
          `<p>The cell shows an error, and its message says what to type instead, when:</p>`,
          `<ul>${refuses.map((kind) => `<li>${escaped(when(kind))}</li>`).join("")}</ul>`,
        ]),
    `<p class="caution">Geometry only: it sizes no member and proves no strength. Sizes, spans and bearing follow the local code and a licensed designer. Check the first cut against the building.</p>`,
  ]);
}

/** The list of all help pages, family by family. */
export function helpIndexPage(functions: readonly WorksheetFunction[]): string {
  return plainPage("All functions", [
    `<h1>All functions</h1>`,
    `<p><a href="${GUIDE_PAGE}">Terms and measurements</a>: a first jack schedule, what each word means, where to measure each length, every row of the roof block and every column of the tables, with drawings.</p>`,
    `<p>In a cell, begin with <code>=RAFTER.</code> and a name below: <code>=RAFTER.PITCHDEG(6)</code>. For a whole roof start with <a href="JACKTABLE.html">JACKTABLE</a>. Where a cell shows an error, select it: the pane says what to type instead.</p>`,
    `<nav>${ABOUT.map(([file, title]) => `<a href="${file}">${title}</a>`).join(" ")}</nav>`,
    ...families(functions).flatMap(({ heading, functions: own }) => [
      `<h2>${escaped(heading)}</h2>`,
      `<dl>${own.map(({ name, summary }) => `<dt><a href="${escaped(name)}.html">${escaped(name)}</a></dt><dd>${escaped(summary)}</dd>`).join("")}</dl>`,
    ]),
  ]);
}

function worked(definition: WorksheetFunction, example: Example): string {
  const rows = resultRows(example.result);
  const formula = escaped(formulaText(definition, example));
  const source =
    example.source === undefined ? "" : `<p class="source">Checked against: ${escaped(example.source)}</p>`;
  if (typeof example.result !== "object")
    return `<p><code>${formula}</code> gives <strong>${escaped(rows[0]![0]!)}</strong></p>${source}`;
  const cells = (row: readonly string[], tag: string) =>
    `<tr>${row.map((cell) => `<${tag}>${escaped(cell)}</${tag.split(" ")[0]!}>`).join("")}</tr>`;
  const [head, ...body] = rows;
  return `<p><code>${formula}</code> gives</p><div class="wide" tabindex="0" role="region" aria-label="Result of the example"><table><thead>${cells(head!, 'th scope="col"')}</thead><tbody>${body.map((row) => cells(row, "td")).join("")}</tbody></table></div>${source}`;
}

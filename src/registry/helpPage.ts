import { formulaText } from "./formulaText.ts";
import { kindText, signature } from "./parameterText.ts";
import { resultRows } from "./resultRows.ts";
import type { Example, WorksheetFunction } from "./worksheetFunction.ts";

/** Where a function's help page stands, from the pages' root: `help/JACKLEN.html`. */
export function helpPath({ name }: Pick<WorksheetFunction, "name">): string {
  return `help/${name}.html`;
}

/** The help page of one function: plain HTML that needs nothing else, so that it shows offline. */
export function helpPage(definition: WorksheetFunction): string {
  const { name, summary, parameters, returns, examples, refuses = [] } = definition;
  const meanings = parameters.map((parameter) => `<dt><code>${html(parameter.name)}</code></dt><dd>${html(parameter.description)}<br>Written as ${html(kindText(parameter))}.</dd>`);
  return page(name, [
    `<nav><a href="index.html">All functions</a></nav>`,
    `<h1>${html(name)}</h1>`,
    `<p>${html(summary)}</p>`,
    `<p><code>=${html(signature(definition))}</code></p>`,
    ...(meanings.length === 0 ? [] : [`<h2>Arguments</h2>`, `<dl>${meanings.join("")}</dl>`]),
    `<h2>Result</h2>`,
    `<p>Returns ${html(returns)}</p>`,
    `<h2>Examples</h2>`,
    ...examples.map((example) => worked(definition, example)),
    ...(refuses.length === 0 ? [] : [`<h2>When there is no result</h2>`, `<p>The cell shows an error, and its message says what to type instead, when:</p>`, `<ul>${refuses.map(({ when }) => `<li>${html(when)}</li>`).join("")}</ul>`]),
    `<p class="caution">Geometry only: it sizes no member and proves no strength. Sizes, spans and bearing follow the local code and a licensed designer. Check the first cut against the building.</p>`,
  ]);
}

/** The list of all help pages, family by family. */
export function helpIndexPage(functions: readonly WorksheetFunction[]): string {
  const families = [...new Set(functions.map(({ family }) => family))];
  return page("All functions", [
    `<h1>All functions</h1>`,
    ...families.flatMap((family) => [
      `<h2>${html(family[0]!.toUpperCase() + family.slice(1))}</h2>`,
      `<dl>${functions.filter((one) => one.family === family).map(({ name, summary }) => `<dt><a href="${html(name)}.html">${html(name)}</a></dt><dd>${html(summary)}</dd>`).join("")}</dl>`,
    ]),
  ]);
}

function worked(definition: WorksheetFunction, example: Example): string {
  const rows = resultRows(example.result);
  const formula = html(formulaText(definition, example));
  const source = example.source === undefined ? "" : `<p class="source">Checked against: ${html(example.source)}</p>`;
  if (typeof example.result !== "object") return `<p><code>${formula}</code> gives <strong>${html(rows[0]![0]!)}</strong></p>${source}`;
  const cells = (row: readonly string[], tag: string) => `<tr>${row.map((cell) => `<${tag}>${html(cell)}</${tag.split(" ")[0]!}>`).join("")}</tr>`;
  const [head, ...body] = rows;
  return `<p><code>${formula}</code> gives</p><div class="wide" tabindex="0" role="region" aria-label="Result of the example"><table><thead>${cells(head!, 'th scope="col"')}</thead><tbody>${body.map((row) => cells(row, "td")).join("")}</tbody></table></div>${source}`;
}

function page(title: string, body: readonly string[]): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${html(title)} - Longpoint</title>
<style>
:root { color-scheme: light dark; --ink: #1d1d1b; --paper: #fff; --line: #c9c8c4; --link: #0b57a4; --shade: #f1f0ec; }
@media (prefers-color-scheme: dark) { :root { --ink: #ececea; --paper: #1b1c1e; --line: #4a4b4f; --link: #8cc1ff; --shade: #2a2b2f; } }
body { margin: 0 auto; padding: 1rem; max-width: 48rem; font: 1rem/1.5 system-ui, sans-serif; color: var(--ink); background: var(--paper); overflow-wrap: anywhere; }
a { color: var(--link); }
code { padding: .1em .3em; background: var(--shade); font: .95em ui-monospace, monospace; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; overflow-wrap: normal; }
th, td { padding: .3rem .6rem; border: 1px solid var(--line); text-align: left; vertical-align: top; }
.source { margin-top: -.75rem; font-size: .9rem; }
.caution { margin-top: 2rem; padding-top: .75rem; border-top: 1px solid var(--line); }
</style>
</head>
<body>
<main>
${body.join("\n")}
</main>
</body>
</html>
`;
}

function html(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

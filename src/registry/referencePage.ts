import { families } from "./families.ts";
import { formulaText } from "./formulaText.ts";
import { kindText, signature } from "./parameterText.ts";
import { resultRows } from "./resultRows.ts";
import type { Example, WorksheetFunction } from "./worksheetFunction.ts";

/** The content of functions/REFERENCE.md: every function, family by family, as its definition describes it. */
export function referencePage(functions: readonly WorksheetFunction[], when: (kind: string) => string): string {
  const all = families(functions);
  return (
    [
      "# Functions",
      "<!-- Written by `npm run generate` from the definitions in this folder; change those. -->",
      "A first jack schedule, what each word means, where each length is measured, every row of the roof block and column of the tables: [the guide](GUIDE.md).",
      "Arguments in [brackets] may be left out. Results come back in the unit of the lengths that went in, angles in degrees. " +
        "Geometry only: sizes, spans and strength follow the local code and a licensed designer.",
      all
        .map(
          (family) =>
            `- ${family.name}: ${family.functions.map(({ name }) => `[${name}](#${name.toLowerCase()})`).join(", ")}`,
        )
        .join("\n"),
      ...all.flatMap((family) => [`## ${family.heading}`, ...family.functions.flatMap((one) => section(one, when))]),
    ].join("\n\n") + "\n"
  );
}

function section(definition: WorksheetFunction, when: (kind: string) => string): string[] {
  const { name, summary, parameters, returns, examples } = definition;
  const refuses = Object.keys(definition.refuses ?? {});
  return [
    `### ${name}`,
    `\`${signature(definition)}\``,
    plain(summary),
    parameters
      .map((parameter) => `- \`${parameter.name}\`: ${plain(parameter.description)} (${plain(kindText(parameter))})`)
      .join("\n"),
    `Returns ${plain(returns)}`,
    ...examples.flatMap((example) => worked(definition, example)),
    ...(refuses.length === 0 ? [] : [`Refuses, with a message, when ${plain(refuses.map(when).join("; or when "))}.`]),
  ];
}

function worked(definition: WorksheetFunction, example: Example): string[] {
  const { result, source } = example;
  const checked = source === undefined ? [] : [`Checked against: ${plain(source)}`];
  const formula = `    ${formulaText(definition, example)}`;
  const [head, ...rows] = resultRows(result);
  if (typeof result !== "object") return [`${formula}\n    ${head![0]}`, ...checked];
  const line = (row: readonly string[]) => `| ${row.map((cell) => plain(cell).replaceAll("|", "\\|")).join(" | ")} |`;
  return [formula, [line(head!), `|${" --- |".repeat(head!.length)}`, ...rows.map(line)].join("\n"), ...checked];
}

/** Text that Markdown shows as it is: signs that would start emphasis, a link or a tag are escaped. */
function plain(text: string): string {
  return text.replace(/[\\`*_<>[\]]/g, "\\$&");
}

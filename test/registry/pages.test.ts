import { describe, expect, it } from "vitest";
import { functions } from "../../functions/index.ts";
import { formulaText } from "../../src/registry/formulaText.ts";
import { helpIndexPage, helpPage, helpPath } from "../../src/registry/helpPage.ts";
import { referencePage } from "../../src/registry/referencePage.ts";
import { worksheetFunction, type Parameter, type ResultKind } from "../../src/registry/worksheetFunction.ts";

const length: Parameter<number> = {
  name: "length",
  description: 'A <b>length</b> such as 24" & more.',
  quantity: "length",
  read: Number,
};
const kerf: Parameter<number> = {
  name: "kerf",
  description: "Width of the saw's cut.",
  quantity: "length",
  optional: true,
  defaultText: "1/8",
  read: () => 0,
};
const table = worksheetFunction({
  name: "TABLE",
  family: "stock",
  summary: "Cuts a <length> into *pieces*.",
  parameters: [length, kerf],
  // An example of either kind.
  result: "table" as ResultKind,
  returns: "a row for each piece | none.",
  examples: [
    {
      cells: [`24"`],
      result: [
        ["Piece", "Length"],
        ["a|b", 12],
        ["<c>", 11.875],
      ],
      source: "by hand: 24 - 1/8",
    },
    { cells: [48, 0], result: 7 },
  ],
  refuses: { "too short": "length" },
  compute: () => 7,
});

const when = (kind: string) => (kind === "too short" ? "nothing is left" : kind);

describe("the reference page", () => {
  it("tells all that a definition holds", () => {
    const page = referencePage([table], when);
    for (const part of [
      "- stock: [TABLE](#table)",
      "## Stock\n",
      "### TABLE\n",
      "`RAFTER.TABLE(length, [kerf])`",
      "Cuts a \\<length\\> into \\*pieces\\*.",
      'such as 24" & more.',
      "1/8 when left out",
      "Returns a row for each piece | none.",
      '    =RAFTER.TABLE("24""")\n',
      "| Piece | Length |\n| --- | --- |\n| a\\|b | 12 |",
      "Checked against: by hand: 24 - 1/8",
      "    =RAFTER.TABLE(48, 0)\n    7",
      "nothing is left",
    ])
      expect(page).toContain(part);
  });

  it("names a source for the examples that have one, and for no other", () => {
    const sources = functions.flatMap(({ examples }) => examples.filter(({ source }) => source !== undefined));
    expect(referencePage(functions, when).split("Checked against: ")).toHaveLength(sources.length + 1);
    const examples = [
      { cells: [1], result: 1 },
      { cells: [2], result: 2 },
    ] as const;
    expect(referencePage([{ ...table, examples }], when)).toContain(
      "\n    =RAFTER.TABLE(1)\n    1\n\n    =RAFTER.TABLE(2)\n    2\n\nRefuses",
    );
  });

  it("has a section for every function", () => {
    const page = referencePage(functions, when);
    for (const definition of functions) {
      expect(page).toContain(`### ${definition.name}\n`);
      for (const example of definition.examples) expect(page).toContain(`    ${formulaText(definition, example)}\n`);
    }
  });
});

describe("a help page", () => {
  const text = (page: string) =>
    page
      .replace(/<style>[^]*<\/style>/, "")
      .replace(/<[^>]+>/g, " ")
      .replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
      .replace(/\s+/g, " ");

  it("tells all that a definition holds, and takes none of it for markup", () => {
    const page = helpPage(table, when);
    expect(page).not.toContain("<b>");
    for (const part of [
      "Cuts a <length> into *pieces*.",
      'A <b>length</b> such as 24" & more.',
      '=RAFTER.TABLE("24""")',
      "a|b 12",
      "<c> 11.875",
      "Checked against: by hand: 24 - 1/8",
      "gives 7",
      "nothing is left",
    ])
      expect(text(page)).toContain(part);
  });

  it.each(functions.map((definition) => [helpPath(definition), definition] as const))(
    "%s shows offline and to a screen reader",
    (path, definition) => {
      const page = helpPage(definition, when);
      expect(path).toMatch(/^help\/[A-Z0-9]+\.html$/);
      expect(page).toMatch(/^<!doctype html>\n<html lang="en">/);
      expect(page).not.toMatch(/https?:|<script|<link(?! rel="icon" href="data:,">)|<img|\ssrc=|@import|url\(/);
      expect(page.match(/<h1>/g)).toHaveLength(1);
      expect(page).toContain('<meta name="viewport"');
      const open = [
        ...page.matchAll(
          /<(\/?)(html|head|body|main|nav|h1|h2|p|div|table|thead|tbody|tr|th|td|ul|li|dl|dt|dd|code|strong|a|title|style)\b[^>]*>/g,
        ),
      ].reduce<string[]>((stack, [, closing, tag]) => {
        if (closing === "") return [...stack, tag!];
        expect(stack.at(-1)).toBe(tag);
        return stack.slice(0, -1);
      }, []);
      expect(open).toEqual([]);
    },
  );

  it("is listed on the index", () => {
    const page = helpIndexPage(functions);
    for (const { name, summary } of functions) {
      expect(page).toContain(`href="${name}.html"`);
      expect(text(page)).toContain(summary);
    }
  });
});

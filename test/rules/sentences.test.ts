import { readFileSync } from "node:fs";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { projectFiles } from "./projectFiles.ts";

/** What gives words for people. */
const WORDING = /^(messageOf|fieldText|noteText|notesText|frameText|placeText|wordingOf)$/;
const LOOKS =
  /^(startsWith|endsWith|includes|indexOf|lastIndexOf|search|match|matchAll|split|replace|replaceAll|test|exec)$/;

/** Files that may, and why. */
const allowed: Readonly<Record<string, string>> = {
  "src/hosts/terminal/answer.ts": "the parser of formulas, a package, says what is wrong in words only",
};

/** Where a file looks into a sentence: at its start, for a word, by a pattern, or parts it. */
function looks(text: string): string[] {
  const source = ts.createSourceFile("file.tsx", text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const worded = (node: ts.Node): boolean => {
    if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node) || ts.isNonNullExpression(node))
      return worded(node.expression);
    if (ts.isIdentifier(node)) return node.text === "message";
    if (ts.isPropertyAccessExpression(node)) return node.name.text === "message";
    return ts.isCallExpression(node) && ts.isIdentifier(node.expression) && WORDING.test(node.expression.text);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const { expression, name } = node.expression;
      const parts =
        name.text === "split" && node.arguments.some((one) => ts.isStringLiteral(one) && /^[.;:] $/.test(one.text));
      if (parts || (LOOKS.test(name.text) && [expression, ...node.arguments].some(worded))) found.push(node.getText());
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const files = ["src", "functions", "samples"]
  .flatMap((top) => projectFiles(top))
  .filter((file) => /\.tsx?$/.test(file));

describe("no code looks into a sentence", () => {
  it.each(files.filter((file) => allowed[file] === undefined))("%s", (file) => {
    expect(looks(readFileSync(file, "utf8"))).toEqual([]);
  });
  it.each(Object.keys(allowed))("%s still has to", (file) => {
    expect(looks(readFileSync(file, "utf8"))).not.toEqual([]);
  });

  it.each([
    "refusal.message.startsWith(`${row}: `);",
    "(error as Error).message.includes('x');",
    "message!.replace(/x/, '');",
    "/x/.test(messageOf(refusal));",
    "noteText(note, unit).indexOf('x');",
    "cell.split('; ');",
    "words.split('. ')[0];",
  ])("finds %s", (text) => expect(looks(text)).toHaveLength(1));

  it.each(["say(refusal.message);", "label.split(':');", "messageOf(refusal).length;", "cell.split(/[,;]/);"])(
    "takes %s",
    (text) => expect(looks(text)).toEqual([]),
  );
});

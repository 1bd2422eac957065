import ts from "typescript";

/** What only help, autocomplete and tests read of a function's definition. */
const DOCS = new Set(["summary", "returns"]);

/**
 * The source of a function file without the texts that Excel has from functions.json and the help pages: a tenth of the add-in's script after gzip.
 *
 * Of the examples one is left, which shows whether the result is a block of cells.
 */
export function withoutDocs(source: string): string {
  const file = ts.createSourceFile("functions.ts", source, ts.ScriptTarget.Latest, true);
  const edits: { from: number; to: number; text: string }[] = [];
  const replace = (node: ts.Node, text: string) => edits.push({ from: node.getStart(), to: node.getEnd(), text });
  const visit = (node: ts.Node): void => {
    if (!isDefinition(node)) return ts.forEachChild(node, visit);
    for (const property of node.arguments[0].properties) {
      if (!ts.isPropertyAssignment(property) || !ts.isIdentifier(property.name)) continue;
      if (DOCS.has(property.name.text)) replace(property.initializer, `""`);
      else if (property.name.text === "examples")
        replace(property.initializer, `[{ cells: [], result: ${shape(property.initializer)} }]`);
    }
  };
  visit(file);
  return edits.reverse().reduce((text, edit) => text.slice(0, edit.from) + edit.text + text.slice(edit.to), source);
}

function isDefinition(node: ts.Node): node is ts.CallExpression & { arguments: [ts.ObjectLiteralExpression] } {
  return (
    ts.isCallExpression(node) &&
    ts.isIdentifier(node.expression) &&
    node.expression.text === "worksheetFunction" &&
    ts.isObjectLiteralExpression(node.arguments[0]!)
  );
}

/** The first example's result: itself where it is a name, else as little as has its shape. */
function shape(examples: ts.Expression): string {
  const [first] = ts.isArrayLiteralExpression(examples) ? examples.elements : [];
  const result =
    first && ts.isObjectLiteralExpression(first)
      ? first.properties.find((one) => one.name && ts.isIdentifier(one.name) && one.name.text === "result")
      : undefined;
  if (!result || !ts.isPropertyAssignment(result))
    throw new Error(`No result can be seen in ${examples.getText().slice(0, 60)}`);
  if (ts.isArrayLiteralExpression(result.initializer)) return "[]";
  return ts.isLiteralExpression(result.initializer) || ts.isPrefixUnaryExpression(result.initializer)
    ? "0"
    : result.initializer.getText();
}

import ts from "typescript";

/** What only help, autocomplete and tests read of a function's definition, and what stands there instead. */
const DOCS: Readonly<Record<string, string>> = { summary: `""`, returns: `""`, examples: "[]" };

/** The source of a function file without the texts that Excel has from functions.json and the help pages: a tenth of the add-in's script after gzip. */
export function withoutDocs(source: string): string {
  const file = ts.createSourceFile("functions.ts", source, ts.ScriptTarget.Latest, true);
  const edits: { from: number; to: number; text: string }[] = [];
  const replace = (node: ts.Node, text: string) => edits.push({ from: node.getStart(), to: node.getEnd(), text });
  const visit = (node: ts.Node): void => {
    if (!isDefinition(node)) return ts.forEachChild(node, visit);
    for (const property of node.arguments[0].properties) {
      if (!ts.isPropertyAssignment(property) || !ts.isIdentifier(property.name)) continue;
      const instead = DOCS[property.name.text];
      if (instead !== undefined) replace(property.initializer, instead);
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

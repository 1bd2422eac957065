import type { Injector } from "@univerjs/core";
import { ErrorType, LexerNode, LexerTreeBuilder, OPERATOR_TOKEN_SET } from "@univerjs/engine-formula";

/** How deep a formula may go. The built page calculates 3,000 and fails at 4,000 (Chromium). */
const DEEPEST = 2_500;

/**
 * Makes a formula that goes too deep an error in its own cell.
 *
 * In 0.25.1 reading it overflows the stack: an uncaught error, and nothing is calculated any more. A chain of operators goes as deep as it is long.
 */
export function boundedFormulas(injector: Injector, tooDeep: (formula: string) => void): void {
  const lexer = injector.get(LexerTreeBuilder);
  const build = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, ...rest) => {
    try {
      const tree = build(formula, ...rest);
      if (!(tree instanceof LexerNode) || depthOf(tree) <= DEEPEST) return tree;
    } catch (fault) {
      if (!(fault instanceof RangeError)) throw fault;
    }
    tooDeep(formula);
    return ErrorType.VALUE;
  };
}

/** Without recursion, or it would overflow itself. */
function depthOf(root: LexerNode): number {
  let deepest = 0;
  const open: [LexerNode, number][] = [[root, 1]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [node, depth] = next;
    const children = node.getChildren();
    const operators = children.filter((child) => typeof child === "string" && OPERATOR_TOKEN_SET.has(child.trim()));
    const below = depth + 1 + operators.length;
    deepest = Math.max(deepest, below);
    if (deepest > DEEPEST) return deepest;
    for (const child of children) if (child instanceof LexerNode) open.push([child, below]);
  }
  return deepest;
}

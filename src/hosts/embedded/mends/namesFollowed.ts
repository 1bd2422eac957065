import type { Injector } from "@univerjs/core";
import type { ISequenceNode } from "@univerjs/engine-formula";
import { LexerTreeBuilder } from "@univerjs/engine-formula";

/** The engine's reader of formulas, where it puts names in. */
interface Lexer {
  getSequenceNode(read: unknown): readonly (string | ISequenceNode)[];
  _handleDefinedName(
    read: unknown,
    known: Known,
  ): { readonly hasDefinedName: boolean; readonly definedNames: string[] };
  _simpleCheckDefinedName(formula: string, known: Known): boolean;
}

interface Known {
  readonly unitId?: string | null;
  getValueByName(unitId: string, name: string): { readonly name: string } | null;
  getDirtyDefinedNameMap(): Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>;
}

/**
 * Has a formula calculated again when a name in it comes to stand for other cells.
 *
 * In 0.25.1 a formula notes only the names inside its names: =SUM(Block) kept reading the cells that Block stood for at first, though the
 * name had grown by a row; and one that spells the name with other capitals is not found either.
 */
export function namesFollowed(injector: Injector): void {
  const lexer = injector.get(LexerTreeBuilder) as unknown as Lexer;
  const handle = lexer._handleDefinedName.bind(lexer);
  lexer._handleDefinedName = (read, known) => {
    const result = handle(read, known);
    const { unitId } = known;
    if (!result.hasDefinedName || unitId === undefined || unitId === null) return result;
    for (const part of lexer.getSequenceNode(read)) {
      const its = typeof part === "string" ? null : known.getValueByName(unitId, part.token.split("!").at(-1)!.trim());
      if (its && !result.definedNames.includes(its.name)) result.definedNames.push(its.name);
    }
    return result;
  };
  lexer._simpleCheckDefinedName = (formula, known) => {
    const folded = formula.toLowerCase();
    const changed = Object.keys(known.getDirtyDefinedNameMap()[known.unitId ?? ""] ?? {});
    return changed.some((name) => folded.includes(name.toLowerCase()));
  };
}

import type { Injector } from "@univerjs/core";
import type { ISequenceNode } from "@univerjs/engine-formula";
import { IDefinedNamesService, LexerTreeBuilder } from "@univerjs/engine-formula";

/** The engine's reader of formulas, where it puts names in. */
interface Lexer {
  getSequenceNode(read: unknown): readonly (string | ISequenceNode)[];
  _handleDefinedName(read: unknown, known: Known): { hasDefinedName: boolean; readonly definedNames: string[] };
  _simpleCheckDefinedName(formula: string, known: Known): boolean;
}

interface Known {
  readonly unitId?: string | null;
  getValueByName(unitId: string, name: string): { readonly name: string } | null;
  getDirtyDefinedNameMap(): Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>;
}

// What may become a name.
const NAME = /^(?!true$|false$)[\p{L}_][\p{L}\p{N}_.]*$/iu;

/**
 * Has a formula calculated again when a name in it comes to stand for other cells.
 *
 * In 0.25.1 a formula notes only the names inside its names: =SUM(Block) kept reading the cells that Block stood for at first, though the
 * name had grown by a row; one that spells the name with other capitals is not found either; and one that was calculated before there was
 * such a name stays #NAME? for good.
 */
export function namesFollowed(injector: Injector): void {
  const lexer = injector.get(LexerTreeBuilder) as unknown as Lexer;
  // Where there is no name yet, formulas are not looked through for any.
  injector.get(IDefinedNamesService).getAllDefinedNamesIsEmpty = () => false;
  const handle = lexer._handleDefinedName.bind(lexer);
  lexer._handleDefinedName = (read, known) => {
    const result = handle(read, known);
    const { unitId } = known;
    if (unitId === undefined || unitId === null) return result;
    const parts = lexer.getSequenceNode(read);
    parts.forEach((part, i) => {
      if (typeof part === "string") return;
      const token = part.token.split("!").at(-1)!.trim();
      const its =
        known.getValueByName(unitId, token)?.name ?? (parts[i + 1] === "(" || !NAME.test(token) ? null : token);
      if (its === null) return;
      if (!result.definedNames.includes(its)) result.definedNames.push(its);
      result.hasDefinedName = true;
    });
    return result;
  };
  lexer._simpleCheckDefinedName = (formula, known) => {
    const folded = formula.toLowerCase();
    const changed = Object.keys(known.getDirtyDefinedNameMap()[known.unitId ?? ""] ?? {});
    return changed.some((name) => folded.includes(name.toLowerCase()));
  };
}

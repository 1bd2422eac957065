import type { Injector } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";

/** One character of a formula, as the engine's reader notes it, with what has been read of its part so far. */
interface Read {
  readonly segment: string;
  readonly currentString: string;
  readonly cur: number;
}

/**
 * Keeps a quote inside a text ("48""") when a formula is cut into its parts.
 *
 * In 0.25.1 the reader passes over the second of two quotes without a note of it. So the parts lose it, and all that stands behind it is
 * off by one: a formula was stored otherwise than typed, and damaged when a row came in above it, when it was filled, copied or held a name.
 * Whoever cuts a formula goes through here.
 */
export function wholeQuotes(injector: Injector): void {
  const lexer = injector.get(LexerTreeBuilder) as unknown as { getSequenceNode(read: readonly Read[]): unknown };
  const cut = lexer.getSequenceNode.bind(lexer);
  lexer.getSequenceNode = (read) => cut(withEveryQuote(read));
}

function withEveryQuote(read: readonly Read[]): readonly Read[] {
  if (!read.some((_, i) => skipsQuote(read, i))) return read;
  const whole: Read[] = [];
  let part = "";
  read.forEach((one, i) => {
    if (one.segment === "") part = "";
    else {
      if (skipsQuote(read, i)) {
        part += '"';
        whole.push({ ...one, segment: part, cur: one.cur - 1 });
      }
      const goesOn = one.segment.length === (read[i - 1]?.segment.length ?? 0) + 1;
      part = goesOn ? part + one.currentString : one.segment;
    }
    whole.push({ ...one, segment: part });
  });
  return whole;
}

/** The reader came to this quote by a step of two. */
function skipsQuote(read: readonly Read[], i: number): boolean {
  return read[i]!.currentString === '"' && read[i]!.cur - (read[i - 1]?.cur ?? -1) === 2;
}

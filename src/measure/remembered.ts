import { LimitedMap } from "./limitedMap.ts";

/** A sheet's texts are few and short; longer ones are read anew each time. */
const KEPT = 2000;
const LONGEST = 64;

/**
 * A reader of text that reads each text once and keeps what it came to, for the newest few thousand.
 *
 * A sheet asks for the same "6/12" and "1 1/2\"" at every recalculation. What is kept must not be changed by whoever gets it.
 *
 * @example
 * remembered((text) => [text.length])("6/12") // => [4]
 */
export function remembered<T>(read: (text: string) => T): (text: string) => T {
  const known = new LimitedMap<string, T>(KEPT);
  return (text) => {
    // Even to look a long text up takes its whole length.
    if (text.length > LONGEST) return read(text);
    const before = known.get(text);
    if (before !== undefined) return before;
    const value = read(text);
    known.set(text, value);
    return value;
  };
}

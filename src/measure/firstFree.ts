/**
 * The first of some names that nobody has; case does not tell names apart.
 *
 * @param nth the names to try, from the first on.
 * @example
 * firstFree(["Roof", "roof 2"], (n) => (n === 1 ? "Roof" : `Roof ${n}`)) // => "Roof 3"
 */
export function firstFree(taken: readonly string[], nth: (n: number) => string): string {
  const there = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n++) {
    const name = nth(n);
    if (!there.has(name.toLowerCase())) return name;
  }
}

/** The wished name, or the first of "name 2", "name 3" ... that no sheet has; case does not tell sheets apart. */
export function freeSheetName(wish: string, taken: readonly string[]): string {
  const there = new Set(taken.map((name) => name.toLowerCase()));
  for (let n = 1; ; n++) {
    const name = n === 1 ? wish : `${wish} ${n}`;
    if (!there.has(name.toLowerCase())) return name;
  }
}

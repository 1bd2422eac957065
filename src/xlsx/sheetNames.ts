// Most characters of a sheet's name.
const MOST_NAME = 31;

/** The sheets' names as a workbook may have them: none empty or too long, and none twice, capitals or not. */
export function sheetNames(names: readonly string[], left: Set<string>): string[] {
  const taken = new Set<string>();
  return names.map((name, i) => {
    const wish = name.trim() === "" ? `Sheet${i + 1}` : name.slice(0, MOST_NAME);
    let free = wish;
    for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${wish.slice(0, MOST_NAME - 4)} ${n}`;
    taken.add(free.toLowerCase());
    if (free !== name) left.add(`the name "${name}" of a sheet (it is ${free} now)`);
    return free;
  });
}

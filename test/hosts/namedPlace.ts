/** "=Bid!$A$5:$B$9" as a place; undefined for any other formula. */
export function namedPlace(formula: string) {
  const found = /^=(?:'((?:[^']|'')+)'|(\w+))!\$([A-Z]+)\$(\d+)(?::\$([A-Z]+)\$(\d+))?$/.exec(formula);
  if (!found) return undefined;
  const [, quoted, plain, left, top, right = left, bottom = top] = found;
  const column = (letters: string) => [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const [row, from] = [Number(top) - 1, column(left!)];
  return {
    sheet: quoted?.replaceAll("''", "'") ?? plain!,
    row,
    column: from,
    rows: Number(bottom) - row,
    columns: column(right!) - from + 1,
  };
}

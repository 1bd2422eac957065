/** Edges of a block, the last row and column included. */
export interface Edges {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** How far from its start a block is followed: a list of many thousand rows is no roof, and looking it through would hold up the page. */
export const REACH = { rows: 1_000, columns: 200 };

/**
 * The filled block around some cells: it grows by a row or column as long as anything is filled there, corners included.
 *
 * Only cells that are filled and reached are part of it, so empty rows and columns of the start fall away unless it is a single cell.
 */
export function blockAround(start: Edges, isFilled: (row: number, column: number) => boolean): Edges {
  let { top, left, bottom, right } = start;
  const rowBeside = lineBeside((row, column) => isFilled(row, column));
  const columnBeside = lineBeside((column, row) => isFilled(row, column));
  const [above, below] = [rowBeside(), rowBeside()];
  const [before, behind] = [columnBeside(), columnBeside()];
  for (let grown = true; grown;) {
    grown = false;
    if (top > Math.max(0, start.top - REACH.rows) && above(top - 1, left - 1, right + 1))
      [top, grown] = [top - 1, true];
    if (bottom < start.bottom + REACH.rows && below(bottom + 1, left - 1, right + 1))
      [bottom, grown] = [bottom + 1, true];
    if (left > Math.max(0, start.left - REACH.columns) && before(left - 1, top - 1, bottom + 1))
      [left, grown] = [left - 1, true];
    if (right < start.right + REACH.columns && behind(right + 1, top - 1, bottom + 1))
      [right, grown] = [right + 1, true];
  }
  // An empty start cell at the block's edge is not part of what the user sees as the block.
  const any = (fromRow: number, toRow: number, fromColumn: number, toColumn: number) => {
    for (let row = fromRow; row <= toRow; row++)
      for (let column = fromColumn; column <= toColumn; column++) if (isFilled(row, column)) return true;
    return false;
  };
  while (top < bottom && !any(top, top, left, right)) top++;
  while (bottom > top && !any(bottom, bottom, left, right)) bottom--;
  while (left < right && !any(top, bottom, left, left)) left++;
  while (right > left && !any(top, bottom, right, right)) right--;
  return { top, left, bottom, right };
}

/** Whether anything is filled in the line beside a block. What was seen empty is not looked at again while the block grows along it. */
function lineBeside(isFilled: (line: number, place: number) => boolean) {
  return () => {
    let seen = { line: -1, from: 0, to: -1 };
    return (line: number, start: number, to: number): boolean => {
      const from = Math.max(0, start);
      if (seen.line !== line) seen = { line, from, to: from - 1 };
      for (let place = from; place <= to; place++) {
        if (place === seen.from && seen.to >= place) place = seen.to + 1;
        if (place <= to && isFilled(line, place)) return true;
      }
      seen = { line, from: Math.min(from, seen.from), to: Math.max(to, seen.to) };
      return false;
    };
  };
}

/** Edges of a block, the last row and column included. */
export interface Edges {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/**
 * The filled block around some cells: it grows by a row or column as long as anything is filled there, corners included.
 *
 * Only cells that are filled and reached are part of it, so empty rows and columns of the start fall away unless it is a single cell.
 */
export function blockAround(start: Edges, isFilled: (row: number, column: number) => boolean): Edges {
  let { top, left, bottom, right } = start;
  const any = (fromRow: number, toRow: number, fromColumn: number, toColumn: number) => {
    for (let row = Math.max(0, fromRow); row <= toRow; row++)
      for (let column = Math.max(0, fromColumn); column <= toColumn; column++) if (isFilled(row, column)) return true;
    return false;
  };
  for (let grown = true; grown;) {
    grown = false;
    if (top > 0 && any(top - 1, top - 1, left - 1, right + 1)) [top, grown] = [top - 1, true];
    if (any(bottom + 1, bottom + 1, left - 1, right + 1)) [bottom, grown] = [bottom + 1, true];
    if (left > 0 && any(top - 1, bottom + 1, left - 1, left - 1)) [left, grown] = [left - 1, true];
    if (any(top - 1, bottom + 1, right + 1, right + 1)) [right, grown] = [right + 1, true];
  }
  // An empty start cell at the block's edge is not part of what the user sees as the block.
  while (top < bottom && !any(top, top, left, right)) top++;
  while (bottom > top && !any(bottom, bottom, left, right)) bottom--;
  while (left < right && !any(top, bottom, left, left)) left++;
  while (right > left && !any(top, bottom, right, right)) right--;
  return { top, left, bottom, right };
}

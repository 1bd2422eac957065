/**
 * A piece that is joined, part by part, each under a name of its own; without joints it is one part under the piece's name.
 *
 * @param joints from the piece's first end.
 *
 * @example
 * pieceParts("R", 300, [180]) // => [{ name: "R 1 of 2", length: 180 }, { name: "R 2 of 2", length: 120 }]
 * pieceParts("R", 180, []) // => [{ name: "R", length: 180 }]
 */
export function pieceParts(
  name: string,
  length: number,
  joints: readonly number[],
): { readonly name: string; readonly length: number }[] {
  const stops = [0, ...joints, length];
  return stops
    .slice(1)
    .map((to, i) => ({
      name: joints.length === 0 ? name : `${name} ${i + 1} of ${joints.length + 1}`,
      length: to - stops[i]!,
    }));
}

/**
 * The piece that a part is of; what is no part is a piece itself.
 *
 * @example
 * wholePiece("R 1 of 2") // => "R"
 * wholePiece("C spare") // => "C spare"
 */
export function wholePiece(name: string): string {
  return name.replace(/ \d+ of \d+$/, "");
}

/** Draws one way after another until a drawing will do, and gives that, or the last: drawing is slow, and mostly the first will do. */
export function firstDrawn<Way, Drawn>(
  ways: readonly Way[],
  draw: (way: Way) => Drawn,
  willDo: (drawn: Drawn) => boolean,
): Drawn {
  const [first, ...others] = ways as readonly [Way, ...Way[]];
  const drawn = draw(first);
  return others.length === 0 || willDo(drawn) ? drawn : firstDrawn(others, draw, willDo);
}

import { drawnSize, drawnTexts, type DrawnText } from "./readDrawing.ts";

const touch = (a: DrawnText, b: DrawnText) =>
  a.left < b.right - 0.01 && b.left < a.right - 0.01 && a.top < b.bottom - 0.01 && b.top < a.bottom - 0.01;

/** What a text of a drawing has against its place, in words. */
export function faults(svg: string): string[] {
  const { width, height } = drawnSize(svg);
  const texts = drawnTexts(svg);
  return texts.flatMap((one, i) => [
    ...texts
      .slice(i + 1)
      .filter((other) => touch(one, other))
      .map((other) => `"${one.text}" on "${other.text}"`),
    ...(one.left < -0.01 || one.right > width + 0.01 || one.top < -0.01 || one.bottom > height + 0.01
      ? [`"${one.text}" leaves the sheet`]
      : []),
  ]);
}

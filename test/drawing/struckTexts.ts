import { drawnBackings, drawnSegments, drawnTexts, within, type DrawnText } from "./readDrawing.ts";

/** In pixels: a line this far inside a text's room touches no letter yet. */
const INSIDE = 1;

/** The texts of a drawing that a line runs through, and which of them have a backing that breaks all lines off. */
export function struckTexts(svg: string): { text: string; backed: boolean }[] {
  const segments = drawnSegments(svg);
  const backings = drawnBackings(svg);
  const inner = ({ left, top, right, bottom }: DrawnText) => ({
    left: left + INSIDE,
    top: top + INSIDE,
    right: right - INSIDE,
    bottom: bottom - INSIDE,
  });
  return drawnTexts(svg)
    .filter((text) => segments.some(([a, b]) => within(a, b, inner(text)) !== null))
    .map((text) => ({
      text: text.text,
      backed: backings.some(
        (box) =>
          box.left <= text.left &&
          box.right >= text.right &&
          box.top <= text.top + INSIDE &&
          box.bottom >= text.bottom - INSIDE,
      ),
    }));
}

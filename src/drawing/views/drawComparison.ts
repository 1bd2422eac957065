import { escaped } from "../../measure/escaped.ts";
import { textWidth } from "../canvas/textWidth.ts";
import { THEMES } from "../canvas/theme.ts";

type Grid = readonly (readonly (string | number | boolean)[])[];

const SIZE = 12;
const BAR = 14;
const GAP = 8;

/**
 * A grid of one figure over pitches (rows) and spacings (columns) as bars from 0, each with its pitch, spacing and figure beside it.
 *
 * A cell that is no number says in words why there is none, and has no bar.
 */
export function drawComparison(
  grid: Grid,
  {
    width,
    title,
    figure,
    theme = "screen",
  }: { width: number; title: string; figure: (cell: string | number | boolean) => string; theme?: keyof typeof THEMES },
): string {
  const { ink, accent } = THEMES[theme];
  const [heads, ...rows] = grid as [Grid[number], ...Grid];
  const bars = rows.flatMap(([pitch, ...cells]) =>
    cells.map((cell, j) => ({ name: `${pitch} @ ${heads[j + 1]}`, cell, first: j === 0 })),
  );
  const numbers = bars.flatMap(({ cell }) => (typeof cell === "number" ? [cell] : []));
  const most = Math.max(0, ...numbers);
  const left = Math.max(0, ...bars.map(({ name }) => textWidth(name, SIZE))) + 8;
  const right = Math.max(0, ...numbers.map((value) => textWidth(figure(value), SIZE))) + 6;
  const room = Math.max(10, width - left - right);
  let y = 0;
  const parts = bars.map(({ name, cell, first }) => {
    y += BAR + (first ? GAP : 3);
    const base = y - 3;
    const label = `<text x="${left - 8}" y="${base}" text-anchor="end" style="fill:${ink}">${escaped(name)}</text>`;
    if (typeof cell !== "number")
      return `${label}<text x="${left}" y="${base}" style="fill:${ink}">${escaped(fitting(String(cell), width - left))}</text>`;
    const long = most > 0 ? Math.max(0, (cell / most) * room) : 0;
    return `${label}<rect x="${left}" y="${y - BAR}" width="${long.toFixed(2)}" height="${BAR}" style="fill:${accent}"/><text x="${(left + long + 4).toFixed(2)}" y="${base}" style="fill:${ink}">${escaped(figure(cell))}</text>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${width}" height="${y + 4}" viewBox="0 0 ${width} ${y + 4}" font-size="${SIZE}" font-family="system-ui,sans-serif"><title>${escaped(title)}</title>${parts.join("")}</svg>`;
}

/** As much of a text as fits, with "…" where it is cut. */
function fitting(text: string, room: number): string {
  if (textWidth(text, SIZE) <= room) return text;
  let end = text.length;
  while (end > 0 && textWidth(`${text.slice(0, end)}…`, SIZE) > room) end--;
  return `${text.slice(0, end)}…`;
}

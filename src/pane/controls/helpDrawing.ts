import type { BlockRow } from "../../../functions/arguments/roofBlock.ts";

/** Line work of a small drawing: what is there, and what is meant. */
interface Lines {
  readonly base: string;
  readonly mark: string;
}

const PLAN = "M12 12H148V88H12ZM12 12 50 50 12 88M148 12 110 50 148 88M50 50H110";
const GABLE = "M12 12H148V88H12ZM12 12 50 50 12 88M50 50H148";
// Plate, wall and a rafter with tail, seat and plumb head.
const SECTION = "M20 75 150 10V30L62 74H50V80L20 95ZM50 74H64V82H50ZM52 82V99M62 82V99";
const CORNER = "M12 8V92M12 92H156M12 92 96 8M40 92V64M68 92V36M96 92V8M12 64H40M12 36H68M12 8H156";
// A jack seen from above, its head cut along the hip.
const JACK = "M8 36H112L136 60H8ZM96 20 152 76";

/** A dimension: a line with a tick across each end. */
function dim(x1: number, y1: number, x2: number, y2: number): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [nx, ny] = [((y1 - y2) / length) * 4, ((x2 - x1) / length) * 4].map((n) => Math.round(n * 10) / 10) as [
    number,
    number,
  ];
  const tick = (x: number, y: number) => `M${x - nx} ${y - ny} ${x + nx} ${y + ny}`;
  return `M${x1} ${y1} ${x2} ${y2}${tick(x1, y1)}${tick(x2, y2)}`;
}

const DRAWINGS: Partial<Record<BlockRow, Lines>> = {
  Span: { base: PLAN, mark: dim(80, 12, 80, 88) },
  Length: { base: PLAN, mark: dim(12, 66, 148, 66) },
  Pitch: { base: SECTION, mark: "M80 45H140V15" },
  "End pitch": { base: PLAN, mark: "M12 12 50 50 12 88ZM148 12 110 50 148 88Z" },
  Ends: { base: GABLE, mark: "M148 12V88" },
  Spacing: { base: CORNER, mark: dim(40, 97, 68, 97) },
  Overhang: { base: SECTION, mark: `${dim(20, 52, 50, 52)}M20 58V72M50 58V72` },
  "End overhang": { base: SECTION, mark: `${dim(20, 52, 50, 52)}M20 58V72M50 58V72` },
  Rafter: { base: PLAN, mark: "M62 12V88M80 12V88M98 12V88M30 12V30M30 88V70M130 12V30M130 88V70" },
  Hip: { base: PLAN, mark: "M12 12 50 50 12 88M148 12 110 50 148 88" },
  Ridge: { base: PLAN, mark: "M50 50H110" },
  Seat: { base: SECTION, mark: dim(50, 74, 62, 74) },
  Heel: { base: SECTION, mark: dim(50, 60, 50, 74) },
  "Set out from": { base: CORNER, mark: "M96 92V8M12 92m-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0" },
  "Hip top": { base: "M10 66 80 26 150 66M72 32H88V92H72Z", mark: "M72 32H88M80 26V32" },
  "Hip head": {
    base: PLAN,
    mark: "M50 50m-9 0a9 9 0 1 0 18 0a9 9 0 1 0-18 0M110 50m-9 0a9 9 0 1 0 18 0a9 9 0 1 0-18 0",
  },
  Correction: { base: JACK, mark: `${dim(136, 72, 150, 72)}M136 60V68` },
  "End correction": { base: JACK, mark: `${dim(136, 72, 150, 72)}M136 60V68` },
};

/** A small drawing that shows where a row is measured, as SVG; null for rows that are measured nowhere. */
export function helpDrawing(row: BlockRow): string | null {
  const lines = DRAWINGS[row];
  return lines
    ? `<svg viewBox="0 0 160 104" width="120" height="78" aria-hidden="true" focusable="false"><path class="lp-base" d="${lines.base}"/><path class="lp-mark" d="${lines.mark}"/></svg>`
    : null;
}

import type { CellLayout } from "./host.ts";

/** How a style of a plan looks in a sheet. Sizes in points, colors as #rrggbb; what is not named stays as it is. */
export interface CellStyle {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly color?: string;
  readonly fill?: string;
}

/** The looks that both hosts give to a plan's styles. Text keeps at least 4.5:1 contrast on its fill. */
export const CELL_STYLES: Readonly<Record<NonNullable<CellLayout["style"]>, CellStyle>> = {
  title: { bold: true, size: 14 },
  heading: { bold: true, fill: "#e4ebf1" },
  label: { color: "#3b4754" },
  input: { fill: "#fdf6dd" },
  note: { italic: true, color: "#5c6975" },
};

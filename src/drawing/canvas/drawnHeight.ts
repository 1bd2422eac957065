/** The height that a drawing (SVG) says of itself, in pixels. */
export const drawnHeight = (svg: string): number => Number(/ height="([\d.]+)"/.exec(svg)?.[1] ?? 0);

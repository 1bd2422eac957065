const MARGIN = 12;

/** The same colors as the help pages have, light and dark, on a ground of the drawing's own: it reads on any page. */
const STYLE = `<style>
svg{color-scheme:light dark;--drawing-ink:#1d1d1b;--drawing-faint:#63625e;--drawing-accent:#0b57a4;--drawing-paper:#fff;--drawing-wood:#f1f0ec}
@media(prefers-color-scheme:dark){svg{--drawing-ink:#ececea;--drawing-faint:#a5a5a3;--drawing-accent:#8cc1ff;--drawing-paper:#1b1c1e;--drawing-wood:#2a2b2f}}
</style>`;

/** A drawing as a file that stands alone: its colors, a ground and a margin come with it. */
export function standaloneSvg(drawing: string): string {
  const [root, width, height] = /^<svg [^>]* width="([\d.]+)" height="([\d.]+)"[^>]*>/.exec(drawing)!;
  const [wide, high] = [Number(width) + 2 * MARGIN, Number(height) + 2 * MARGIN];
  const opened = root.replace(
    /viewBox="[^"]*" width="[^"]*" height="[^"]*"/,
    `viewBox="${-MARGIN} ${-MARGIN} ${wide} ${high}" width="${wide}" height="${high}"`,
  );
  return `${opened}${STYLE}<rect x="${-MARGIN}" y="${-MARGIN}" width="${wide}" height="${high}" style="fill:var(--drawing-paper)"/>${drawing.slice(root.length)}\n`;
}

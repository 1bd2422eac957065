import { address } from "../../hosts/address.ts";
import type { Area, BlockLayout, Host } from "../../hosts/host.ts";

/** Where the formulas of a sheet are looked for. */
const LOOKED_AT = { rows: 400, columns: 100 };

/** The cells whose formulas name a block as it was, with formulas that name it as it is: a table written before a wing came must read it. */
export async function grownFormulas(host: Host, from: Area, to: Area): Promise<BlockLayout[]> {
  if (from.rows === to.rows && from.columns === to.columns) return [];
  const found: BlockLayout[] = [];
  for (const sheet of await host.sheets()) {
    const cells = await host.read({ sheet, row: 0, column: 0, ...LOOKED_AT });
    cells.forEach((line, row) =>
      line.forEach(({ formula }, column) => {
        if (formula === null) return;
        const grown = grownFormula(formula, sheet, from, to);
        if (grown !== formula) found.push({ sheet, row, column, cells: [[{ content: grown }]] });
      }),
    );
  }
  return found;
}

/** A formula on a sheet with every reference to one area turned into one to another. Only calls of ours are touched. */
export function grownFormula(formula: string, sheet: string, from: Area, to: Area): string {
  if (!/RAFTER/i.test(formula)) return formula;
  const [left, top, right, bottom] = corners(from);
  const [newLeft, newTop, newRight, newBottom] = corners(to);
  const pattern = new RegExp(
    `("(?:[^"]|"")*")|((?:'(?:[^']|'')+'|[\\p{L}\\d_.]+)!)?(?<![\\p{L}\\d_$])(\\$?)${left}(\\$?)${top}:(\\$?)${right}(\\$?)${bottom}(?![\\p{L}\\d_])`,
    "giu",
  );
  return formula.replace(pattern, (whole, text, prefix: string | undefined, a, b, c, d) => {
    if (text !== undefined) return whole;
    const named = prefix === undefined ? sheet : prefix.slice(0, -1).replace(/^'|'$/g, "").replaceAll("''", "'");
    if (named.toLowerCase() !== from.sheet.toLowerCase()) return whole;
    return `${prefix ?? ""}${a}${newLeft}${b}${newTop}:${c}${newRight}${d}${newBottom}`;
  });
}

/** Column letters and row numbers of an area's corners. */
function corners({ row, column, rows, columns }: Area): [string, string, string, string] {
  const parts = (r: number, c: number) => /([A-Z]+)(\d+)$/.exec(address("A", r, c))!.slice(1) as [string, string];
  return [...parts(row, column), ...parts(row + rows - 1, column + columns - 1)];
}

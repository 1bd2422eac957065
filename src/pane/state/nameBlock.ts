import type { Area, Host } from "../../hosts/host.ts";
import { firstFree } from "../../measure/firstFree.ts";

const NAME = "RoofBlock";

/** The name by which the workbook knows a block from now on: the one it has, else a free one. */
export async function nameBlock(host: Host, area: Area): Promise<string> {
  const names = await host.namedAreas();
  const its = [...names].find(([name, there]) => name.startsWith(NAME) && there && sameCorner(there, area));
  const name = its?.[0] ?? freeBlockName([...names.keys()]);
  if (its?.[1]?.rows !== area.rows || its[1].columns !== area.columns) await host.nameArea(name, area);
  return name;
}

/** A name for a block that no area has, not even one whose cells are gone: a formula that used it would come back to life on another roof. */
export function freeBlockName(taken: readonly string[]): string {
  return firstFree(taken, (n) => (n === 1 ? NAME : `${NAME}${n}`));
}

function sameCorner(a: Area, b: Area): boolean {
  return a.sheet === b.sheet && a.row === b.row && a.column === b.column;
}

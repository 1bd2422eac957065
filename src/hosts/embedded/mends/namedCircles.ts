import type { Injector, IRange } from "@univerjs/core";
import { ICommandService } from "@univerjs/core";
import type { FunctionVariantType } from "@univerjs/engine-formula";
import {
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  SetFormulaCalculationNotificationMutation,
} from "@univerjs/engine-formula";
import type { Calculation } from "../calculation.ts";
import type { Messages } from "../messages.ts";
import { onEdit } from "../onEdit.ts";
import type { Generator, Tree, Turn } from "./treesInTurns.ts";

const WORDS =
  "This formula goes round in a circle: it reads a cell that is calculated from its own result. Point it at other cells.";

interface Place {
  readonly unitId: string;
  readonly sheetId: string;
  readonly range: IRange;
}

type Spills = Record<string, Record<string, Record<number, Record<number, IRange | null> | null> | null> | null>;

/**
 * Makes formulas that go round in a circle errors, with words.
 *
 * In 0.25.1 such a formula takes what stood there before, so that its value hangs on how the sheet came to be, and undo may give another; that
 * a table spills over a cell which the table's own block reads is no circle to it at all.
 *
 * Whether a table runs over what it reads is known only once it is calculated. Then it and all in its circle are errors until the next edit,
 * which tries anew, each time from the sheet without that table: so it never hangs on what stood there before.
 */
export function namedCircles(injector: Injector, calculation: Calculation, messages: Messages): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
  const runtime = injector.get(IFormulaRuntimeService);
  const model = injector.get(FormulaDataModel);
  // Circles of this calculation, and those through a spill, which stay so until the next edit.
  let round = new Set<string>();
  const found = new Map<string, Place>();
  // What is found while a spill of before still stands is looked at once more without it.
  let again = false;
  let told = 0;

  generator._checkIsCycleDependency = async (trees, turn) => {
    const spills = runtime.getUnitArrayFormula() as Spills;
    const filled = ({ unitId, subUnitId, row, column }: Tree) => {
      const area = spills[unitId]?.[subUnitId]?.[row]?.[column];
      const first = runtime.getUnitData()[unitId]?.[subUnitId]?.getValue(row, column);
      return area && first?.v !== ErrorType.SPILL ? area : null;
    };
    const circles = await circlesOf(
      trees,
      (tree) =>
        generator._dependencyManagerService.searchDependency([
          ...tree.toRTreeItem(),
          ...[filled(tree)].flatMap((range) =>
            range ? [{ unitId: tree.unitId, sheetId: tree.subUnitId, range }] : [],
          ),
        ]),
      turn,
    );
    round = new Set(circles.flat().map(keyOf));
    for (const circle of circles.filter((one) => one.some(filled)))
      for (const tree of circle) {
        const [place] = tree.toRTreeItem() as [Place];
        found.set(keyOf(tree), place);
        const before = model.getArrayFormulaRange() as Spills;
        if (before[tree.unitId]?.[tree.subUnitId]?.[tree.row]?.[tree.column]) again = true;
      }
    return circles.length > 0;
  };

  const set = runtime.setRuntimeData.bind(runtime);
  runtime.setRuntimeData = (result: FunctionVariantType) => {
    const { currentUnitId: unit, currentSubUnitId: sheet, currentRow: row, currentColumn: column } = runtime;
    const key = keyOf({ unitId: unit, subUnitId: sheet, row, column });
    if (!round.has(key) && !found.has(key)) return set(result);
    messages.blocked({ unit, sheet, row, column }, WORDS);
    set(ErrorValueObject.create(ErrorType.VALUE));
  };

  injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationNotificationMutation.id) return;
    if ((params as { functionsExecutedState?: number }).functionsExecutedState === undefined) return;
    if (found.size === told) {
      // The spill of before has gone by now.
      if (again && found.size > 0) tryAnew();
      again = false;
      return;
    }
    told = found.size;
    calculation.recalculate([...found.values()]);
  });

  const tryAnew = () => {
    // Cells may have moved meanwhile: whatever shows an error may be one of them.
    const places = [...found.values(), ...failed()];
    found.clear();
    told = 0;
    calculation.recalculate(places);
  };
  const failed = (): Place[] => {
    const places: Place[] = [];
    for (const [unitId, sheets] of Object.entries(model.getFormulaData()))
      for (const [sheetId, rows] of Object.entries(sheets ?? {}))
        for (const [row, columns] of Object.entries(rows ?? {}))
          for (const column of Object.keys(columns ?? {})) {
            const at = { unit: unitId, sheet: sheetId, row: Number(row), column: Number(column) };
            if (messages.at(at) === null) continue;
            const [startRow, startColumn] = [at.row, at.column];
            places.push({
              unitId,
              sheetId,
              range: { startRow, startColumn, endRow: startRow, endColumn: startColumn },
            });
          }
    return places;
  };
  onEdit(injector, (edited) => void (edited && found.size > 0 && tryAnew()));
}

function keyOf({ unitId, subUnitId, row, column }: Pick<Tree, "unitId" | "subUnitId" | "row" | "column">): string {
  return `${unitId}/${subUnitId}/${row}/${column}`;
}

/** Those that can be come back to from themselves, each circle by itself (Tarjan, Depth-first search and linear graph algorithms, 1972; without recursion). */
async function circlesOf(
  trees: readonly Tree[],
  after: (tree: Tree) => ReadonlySet<number>,
  turn: Turn,
): Promise<Tree[][]> {
  const byId = new Map(trees.map((tree) => [tree.treeId, tree]));
  const order = new Map<number, number>();
  const lowest = new Map<number, number>();
  const open: Tree[] = [];
  const isOpen = new Set<number>();
  const circles: Tree[][] = [];
  for (const start of trees) {
    if (order.has(start.treeId)) continue;
    const path: { tree: Tree; next: Tree[]; toItself: boolean }[] = [];
    const enter = (tree: Tree) => {
      order.set(tree.treeId, order.size);
      lowest.set(tree.treeId, order.get(tree.treeId)!);
      open.push(tree);
      isOpen.add(tree.treeId);
      const ids = after(tree);
      const next = [...ids].flatMap((id) => byId.get(id) ?? []);
      path.push({ tree, next, toItself: ids.has(tree.treeId) });
    };
    enter(start);
    for (let here = path.at(-1); here; here = path.at(-1)) {
      await turn();
      const { tree, next, toItself } = here;
      const child = next.pop();
      if (child) {
        if (!order.has(child.treeId)) enter(child);
        else if (isOpen.has(child.treeId))
          lowest.set(tree.treeId, Math.min(lowest.get(tree.treeId)!, order.get(child.treeId)!));
        continue;
      }
      path.pop();
      const parent = path.at(-1)?.tree.treeId;
      if (parent !== undefined) lowest.set(parent, Math.min(lowest.get(parent)!, lowest.get(tree.treeId)!));
      if (lowest.get(tree.treeId) !== order.get(tree.treeId)) continue;
      const circle = open.splice(open.lastIndexOf(tree));
      for (const { treeId } of circle) isOpen.delete(treeId);
      if (circle.length > 1 || toItself) circles.push(circle);
    }
  }
  return circles;
}

import type { Injector, IUnitRange } from "@univerjs/core";
import { RTree } from "@univerjs/core";
import {
  FormulaDataModel,
  IDependencyManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  IOtherFormulaManagerService,
} from "@univerjs/engine-formula";
import { turns } from "../turns.ts";
import type { First } from "./firstInOneGo.ts";

/** A formula, while the engine finds out what is to be calculated. */
export interface Tree {
  treeId: number;
  readonly formula: string;
  readonly isVirtual: boolean;
  readonly isCache: boolean;
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
  readonly refOffsetX: number;
  readonly refOffsetY: number;
  readonly rangeList: unknown[];
  isDirty: boolean;
  addressFunctionNodes: readonly unknown[];
  pushRangeList(ranges: readonly unknown[]): void;
  dependencySheetName(names: unknown): boolean;
  isExcludeRange(excluded: unknown): boolean;
  toRTreeItem(): IUnitRange[];
}

/** The engine's part that finds it out, as it is in 0.25.1. */
export interface Generator {
  readonly _disposed: boolean;
  readonly _dependencyManagerService: IDependencyManagerService;
  readonly _dependencyTreeCache: Map<number, Tree>;
  readonly _dependencyRTreeCacheForAddressFunction: RTree;
  readonly _executedAddressFunctionNodeIds: Set<number>;
  generate(): Promise<Tree[]>;
  _updateRangeFlatten(): void;
  _createFDtree(unit: string, sheet: string, row: number, column: number, cells: object, formula: Formula): Tree;
  _createVirtualFDtree(first: Tree, formula: Formula): Tree;
  _registerOtherFormulas(formulas: object, units: readonly string[], trees: Tree[]): void;
  _registerFeatureFormulas(trees: Tree[]): void;
  _getTreeNode(tree: Tree): unknown;
  _includeTree(tree: Tree, node: unknown): boolean;
  _getAddressFunctionNodeList(node: unknown): readonly unknown[];
  _getRangeListByNode(of: object): Promise<readonly unknown[]>;
  _calculateAddressFunction(cells: RTree, tree: Tree): Promise<void>;
  _traverse(trees: Tree[], done: Set<number>): Iterable<Tree>;
  /** With turns in the place of the engine's own, which knows of none: see namedCircles.ts. */
  _checkIsCycleDependency(trees: readonly Tree[], turn: Turn): Promise<boolean>;
}

/** As the cell has it: `f` with others of the same `si`, each so many columns and rows from the first. */
interface Formula {
  readonly f: string;
  readonly si?: string | undefined;
  readonly x?: number | undefined;
  readonly y?: number | undefined;
}

type Rows = Record<string, Record<string, Formula | null> | null>;

/** Gives the page its turn when it is due. Throws {@link Halted} when the work has become useless meanwhile. */
export type Turn = () => Promise<void>;

class Halted extends Error {}

/** What takes a formula out of what the engine knows of all. */
const REMOVERS = [
  "removeFormulaDependency",
  "clearFormulaDependency",
  "removeOtherFormulaDependency",
  "clearOtherFormulaDependency",
  "removeFeatureFormulaDependency",
  "clearFeatureFormulaDependency",
] as const;

/**
 * Finds out what is to be calculated, and in which order, in turns with the page.
 *
 * In 0.25.1 that is one task, at every calculation, of all the formulas that there are: 20,000 take more than a second. The steps are the
 * engine's own; between two of them an edit may come now, as it may between two formulas that are calculated. It ends this calculation, and
 * what is half known is forgotten; a change that ends none has it found out anew. The areas that formulas read were also put in once more at
 * every calculation, beside those of before, for as long as the page is open.
 */
export function treesInTurns(injector: Injector, first: First): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
  const manager = injector.get(IDependencyManagerService);
  const runtime = injector.get(IFormulaRuntimeService);
  const config = injector.get(IFormulaCurrentConfigService);
  const model = injector.get(FormulaDataModel);
  const others = injector.get(IOtherFormulaManagerService);

  let changed = false;
  for (const name of REMOVERS) {
    const remove = manager[name].bind(manager) as (...of: unknown[]) => void;
    manager[name] = (...of: unknown[]) => {
      changed = true;
      remove(...of);
    };
  }

  const registerFormulas = async (trees: Tree[], turn: Turn): Promise<void> => {
    const units = config.getFormulaData() as Record<string, Record<string, Rows | null> | null>;
    for (const [unit, sheets] of Object.entries(units))
      for (const [sheet, rows] of Object.entries(sheets ?? {})) {
        const firsts = new Map<string, Tree>();
        for (const wanted of [true, false])
          for (const [row, line] of Object.entries(rows ?? {})) {
            await turn();
            for (const [column, formula] of Object.entries(line ?? {})) {
              if (!formula) continue;
              const { x = 0, y = 0, si } = formula;
              const isFirst = x === 0 && y === 0 && si !== undefined;
              if (isFirst !== wanted) continue;
              const first = si && !isFirst ? firsts.get(si) : undefined;
              const [r, c] = [Number(row), Number(column)];
              const tree = first
                ? generator._createVirtualFDtree(first, formula)
                : generator._createFDtree(unit, sheet, r, c, config.getUnitData(), formula);
              const id = manager.getFormulaDependency(unit, sheet, r, c) ?? null;
              if (id !== null) tree.treeId = id;
              else manager.addFormulaDependency(unit, sheet, r, c, tree as never);
              if (isFirst) firsts.set(si, tree);
              trees.push(tree);
              generator._dependencyTreeCache.set(tree.treeId, tree);
            }
          }
      }
  };

  /** Every formula with the cells that it reads. */
  const register = async (turn: Turn): Promise<Tree[]> => {
    const trees: Tree[] = [];
    // Each formula is put in anew below, beside what is there of it.
    manager.reset();
    await registerFormulas(trees, turn);
    const more = others.getOtherFormulaData();
    generator._registerOtherFormulas(more, Object.keys(more), trees);
    generator._registerFeatureFormulas(trees);
    for (const tree of trees) {
      if (!tree.formula) continue;
      await turn();
      const node = generator._getTreeNode(tree);
      tree.isDirty = generator._includeTree(tree, node);
      const nodes = generator._getAddressFunctionNodeList(node);
      if (nodes.length > 0) tree.addressFunctionNodes = nodes;
      if (tree.isVirtual) continue;
      runtime.setCurrent(tree.row, tree.column, tree.rowCount, tree.columnCount, tree.subUnitId, tree.unitId);
      const { refOffsetX, refOffsetY } = tree;
      tree.pushRangeList(await generator._getRangeListByNode({ node, refOffsetX, refOffsetY }));
    }
    for (const tree of trees) {
      await turn();
      if (!tree.isCache) manager.addDependencyRTreeCache(tree as never);
    }
    return trees;
  };

  /** What OFFSET and the like read is known once they are calculated. */
  const followAddresses = async (trees: readonly Tree[], turn: Turn): Promise<void> => {
    if (trees.every(({ addressFunctionNodes }) => addressFunctionNodes.length === 0)) return;
    const cells = new RTree();
    for (const { unitId, subUnitId: sheetId, row, column, treeId: id } of trees) {
      await turn();
      const range = { startRow: row, startColumn: column, endRow: row, endColumn: column };
      cells.insert({ unitId, sheetId, range, id });
    }
    generator._executedAddressFunctionNodeIds.clear();
    for (const tree of trees) {
      await turn();
      await generator._calculateAddressFunction(cells, tree);
    }
  };

  const toCalculate = async (turn: Turn): Promise<Tree[]> => {
    const ranges = config.getDirtyRanges();
    const reached = manager.searchDependency(ranges);
    for (const id of generator._dependencyRTreeCacheForAddressFunction.bulkSearch(ranges)) reached.add(Number(id));
    const found: Tree[] = [];
    for (const [id, tree] of generator._dependencyTreeCache) {
      await turn();
      const isToBe =
        config.isForceCalculate() ||
        tree.isDirty ||
        tree.dependencySheetName(config.getDirtyNameMap()) ||
        (reached.has(id) && !tree.isExcludeRange(config.getExcludedRange()));
      if (isToBe) found.push(tree);
    }
    // One whose formula is another's, some cells away, reads by that one's areas.
    for (const tree of generator._dependencyTreeCache.values()) if (!tree.isVirtual) tree.rangeList.length = 0;
    return found;
  };

  const inOrder = async (trees: Tree[], turn: Turn): Promise<Tree[]> => {
    const order: Tree[] = [];
    for (const tree of generator._traverse(trees, new Set())) {
      order.push(tree);
      await turn();
    }
    return order;
  };

  const forget = () => {
    generator._dependencyTreeCache.clear();
    generator._dependencyRTreeCacheForAddressFunction.clear();
    manager.closeKdTree();
    runtime.clearArrayObjectCache();
  };

  generator.generate = async () => {
    generator._updateRangeFlatten();
    for (;;) {
      changed = false;
      const due = turns();
      const turn = async () => {
        if (first.over) await due();
        if (changed || runtime.isStopExecution() || generator._disposed) throw new Halted();
      };
      try {
        const trees = await register(turn);
        await followAddresses(trees, turn);
        manager.openKdTree();
        const order = await inOrder(await toCalculate(turn), turn);
        if (await generator._checkIsCycleDependency(order, turn)) runtime.enableCycleDependency();
        forget();
        return order;
      } catch (fault) {
        const some = [...generator._dependencyTreeCache.values()].find(({ formula }) => formula);
        forget();
        if (!(fault instanceof Halted)) throw fault;
        // Before its first formula the engine sees that it is to stop, and tells.
        if (runtime.isStopExecution() || generator._disposed) return some ? [some] : [];
        config.registerFormulaData(model.getFormulaData());
      }
    }
  };
}

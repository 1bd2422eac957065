import type { Injector } from "@univerjs/core";
import { IFormulaCurrentConfigService } from "@univerjs/engine-formula";

/** A text for each sheet or name of a workbook, by the workbook's id. */
type Texts = Readonly<Record<string, Readonly<Record<string, string>> | null | undefined>>;

/** The engine's part that knows which sheet a name stands for. */
interface Config {
  /** Adds the names of sheets that came or went to those of the sheets that are there. */
  _mergeNameMap(idsByName: Texts, changedById: Texts): void;
}

/**
 * Lets a sheet's name stand for the sheet that is there.
 *
 * In 0.25.1 the calculation after a sheet has gone takes its name for the one that is gone, though another of that name came in its place:
 * once the opening of a file was undone, sums over a sheet were 0 when both files had one of that name.
 */
export function presentSheets(injector: Injector): void {
  const config = injector.get(IFormulaCurrentConfigService) as unknown as Config;
  const merge = config._mergeNameMap.bind(config);
  config._mergeNameMap = (ids, changed) =>
    merge(
      ids,
      Object.fromEntries(
        Object.entries(changed).map(([unit, names]) => [
          unit,
          Object.fromEntries(Object.entries(names ?? {}).filter(([, name]) => ids[unit]?.[name] === undefined)),
        ]),
      ),
    );
}

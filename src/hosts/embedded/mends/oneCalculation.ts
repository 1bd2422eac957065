import type { Injector } from "@univerjs/core";
import { ICommandService, ILogService } from "@univerjs/core";
import {
  FormulaExecutedStateType,
  ICalculateFormulaService,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import { onEdit } from "../onEdit.ts";

/** What is to be calculated: changed areas, names and the like, as the engine keeps them. */
type Changed = object;

// The parts of the engine that are private to it.
interface Trigger {
  _waitingCommandQueue: readonly unknown[];
  readonly _setTimeoutKey: number;
  _commandService: Pick<ICommandService, "executeCommand">;
  _executingDirtyData: Changed;
  _mergeDirty(a: Changed, b: Changed): Changed;
  _generateDirty(commands: readonly unknown[]): Changed;
  _resetExecutingDirtyData(): void;
}
interface Service {
  _executeStep(): Promise<unknown>;
}

/**
 * Calculates once at a time, and forgets no edit.
 *
 * In 0.25.1 an edit may start a second calculation beside one that has not reached its first formula, and they take each other's cells;
 * an edit that stops one loses what was being calculated when the next edit comes; and results that were on their way are written where
 * cells stood before rows were inserted. Here an edit stops what runs, its results are dropped, and what it was to calculate goes into
 * the next, which starts once this one has ended. One that fails ends too, else nothing were calculated any more.
 */
export function oneCalculation(injector: Injector): { readonly busy: boolean } {
  const commands = injector.get(ICommandService);
  const service = injector.get(ICalculateFormulaService);
  const trigger = injector.get(TriggerCalculationController) as unknown as Trigger;
  let running: { readonly changed: Changed; asked: boolean; stopped: boolean } | null = null;
  let again = false;
  // The first is of the whole workbook, asked for as it is added.
  let begun = false;

  const start = () => {
    const changed = trigger._executingDirtyData;
    trigger._executingDirtyData = trigger._generateDirty([]);
    running = { changed, asked: false, stopped: false };
    again = false;
    begun = true;
    return commands.executeCommand(SetFormulaCalculationStartMutation.id, { ...changed }, { onlyLocal: true });
  };
  const stop = () => {
    if (running) running.asked = true;
    service.stopFormulaExecution();
  };
  const want = () => {
    if (!running) return start();
    again = true;
    stop();
    return Promise.resolve(true);
  };

  // It asks for a start or a stop as it believes that one is running; both mean that there is something to calculate.
  trigger._commandService = {
    executeCommand: ((id, ...more) =>
      id === SetFormulaCalculationStartMutation.id || id === SetFormulaCalculationStopMutation.id
        ? want()
        : commands.executeCommand(id, ...more)) as ICommandService["executeCommand"],
  };
  // What came since the start would go with it.
  trigger._resetExecutingDirtyData = () => undefined;
  onEdit(injector, (edited) => void (edited && running && stop()));
  // Others wait for what comes after them in haste, this one need not.
  const first = commands.onCommandExecuted(({ id }) => {
    if (id !== SetTriggerFormulaCalculationStartMutation.id) return;
    first.dispose();
    clearTimeout(trigger._setTimeoutKey);
    trigger._executingDirtyData = trigger._mergeDirty(
      trigger._executingDirtyData,
      trigger._generateDirty(trigger._waitingCommandQueue),
    );
    trigger._waitingCommandQueue = [];
    void start();
  });

  const inner = service as unknown as Service;
  const step = inner._executeStep.bind(inner);
  inner._executeStep = () =>
    step().catch((fault: unknown) => {
      injector.get(ILogService).error(fault);
      return null;
    });

  service.executionCompleteListener$.subscribe(({ functionsExecutedState }) => {
    const ending = running;
    if (!ending) return;
    // One that is stopped before it knows of any formula ends as if there were none.
    const none = functionsExecutedState === FormulaExecutedStateType.NOT_EXECUTED && ending.asked;
    if (none || functionsExecutedState === FormulaExecutedStateType.STOP_EXECUTION) ending.stopped = true;
    // Its results stand in the cells a moment later; one that is stopped tells its end twice.
    setTimeout(() => {
      if (running !== ending) return;
      running = null;
      if (ending.stopped)
        trigger._executingDirtyData = trigger._mergeDirty(ending.changed, trigger._executingDirtyData);
      if (again) void start();
    });
  });

  return {
    get busy() {
      return !begun || running !== null || again || trigger._waitingCommandQueue.length > 0;
    },
  };
}

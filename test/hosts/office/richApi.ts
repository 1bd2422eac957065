import { excelError } from "../fakeSheet.ts";

/** Stands for an object that is not there; whatever hangs on it is not there either. */
export const NOTHING = Symbol("a null object");

/** One request as office.js sends it: object paths, and actions on them in order. */
export interface Request {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}
interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: Arguments;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}
interface ObjectPath {
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: Arguments;
}
interface Arguments {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly number[];
}
/** What a request works on: the workbook's own object, what it keeps for later, and services by their type. */
export interface Served {
  readonly workbook: object;
  readonly references: ReadonlyMap<string, object>;
  service(type: string): object;
}

const PATH = { GLOBAL: 1, NEW: 2, METHOD: 3, PROPERTY: 4, INDEXER: 5, REFERENCE: 6, NULL: 7 };
/** Kinds of actions that a request holds; those above QUERY have an effect. */
export const ACTION = { INSTANTIATE: 1, QUERY: 2, METHOD: 3, SET: 4, TRACE: 5 };

/** Carries out a request, as Excel does: in order, up to the first action that fails; what came before stays done. */
export function carryOut({ Actions, ObjectPaths }: Request, served: Served): object {
  const objects = new Map<number, unknown>();
  const resolve = (id: number): any => {
    if (!objects.has(id)) objects.set(id, make(ObjectPaths[id]!));
    return objects.get(id);
  };
  const given = ({ Arguments: values = [], ReferencedObjectPathIds: ids = [] }: Arguments = {}): unknown[] =>
    values.map((value, i) => (ids[i] ? resolve(ids[i]) : value));
  const make = ({ ObjectPathType: type, Name: name, ParentObjectPathId: on, ArgumentInfo }: ObjectPath): unknown => {
    if (type === PATH.GLOBAL) return served.workbook;
    if (type === PATH.NEW) return served.service(name);
    if (type === PATH.NULL) return NOTHING;
    if (type === PATH.REFERENCE) {
      const kept = served.references.get(name);
      if (!kept) throw excelError("InvalidReference", `This reference is no longer valid: ${name}`);
      return kept;
    }
    const parent = resolve(on!);
    if (parent === NOTHING) return NOTHING;
    if (type === PATH.PROPERTY) return member(parent, name);
    return callOn(parent, type === PATH.INDEXER ? "Item" : name, given(ArgumentInfo));
  };
  const act = ({ ActionType: type, Name: name, ObjectPathId, ArgumentInfo, QueryInfo }: Action): unknown => {
    const target = resolve(ObjectPathId);
    if (target === NOTHING) {
      if (type === ACTION.SET) throw excelError("InvalidOperation", "a null object");
      return null;
    }
    if (type === ACTION.INSTANTIATE) return identity(target);
    if (type === ACTION.QUERY) return query(target, QueryInfo?.Select ?? []);
    if (type === ACTION.METHOD) return callOn(target, name, given(ArgumentInfo)) ?? null;
    if (type !== ACTION.SET) throw excelError("NotImplemented", `action ${type}`);
    member(target, name, "set");
    target[name] = given(ArgumentInfo)[0];
    return null;
  };
  const results: { ActionId: number; Value: unknown }[] = [];
  const traces: number[] = [];
  for (const [index, action] of Actions.entries())
    if (action.ActionType === ACTION.TRACE) {
      // Answered like any other: events that were asked for count as heard from then on.
      traces.push(action.Id);
      results.push({ ActionId: action.Id, Value: null });
    } else
      try {
        results.push({ ActionId: action.Id, Value: act(action) });
      } catch (error) {
        const { code, message } = error as { code?: string; message: string };
        // What has no code of Excel's is a fault of the stand-in, and must be seen.
        if (code === undefined) queueMicrotask(() => Promise.reject(error as Error));
        return {
          Error: {
            Code: code ?? "GeneralException",
            Message: message,
            Location: action.Name,
            ActionIndex: index,
            HttpStatusCode: 400,
          },
          Results: results,
          TraceIds: traces,
        };
      }
  return { Results: results, TraceIds: traces };
}

function member(target: any, name: string, kind = ""): unknown {
  if (!(name in target)) throw excelError("NotImplemented", `${kind} ${target.constructor?.name}.${name}`);
  return kind ? undefined : target[name];
}

function callOn(target: any, name: string, given: unknown[]): unknown {
  if (typeof member(target, name) !== "function") throw excelError("NotImplemented", `${name}()`);
  return target[name](...given);
}

/** What a client keeps to find an object again. */
function identity(target: any): Record<string, unknown> {
  const keys = ["_ReferenceId", "Id", "_Id"].filter((key) => typeof target[key] === "string");
  return Object.fromEntries(keys.map((key) => [key, target[key]]));
}

/** A collection is asked for properties of its members: the client takes "items/" away before it asks. */
function query(target: any, select: readonly string[]): object {
  const found: any = identity(target);
  if ("Items" in target) {
    const names = select.filter((name) => name !== "items");
    return { ...found, _Items: (target.Items as object[]).map((item) => query(item, names)) };
  }
  for (const path of select) {
    const [first, ...rest] = path.split("/");
    const name = first!.charAt(0).toUpperCase() + first!.slice(1);
    const value = member(target, name);
    found[name] = rest.length ? { ...found[name], ...query(value, [rest.join("/")]) } : value;
  }
  return found;
}

import type { FakeContext } from "./excelFake.ts";
import { excelError } from "./fakeSheet.ts";

/** What a stand-in object lets one do. */
export interface NodeParts {
  /** Properties that can be read once loaded and synced. */
  readonly read?: Readonly<Record<string, () => unknown>>;
  /** Properties that can be set; the check runs at once, what it gives back runs at sync. */
  readonly write?: Readonly<Record<string, (value: any) => () => void>>;
  /** Methods and parts, at once. */
  readonly call?: Readonly<Record<string, unknown>>;
  /** Whether the object is not there, asked at sync; only objects of the ...OrNullObject kind have it. */
  readonly missing?: () => boolean;
}

/** A stand-in object that throws on every use that Excel's own objects would not bear, or would answer with nonsense. */
export function strict(context: FakeContext, what: string, parts: NodeParts): any {
  const { read = {}, write = {}, call = {}, missing } = parts;
  const loaded = new Map<string, unknown>();
  const fetchNow = (name: string) => {
    if (missing?.()) return;
    const [first, rest] = name.split("/") as [string, string?];
    if (first !== "items") {
      const value = read[name]!();
      context.answered += JSON.stringify(value ?? null).length;
      return void loaded.set(name, value);
    }
    // "items/name" loads a collection and that property of its members.
    if (!loaded.has("items")) loaded.set("items", read["items"]!());
    for (const item of loaded.get("items") as any[]) item.fetchNow(rest);
  };
  const fetch = (name: string) => {
    const [first, rest] = name.split("/") as [string, string?];
    if (rest && first in call) return void (call[first] as any).load(rest);
    if (!(name in read) && first !== "items") throw new Error(`${what}: no property ${name}`);
    context.queue.push(() => fetchNow(name));
  };
  if (missing) context.queue.push(() => void loaded.set("isNullObject", missing()));
  const node: any = new Proxy(
    {},
    {
      get(_, key: string) {
        if (key === "then" || typeof key === "symbol") return undefined;
        if (key === "fetchNow") return fetchNow;
        if (key === "load")
          return (names: string) => (
            names
              .split(",")
              .map((name) => name.trim())
              .forEach(fetch),
            node
          );
        if (key in call) return call[key];
        if (loaded.has(key)) return loaded.get(key);
        const inner = Object.keys(read).filter((name) => name.startsWith(`${key}/`));
        if (inner.length) return strictPart(what, key, inner, loaded);
        throw key in read || key === "isNullObject"
          ? excelError("PropertyNotLoaded", `${what}.${key}`)
          : new Error(`${what}: no member ${key}`);
      },
      set(_, key: string, value: unknown) {
        const check = write[key];
        if (!check) throw new Error(`${what}: cannot set ${key}`);
        context.queue.push(check(value));
        return true;
      },
    },
  );
  return node;
}

function strictPart(
  what: string,
  part: string,
  names: readonly string[],
  loaded: ReadonlyMap<string, unknown>,
): unknown {
  return new Proxy(
    {},
    {
      get(_, key: string) {
        const name = `${part}/${key}`;
        if (!names.includes(name) || !loaded.has(name)) throw excelError("PropertyNotLoaded", `${what}.${name}`);
        return loaded.get(name);
      },
    },
  );
}

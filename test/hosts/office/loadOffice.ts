import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { runInThisContext } from "node:vm";

/** The folder of the vendor's scripts, as its package brings them: a tool of the tests, not of what is shipped. */
export const OFFICE = join(
  dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/package.json")),
  "dist",
);
/** Where the scripts believe to come from. */
export const ADDRESS = "https://appsforoffice.microsoft.com/lib/1/hosted/";

/** What office.js of a desktop Excel talks to: the host's side of `window.external`. */
export interface Native {
  GetHostInfo(): string;
  GetContext(): object;
  Execute(id: number, params: unknown, callback: (args: unknown, code?: number) => unknown): void;
  RegisterEvent(
    id: number,
    target: string,
    handler: (id: number, payload: unknown) => void,
    callback: (status: unknown) => void,
  ): void;
  UnregisterEvent(id: number, target: string, callback: (status: unknown) => void): void;
}

/**
 * Runs the vendor's office.js, unchanged, in Node: it finds a page with one script tag, asks its host who it is, and loads the rest by script tags.
 *
 * Only what a page would give is played. It runs in this context, for its arrays must be those of the tests. Once for each process: it keeps its host.
 */
export async function loadOffice(native: Native): Promise<void> {
  const noop = () => undefined;
  const element = (tag: string) => ({
    tag,
    style: {},
    setAttribute: noop,
    appendChild: noop,
    getAttribute: () => null,
    addEventListener: noop,
  });
  const head = {
    appendChild(node: { tag: string; src?: string; onload?: () => void; onerror?: (error: Error) => void }) {
      if (node.tag === "script") setTimeout(() => runScript(node), 0);
      return node;
    },
  };
  const first = { src: `${ADDRESS}office.js`, getAttribute: () => null };
  const document = {
    readyState: "complete",
    hasFocus: () => true,
    head,
    body: element("body"),
    documentElement: element("html"),
    cookie: "",
    getElementsByTagName: (tag: string) => (tag === "script" ? [first] : tag === "head" ? [head] : []),
    getElementById: () => null,
    querySelector: () => null,
    querySelectorAll: () => [],
    createElement: element,
    addEventListener: noop,
  };
  const address = new URL("https://localhost:3000/pane.html");
  for (const [name, value] of Object.entries({
    window: globalThis,
    self: globalThis,
    top: globalThis,
    name: "",
    document,
    location: Object.assign(address, { reload: noop }),
    external: native,
    navigator: {
      userAgent: "Mozilla/5.0 (Windows NT 10.0; Win64; x64) Chrome/140.0.0.0 Edg/140.0.0.0",
      platform: "Win32",
      language: "en-US",
      appVersion: "5.0",
      sendBeacon: () => false,
    },
    history: {},
    sessionStorage: storage(),
    localStorage: storage(),
    addEventListener: noop,
    removeEventListener: noop,
    screen: { width: 1280, height: 800 },
  }))
    Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
  runInThisContext(readFileSync(join(OFFICE, "office.js"), "utf8"), { filename: "office.js" });
  await Office.onReady();
  // The library's own check that a call belongs to a requirement set that the host has. It is off for users, whose Excel refuses by itself.
  (
    OfficeExtension as unknown as { CommonUtility: { _doApiNotSupportedCheck: boolean } }
  ).CommonUtility._doApiNotSupportedCheck = true;
}

function runScript(node: { src?: string; onload?: () => void; onerror?: (error: Error) => void }): void {
  const path = String(node.src).replace(ADDRESS, "");
  const file = join(OFFICE, path);
  if (!existsSync(file)) return node.onerror?.(new Error(path));
  runInThisContext(readFileSync(file, "utf8"), { filename: path });
  node.onload?.();
}

function storage(): Partial<Storage> {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
    key: (i) => [...kept.keys()][i] ?? null,
    get length() {
      return kept.size;
    },
  };
}

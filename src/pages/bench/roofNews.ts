// A name of this program's own among the pages of one address; nothing of it leaves the browser.
const CHANNEL = "longpoint roof";

/** What the sheet's page tells the pages that it opened. */
interface News {
  /** What stood behind the # of their addresses. */
  readonly opened: readonly string[];
  /** The roof as it is typed now, as the pane keeps it. */
  readonly now: string;
}

const roofIn = (address: string): string => {
  try {
    return decodeURIComponent(address.slice(address.indexOf("#") + 1));
  } catch {
    return "";
  }
};

/** Tells the pages that were opened with a roof when that roof is typed over. */
export function roofNews(): { opened(address: string): void; changed(now: string): void } {
  const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel(CHANNEL) : null;
  const opened = new Set<string>();
  return {
    opened: (address) => void opened.add(roofIn(address)),
    changed: (now) => channel?.postMessage({ opened: [...opened], now } satisfies News),
  };
}

/** Calls back with the roof as it is typed now, whenever the one that this page was opened with is typed over. */
export function onRoofNews(listener: (now: string) => void): void {
  if (!("BroadcastChannel" in globalThis)) return;
  new BroadcastChannel(CHANNEL).addEventListener("message", ({ data }: MessageEvent<News>) => {
    if (data.opened.includes(roofIn(location.hash))) listener(data.now);
  });
}

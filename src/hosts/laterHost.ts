import type { Host } from "./host.ts";

/** A sheet that is still coming, as one that is there: what is asked of it waits until it has come. */
export function laterHost(coming: Promise<Host>): Host {
  /** Listens once there is something to listen to, unless it was stopped before. */
  const listen = (start: (host: Host) => () => void) => {
    let stop: (() => void) | null = null;
    let stopped = false;
    void coming.then(
      (host) => void (stopped || (stop = start(host))),
      () => undefined,
    );
    return () => {
      stopped = true;
      stop?.();
    };
  };
  return {
    selection: async () => (await coming).selection(),
    onSelection: (listener) => listen((host) => host.onSelection(listener)),
    onChange: (listener) => listen((host) => host.onChange(listener)),
    sheets: async () => (await coming).sheets(),
    read: async (area) => (await coming).read(area),
    blockAround: async (area) => (await coming).blockAround(area),
    write: async (step, options) => (await coming).write(step, options),
    occupied: async (step) => (await coming).occupied(step),
    takeBack: async (written) => (await coming).takeBack(written),
    messageAt: async (sheet, row, column) => (await coming).messageAt(sheet, row, column),
    show: async (area) => (await coming).show(area),
    namedAreas: async () => (await coming).namedAreas(),
    nameArea: async (name, area) => (await coming).nameArea(name, area),
    remember: async (key, text) => (await coming).remember(key, text),
    recall: async (key) => (await coming).recall(key),
    onOtherWorkbook: (listener) => listen((host) => host.onOtherWorkbook(listener)),
  };
}

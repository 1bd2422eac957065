import { readSawJob, type SawJob } from "./sawJob.ts";

const KEY = "longpoint saw ";

/** Progress at the saw, in the browser's own storage on this machine: written at every tick, so that nothing is lost when the phone goes dark. */
export interface SawStore {
  /** The jobs by id; none where the browser keeps nothing. */
  list(): readonly { readonly id: string; readonly job: SawJob }[];
  /** An id that no job has. */
  freeId(): string;
  /** Whether it is kept. */
  keep(id: string, job: SawJob): boolean;
  remove(id: string): void;
}

/** `storage` throws where the browser forbids it. */
export function sawStore(storage: () => Storage): SawStore {
  const ids = () => {
    try {
      const own = storage();
      return Array.from({ length: own.length }, (_, i) => own.key(i) ?? "")
        .filter((key) => key.startsWith(KEY))
        .map((key) => key.slice(KEY.length))
        .sort((a, b) => Number(b) - Number(a));
    } catch {
      return [];
    }
  };
  return {
    list: () =>
      ids().flatMap((id) => {
        const job = readSawJob(storage().getItem(KEY + id) ?? "");
        return job ? [{ id, job }] : [];
      }),
    freeId: () => String(Math.max(0, ...ids().map(Number).filter(Number.isFinite)) + 1),
    keep(id, job) {
      try {
        storage().setItem(KEY + id, JSON.stringify(job));
        return true;
      } catch {
        return false;
      }
    },
    remove(id) {
      try {
        storage().removeItem(KEY + id);
      } catch {
        // What cannot be kept is not there either.
      }
    },
  };
}

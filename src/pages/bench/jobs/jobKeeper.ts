import { firstFree } from "../../../measure/firstFree.ts";
import type { Book } from "../../../xlsx/book.ts";
import { jobLock, type Release } from "./jobLock.ts";
import { JOB_FORM, StoreFault, type JobStore, type KeptJob, type NotKept } from "./jobStore.ts";

/** Milliseconds without a change before the job is kept. */
const CALM = 1_000;
/** One who never stops is kept all the same. */
const LONGEST = 15_000;

/** What a keeper needs of the page. */
export interface Keeping {
  readonly store: JobStore;
  readonly locks: LockManager | undefined;
  /** The workbook as it stands. */
  book(): Book;
  /** Shows a kept job in the sheet. */
  open(book: Book): Promise<void>;
  /** Something about the jobs, or about keeping this one, is not as it was. */
  told(): void;
}

/** How it stands with the job in the page. */
export interface JobNow {
  readonly name: string;
  readonly id: string | null;
  /** There are edits that the browser does not keep yet. */
  readonly unkept: boolean;
  /** Why it keeps nothing. */
  readonly fault: NotKept | null;
}

export interface JobKeeper {
  readonly now: JobNow;
  list(): Promise<readonly KeptJob[]>;
  /** The sheet or a field was changed. */
  changed(): void;
  /** Keeps the job, then has another workbook come into the sheet: a new job once it is changed. */
  replace<T>(title: string, open: () => Promise<T>): Promise<T>;
  /** Another workbook has come by itself: the undo of one that was opened. It must not take that one's place among the jobs. */
  replaced(): void;
  /** Keeps what is not kept yet, at once. */
  flush(): Promise<void>;
  rename(name: string): void;
  /** Takes up a kept job. "copy": another tab has it, and this one goes on under a name of its own. */
  resume(job: KeptJob): Promise<"open" | "copy" | "gone">;
  remove(job: KeptJob): Promise<void>;
}

/** Keeps the job in the page as one works, each under its name. */
export function jobKeeper({ store, locks, book, open, told }: Keeping, title: string): JobKeeper {
  let now: Omit<JobNow, "unkept"> = { name: title, id: null, fault: null };
  // Counted, for one may come while those before it are being kept.
  let changes = 0;
  let keptChanges = 0;
  let release: Release | null = null;
  // What comes in while a workbook is opened is no change, and belongs to no job yet.
  let opening = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let waitsUntil = 0;
  let keeping: Promise<void> = Promise.resolve();
  const set = (change: Partial<typeof now>) => {
    now = { ...now, ...change };
    told();
  };
  const letGo = () => {
    release?.();
    release = null;
  };

  const allKept = () => {
    clearTimeout(timer);
    timer = undefined;
    keptChanges = changes;
  };

  const keepOnce = async () => {
    clearTimeout(timer);
    timer = undefined;
    if (opening || changes === keptChanges) return;
    try {
      if (now.id === null) {
        const id = crypto.randomUUID();
        release = await jobLock(locks, id);
        const names = (await store.list()).map(({ name }) => name);
        set({ id, name: freeName(now.name, names) });
      }
      const { id, name } = now as { id: string; name: string };
      const these = changes;
      await store.keep({ id, name, changed: Date.now(), form: JOB_FORM }, { ...book(), title: name });
      // Another job may be in the sheet by now.
      if (id === now.id) keptChanges = these;
      set({ fault: null });
    } catch (error) {
      set({ fault: error instanceof StoreFault ? error.why : "forbidden" });
    }
  };
  const opened = async <T>(open: () => Promise<T>): Promise<T> => {
    opening = true;
    try {
      return await open();
    } finally {
      opening = false;
    }
  };
  // One after the other: a second would give a new job a second id.
  const flush = () => (keeping = keeping.then(keepOnce));

  return {
    get now() {
      return { ...now, unkept: changes !== keptChanges };
    },
    list: () => store.list(),
    changed() {
      if (opening) return;
      const time = performance.now();
      if (timer === undefined) waitsUntil = time + LONGEST;
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), Math.max(0, Math.min(CALM, waitsUntil - time)));
      if (changes++ === keptChanges) told();
    },
    async replace(name, openIt) {
      await flush();
      const result = await opened(openIt);
      allKept();
      letGo();
      set({ name, id: null });
      return result;
    },
    replaced() {
      if (opening) return;
      allKept();
      letGo();
      set({ id: null });
    },
    flush,
    rename(name) {
      const clean = name.trim().slice(0, 80);
      if (clean === "" || clean === now.name) return;
      changes++;
      set({ name: clean });
      void flush();
    },
    async resume(job) {
      await flush();
      const kept = await store.read(job.id);
      if (!kept) return "gone";
      const held = job.id === now.id ? release : await jobLock(locks, job.id);
      await opened(() => open(kept)).catch((error: unknown) => {
        if (job.id !== now.id) held?.();
        throw error;
      });
      if (job.id !== now.id) letGo();
      release = held;
      allKept();
      set({ name: job.name, id: held ? job.id : null });
      return held ? "open" : "copy";
    },
    async remove(job) {
      await store.remove(job.id);
      if (job.id === now.id) {
        // What is in the sheet stays there, and is a new job once it is changed.
        letGo();
        allKept();
        now = { ...now, id: null };
      }
      told();
      // There may be room now.
      if (now.fault) await flush();
    },
  };
}

/** A name that no other job has: a number behind it where there is one. */
export function freeName(name: string, taken: readonly string[]): string {
  return firstFree(taken, (n) => (n === 1 ? name : `${name} (${n})`));
}

import type { Book, Original } from "../../../xlsx/book.ts";
import { fileOf, type Originals } from "../originals.ts";

/** The form in which jobs are kept. A later one has a higher number. */
export const JOB_FORM = 3;

/** What the list of jobs shows of one. */
export interface KeptJob {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
  readonly form: number;
  /** The file that it was opened from, which is kept beside it. */
  readonly file?: string;
}

/** Why a browser keeps nothing: no room, not allowed, or a newer Longpoint has been here. */
export type NotKept = "full" | "forbidden" | "newer";

/** Jobs in the browser's own storage on this machine. What cannot be done is thrown as a {@link StoreFault}. */
export interface JobStore {
  /** All that are kept, the last changed first. */
  list(): Promise<readonly KeptJob[]>;
  read(id: string): Promise<Book | null>;
  keep(job: KeptJob, book: Book): Promise<void>;
  remove(id: string): Promise<void>;
}

export class StoreFault extends Error {
  readonly why: NotKept;
  constructor(why: NotKept, cause: unknown) {
    super(why, { cause });
    this.why = why;
  }
}

// The list is read without the books: each store has the jobs' ids.
const JOBS = "jobs";
const BOOKS = "books";
// Files that jobs were opened from, whole, by the name that each got here.
const FILES = "files";

/** The jobs that this browser keeps for the page's address, each with the file it was opened from: from `originals`, and back into it. */
export function jobStore(factory: IDBFactory | undefined, originals: Originals): JobStore {
  let opened: Promise<IDBDatabase> | null = null;
  const database = () =>
    (opened ??= open(factory, () => (opened = null)).catch((error: unknown) => {
      opened = null;
      throw fault(error);
    }));

  /** Does something in one go: all of it is kept, or nothing. */
  const inOneGo = async <T>(
    mode: IDBTransactionMode,
    act: (jobs: IDBObjectStore, books: IDBObjectStore, files: IDBObjectStore) => IDBRequest<T> | void,
  ): Promise<T> => {
    const transaction = (await database()).transaction([JOBS, BOOKS, FILES], mode);
    return new Promise<T>((resolve, reject) => {
      const request = act(
        transaction.objectStore(JOBS),
        transaction.objectStore(BOOKS),
        transaction.objectStore(FILES),
      );
      transaction.oncomplete = () => resolve(request?.result as T);
      transaction.onerror = transaction.onabort = () => reject(fault(transaction.error));
    }).catch((error: unknown) => {
      throw fault(error);
    });
  };

  return {
    async list() {
      const jobs = await inOneGo("readonly", (jobs) => jobs.getAll() as IDBRequest<KeptJob[]>);
      return jobs.sort((a, b) => b.changed - a.changed);
    },
    async read(id) {
      const book = await inOneGo("readonly", (_, books) => books.get(id) as IDBRequest<Book>);
      const file = book ? fileOf(book) : null;
      if (file !== null && !originals.get(file)) {
        const original = await inOneGo("readonly", (_, __, files) => files.get(file) as IDBRequest<Original>);
        if (original) originals.keep(file, original);
      }
      return book ?? null;
    },
    keep: (job, book) =>
      inOneGo<void>("readwrite", (jobs, books, files) => {
        const file = fileOf(book);
        jobs.put(file === null ? job : { ...job, file });
        books.put(book, job.id);
        const original = file === null ? null : originals.get(file);
        if (file === null || !original) return;
        // It never changes: once is enough.
        const there = files.getKey(file);
        there.onsuccess = () => there.result === undefined && files.put(original, file);
      }),
    remove: (id) =>
      inOneGo<void>("readwrite", (jobs, books, files) => {
        jobs.delete(id);
        books.delete(id);
        const others = jobs.getAll() as IDBRequest<KeptJob[]>;
        const kept = files.getAllKeys() as IDBRequest<string[]>;
        // A file goes with the last job that came from it.
        kept.onsuccess = () => {
          const needed = new Set(others.result.map(({ file }) => file));
          for (const file of kept.result) if (!needed.has(file)) files.delete(file);
        };
      }),
  };
}

function open(factory: IDBFactory | undefined, closed: () => void): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    // Some browsers throw where storage is switched off, others have none at all.
    const request = factory!.open("longpoint", JOB_FORM);
    request.onupgradeneeded = () => {
      const there = request.result.objectStoreNames;
      if (!there.contains(JOBS)) request.result.createObjectStore(JOBS, { keyPath: "id" });
      for (const name of [BOOKS, FILES]) if (!there.contains(name)) request.result.createObjectStore(name);
    };
    request.onerror = () => reject(request.error!);
    request.onsuccess = () => {
      const database = request.result;
      // A newer Longpoint in another tab wants it, or the user has cleared what the browser keeps.
      database.onversionchange = () => {
        database.close();
        closed();
      };
      database.onclose = closed;
      resolve(database);
    };
  });
}

function fault(error: unknown): StoreFault {
  if (error instanceof StoreFault) return error;
  const name = (error as { name?: string } | null)?.name;
  return new StoreFault(
    name === "QuotaExceededError" ? "full" : name === "VersionError" ? "newer" : "forbidden",
    error,
  );
}

import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { freeName, jobKeeper, type JobKeeper } from "../../../src/pages/bench/jobs/jobKeeper.ts";
import { JOB_FORM, StoreFault, type JobStore, type KeptJob } from "../../../src/pages/bench/jobs/jobStore.ts";
import type { Book } from "../../../src/xlsx/book.ts";

const book = (text: string): Book => ({ title: "t", sheets: [{ name: "Bid", rows: [[{ value: text }]] }] });

/** A store in memory. `fault` has it fail as a browser's may. */
function memory() {
  const jobs = new Map<string, { job: KeptJob; book: Book }>();
  const store: JobStore & { fault: StoreFault | null; jobs: typeof jobs } = {
    jobs,
    fault: null,
    list: async () => [...jobs.values()].map(({ job }) => job),
    read: async (id) => jobs.get(id)?.book ?? null,
    async keep(job, kept) {
      await Promise.resolve();
      if (store.fault) throw store.fault;
      jobs.set(job.id, { job, book: structuredClone(kept) });
    },
    remove: async (id) => void jobs.delete(id),
  };
  return store;
}

/** Locks as a browser has them, shared by its tabs. */
function lockManager(): LockManager {
  const held = new Set<string>();
  const request = async (name: string, _: object, act: (lock: object | null) => unknown) => {
    if (held.has(name)) return act(null);
    held.add(name);
    try {
      return await act({ name });
    } finally {
      held.delete(name);
    }
  };
  return { request } as unknown as LockManager;
}

let store: ReturnType<typeof memory>;
let locks: LockManager;
beforeEach(() => {
  vi.useFakeTimers();
  store = memory();
  locks = lockManager();
});
afterEach(() => void vi.useRealTimers());

/** A tab: what is in its sheet, and its keeper. */
function tab(title = "Ferry landing", onOpen = async () => {}) {
  const sheet = { text: "start" };
  let told = 0;
  const keeper: JobKeeper = jobKeeper(
    {
      store,
      locks,
      book: () => book(sheet.text),
      async open(opened) {
        sheet.text = String(opened.sheets[0]!.rows[0]![0]!.value);
        await onOpen();
      },
      told: () => told++,
    },
    title,
  );
  return {
    keeper,
    sheet,
    edit(text: string) {
      sheet.text = text;
      keeper.changed();
    },
    get told() {
      return told;
    },
  };
}
const texts = () => [...store.jobs.values()].map((one) => [one.job.name, one.book.sheets[0]!.rows[0]![0]!.value]);
const calm = () => vi.advanceTimersByTimeAsync(1_000);

describe("a job in the page", () => {
  it("is kept once it is changed, and not before", async () => {
    const t = tab();
    await calm();
    expect(texts()).toEqual([]);
    t.edit("a");
    expect(t.keeper.now).toEqual({ name: "Ferry landing", id: null, unkept: true, fault: null });
    await calm();
    expect(texts()).toEqual([["Ferry landing", "a"]]);
    expect(t.keeper.now).toMatchObject({ unkept: false, id: expect.any(String) });
    t.edit("b");
    await calm();
    expect(texts()).toEqual([["Ferry landing", "b"]]);
  });

  it("is kept though one never stops", async () => {
    const t = tab();
    for (let i = 0; i < 40; i++) {
      t.edit(`edit ${i}`);
      await vi.advanceTimersByTimeAsync(500);
    }
    expect(texts()).toHaveLength(1);
  });

  it("is not taken for kept while its last change is under way", async () => {
    const t = tab();
    const { keep } = store;
    store.keep = (job, kept) => {
      store.keep = keep;
      t.edit("b");
      return keep(job, kept);
    };
    t.edit("a");
    await t.keeper.flush();
    expect(texts()).toEqual([["Ferry landing", "a"]]);
    expect(t.keeper.now.unkept).toBe(true);
    await t.keeper.flush();
    expect(t.keeper.now.unkept).toBe(false);
    expect(texts()).toEqual([["Ferry landing", "b"]]);
  });

  it("keeps its name among others, and takes a new one", async () => {
    tab().edit("a");
    tab("ferry LANDING").edit("b");
    await calm();
    expect(texts()).toEqual([
      ["Ferry landing", "a"],
      ["ferry LANDING (2)", "b"],
    ]);
    const t = tab();
    t.keeper.rename("  Smith barn ");
    await calm();
    expect(texts()[2]).toEqual(["Smith barn", "start"]);
    t.keeper.rename("   ");
    expect(t.keeper.now.name).toBe("Smith barn");
  });
});

describe("a job that is kept", () => {
  const kept = async (text: string) => {
    const before = tab();
    before.edit(text);
    await calm();
    await before.keeper.replace("Another", async () => undefined);
    await vi.advanceTimersByTimeAsync(0);
    return [...store.jobs.values()].at(-1)!.job;
  };

  it("is taken up, and goes on under its name", async () => {
    const job = await kept("a");
    const t = tab();
    expect(await t.keeper.resume(job)).toBe("open");
    expect(t.sheet.text).toBe("a");
    t.edit("b");
    await calm();
    expect(texts()).toEqual([["Ferry landing", "b"]]);
  });

  it("is taken up only when what is in the sheet is kept", async () => {
    const job = await kept("a");
    const t = tab("Barn");
    t.edit("mine");
    expect(await t.keeper.resume(job)).toBe("open");
    expect(texts()).toEqual([
      ["Ferry landing", "a"],
      ["Barn", "mine"],
    ]);
  });

  it("is a copy where another tab has it: neither writes over the other", async () => {
    const job = await kept("a");
    const [one, two] = [tab(), tab()];
    expect(await one.keeper.resume(job)).toBe("open");
    expect(await two.keeper.resume(job)).toBe("copy");
    one.edit("of one");
    two.edit("of two");
    await calm();
    expect(texts()).toEqual([
      ["Ferry landing", "of one"],
      ["Ferry landing (2)", "of two"],
    ]);
  });

  it("can be taken up by another tab once this one has let go", async () => {
    const job = await kept("a");
    const [one, two] = [tab(), tab()];
    await one.keeper.resume(job);
    await one.keeper.replace("A file", async () => undefined);
    await vi.advanceTimersByTimeAsync(0);
    expect(await two.keeper.resume(job)).toBe("open");
  });

  it("is left alone by a file that is opened after it", async () => {
    const job = await kept("a");
    const t = tab();
    await t.keeper.resume(job);
    // It is long on its way, and comes in as edits do.
    const opened = t.keeper.replace("A file", async () => {
      t.edit("of the file");
      await new Promise((resolve) => setTimeout(resolve, 5_000));
    });
    await vi.advanceTimersByTimeAsync(5_000);
    await opened;
    expect(texts()).toEqual([["Ferry landing", "a"]]);
    t.edit("of the file, changed");
    await calm();
    expect(texts()).toEqual([
      ["Ferry landing", "a"],
      ["A file", "of the file, changed"],
    ]);
  });

  it("is taken up as itself though it is long on its way", async () => {
    const job = await kept("a");
    const t = tab("Barn", async () => {
      t.keeper.changed();
      await new Promise((resolve) => setTimeout(resolve, 5_000));
    });
    const resumed = t.keeper.resume(job);
    await vi.advanceTimersByTimeAsync(5_000);
    expect(await resumed).toBe("open");
    expect(texts()).toEqual([["Ferry landing", "a"]]);
  });

  it("is left alone by the undo of its opening", async () => {
    const job = await kept("a");
    const t = tab("Barn");
    await t.keeper.resume(job);
    t.keeper.replaced();
    t.edit("of the barn");
    await calm();
    expect(texts()).toEqual([
      ["Ferry landing", "a"],
      ["Ferry landing (2)", "of the barn"],
    ]);
  });

  it("may have gone meanwhile", async () => {
    const job = await kept("a");
    const [one, two] = [tab(), tab()];
    await one.keeper.remove(job);
    expect(await two.keeper.resume(job)).toBe("gone");
    expect(two.sheet.text).toBe("start");
  });

  it("that is in the sheet may be deleted: the sheet stays, and is a new job once it is changed", async () => {
    const t = tab();
    t.edit("a");
    await calm();
    await t.keeper.remove([...store.jobs.values()][0]!.job);
    expect(texts()).toEqual([]);
    expect(t.sheet.text).toBe("a");
    await calm();
    expect(texts()).toEqual([]);
    t.edit("b");
    await calm();
    expect(texts()).toEqual([["Ferry landing", "b"]]);
  });
});

describe("a browser that keeps nothing", () => {
  it.each(["full", "forbidden", "newer"] as const)("is told of (%s), and keeps again when it can", async (why) => {
    const t = tab();
    store.fault = new StoreFault(why, null);
    t.edit("a");
    await calm();
    expect(t.keeper.now).toMatchObject({ unkept: true, fault: why });
    store.fault = null;
    t.edit("b");
    await calm();
    expect(t.keeper.now).toMatchObject({ unkept: false, fault: null });
    expect(texts()).toEqual([["Ferry landing", "b"]]);
  });

  it("has room again once a job is deleted", async () => {
    const old: KeptJob = { id: "old", name: "Old", changed: 0, form: JOB_FORM };
    await store.keep(old, book("old"));
    const t = tab();
    store.fault = new StoreFault("full", null);
    t.edit("a");
    await calm();
    const { remove } = store;
    store.remove = async (id) => {
      await remove(id);
      store.fault = null;
    };
    await t.keeper.remove(old);
    expect(texts()).toEqual([["Ferry landing", "a"]]);
  });
});

it.each([
  ["Barn", [], "Barn"],
  ["Barn", ["barn"], "Barn (2)"],
  ["Barn", ["Barn", "Barn (2)"], "Barn (3)"],
])("%s beside %j is %s", (name, taken, free) => {
  expect(freeName(name, taken)).toBe(free);
});

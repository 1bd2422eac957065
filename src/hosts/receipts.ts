import type { Written } from "./host.ts";

/** What a host keeps of its writes, by what it handed out for each, so that each is taken back once at most. */
export class Receipts<Kept> {
  readonly #kept = new WeakMap<Written, Kept | "taken back">();

  keep(written: Written, kept: Kept): Written {
    this.#kept.set(written, kept);
    return written;
  }

  /**
   * Takes a write back, unless that was done.
   *
   * @param back what it takes; it gives the addresses of cells that were edited since, and then has changed nothing.
   */
  async takeBack(written: Written, back: (kept: Kept) => Promise<readonly string[]>): Promise<readonly string[]> {
    const kept = this.#kept.get(written);
    if (kept === undefined) throw new Error("This write is not known any more and cannot be taken back.");
    if (kept === "taken back") return [];
    // Marked at once: a second press before the sheet has answered would take what the first put back for edits.
    this.#kept.set(written, "taken back");
    let edited: readonly string[] | null = null;
    try {
      edited = await back(kept);
      return edited;
    } finally {
      if (edited?.length !== 0) this.#kept.set(written, kept);
    }
  }
}

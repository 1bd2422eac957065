import { bookOf } from "../../hosts/embedded/bookOf.ts";
import type { EmbeddedSheet } from "../../hosts/embedded/runningSheet.ts";
import { element } from "./element.ts";
import "./fileBar.css";
import { fileWords } from "./fileWords.ts";
import { fileOf, Originals } from "./originals.ts";
import { picturesOf, showPictures } from "./filePictures.ts";
import { askName } from "./askName.ts";
import { download, fileToSave, unknownCells } from "./saveFile.ts";
import { jobKeeper, type JobKeeper } from "./jobs/jobKeeper.ts";
import { jobPanel } from "./jobs/jobPanel.ts";
import { JOB_FORM, jobStore, type KeptJob } from "./jobs/jobStore.ts";
import { jobWords } from "./jobs/jobWords.ts";
import { leaveGuard } from "./jobs/leaveGuard.ts";
import { openBook } from "../../hosts/embedded/openBook.ts";
import { isSample, sampleFile, SAMPLES } from "./sampleFiles.ts";
import { watchEdits } from "../../hosts/embedded/watchEdits.ts";
import { whenCalculated } from "../../hosts/embedded/whenCalculated.ts";
import { readFile } from "./readFile.ts";
import { printSheet } from "./printSheet.ts";
import type { Start } from "./startBook.ts";

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** What the bar does, for the page's keys, and what it is told. */
export interface FileActions {
  save(): void;
  print(): void;
  /** The pane has put something new into the workbook's kept texts. */
  changed(): void;
  /** Another workbook has come into the sheet. */
  other(): void;
  /** Keeps what is not kept yet, at once. */
  flush(): Promise<void>;
}

/** The bar above the sheet: opens a sample, a file or a job, saves the sheets as a file, prints, and says what was not kept. */
export function fileBar(bar: HTMLElement, sheet: EmbeddedSheet, start: Start): FileActions {
  // Changes that a file has need no asking.
  let inFile = false;
  const samples = element("select", {}, [
    new Option(fileWords.choose, ""),
    ...Object.entries(SAMPLES).map(([name, words]) => new Option(words, name)),
  ]);
  const open = element("button", { type: "button", textContent: fileWords.open });
  const save = element("button", { type: "button", textContent: fileWords.save });
  const plain = element("button", { type: "button", textContent: fileWords.savePlain });
  const print = element("button", { type: "button", textContent: fileWords.print.button });
  const file = element("input", { type: "file", accept: `.xlsx,.xlsm,${TYPE}`, hidden: true });
  const says = element("p", {});
  says.setAttribute("role", "status");
  const close = element("button", { type: "button", textContent: "×", className: "close" });
  close.setAttribute("aria-label", fileWords.close);
  const message = element("div", { className: "message" }, [says, close]);
  bar.append(element("label", {}, [`${fileWords.samples} `, samples]), open, save, plain, print, file);

  const say = (text: string, ...buttons: HTMLElement[]) => {
    says.textContent = text;
    message.replaceChildren(says, ...buttons, close);
    message.classList.toggle("shown", text !== "");
  };
  /** One thing at a time: a second press would open a file into a file. */
  const busy = async (
    doing: string,
    work: () => Promise<string | readonly [string, HTMLElement]>,
    ...buttons: HTMLElement[]
  ) => {
    const controls = [samples, open, save, plain, print];
    const focused = controls.find((control) => control === document.activeElement);
    for (const control of controls) control.disabled = true;
    say(doing, ...buttons);
    const end = await work();
    if (typeof end === "string") say(end);
    else say(...end);
    for (const control of controls) control.disabled = false;
    // A control that is out of use has lost the focus, and the keyboard its place, unless the user has gone elsewhere since.
    if (document.activeElement === document.body) focused?.focus();
  };
  let told = () => {};
  const originals = new Originals();
  // Opened files that have not been saved yet: the first save offers another name, so that the user's own stays as it is.
  const unsaved = new Set<string>();
  const keeper = jobKeeper(
    {
      store: jobStore(globalThis.indexedDB, originals),
      locks: navigator.locks,
      book: () => bookOf(sheet, start.book.title).book,
      open: async (book) => {
        await openBook(sheet, book);
        const file = fileOf(book);
        const original = file === null ? null : originals.get(file);
        if (file !== null && original) await showPictures(sheet, file, await picturesOf(original));
      },
      told: () => told(),
    },
    start.book.title,
  );
  const changed = () => {
    inFile = false;
    keeper.changed();
  };
  watchEdits(sheet, changed);
  leaveGuard(
    () => keeper.now.unkept && !inFile,
    () => void keeper.flush(),
  );
  const resume = (job: KeptJob) =>
    void busy(jobWords.resuming(job.name), async () => {
      try {
        const how = await keeper.resume(job);
        return how === "open"
          ? jobWords.resumed(job.name)
          : how === "copy"
            ? jobWords.copy(job.name)
            : jobWords.gone(job.name);
      } catch (error) {
        return jobWords.notResumed(job.name, (error as Error).message);
      }
    });
  told = jobPanel(bar, keeper, { say, resume }).told;
  bar.append(message);

  /** @param disk a file of the user's own, which is kept whole beside its sheets; a sample is all in them. */
  const show = (name: string, bytes: () => Promise<Uint8Array>, disk?: File) => {
    const stopping = new AbortController();
    const stop = element("button", { type: "button", textContent: fileWords.stop });
    stop.addEventListener("click", () => stopping.abort(new Error(fileWords.stopped)));
    const { signal } = stopping;
    let told = fileWords.opening(name);
    const progress = (done: number, of: number) => {
      const text =
        done < of ? fileWords.building(name, Math.floor((10 * done) / of) * 10) : fileWords.calculating(name);
      if (text !== told) say((told = text), ...(done < of ? [stop] : []));
    };
    const opened = async () => {
      try {
        const own = disk && crypto.getRandomValues(new Uint32Array(4)).join("-");
        const all = await bytes();
        const { book, left, pictures } = await readFile([all, name.replace(/\.xls[xm]$/i, ""), own], signal);
        const others = await keeper.replace(book.title, () => openBook(sheet, book, { signal, progress }));
        if (own) {
          const as = bookOf(sheet, book.title).book;
          originals.keep(own, { bytes: all, as, unknown: unknownCells(as, book) }, disk);
          unsaved.add(own);
          await showPictures(sheet, own, pictures);
        }
        return fileWords.opened(book.title, left, others, disk !== undefined);
      } catch (error) {
        const { name: kind, message } = error as Error;
        const gone = kind === "NotReadableError" || kind === "NotFoundError";
        return fileWords.notOpened(name, gone ? fileWords.changedOnDisk : message);
      }
    };
    return busy(told, opened, stop);
  };

  samples.addEventListener("change", () => {
    const name = samples.value;
    samples.value = "";
    if (isSample(name)) void show(SAMPLES[name], () => sampleFile(name));
  });
  open.addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const chosen = file.files?.[0];
    if (chosen)
      void show(chosen.name, async () => new Uint8Array(await chosen.arrayBuffer()), chosen).finally(
        () => void (file.value = ""),
      );
  });
  const saveNow = () =>
    void busy(fileWords.saving, async () => {
      try {
        const title = keeper.now.name;
        const ready = await fileToSave(sheet, originals, title);
        if (ready.from !== null && unsaved.has(ready.from))
          return askName(fileWords.newName(title, ready.left), fileWords.offered(title), (name) => {
            unsaved.delete(ready.from!);
            keeper.rename(name);
            saveNow();
          });
        download(ready, TYPE);
        inFile = true;
        return fileWords.saved(ready);
      } catch (error) {
        return fileWords.notSaved((error as Error).message);
      }
    });
  const savePlain = () =>
    void busy(fileWords.saving, async () => {
      try {
        const ready = await fileToSave(sheet, originals, keeper.now.name, true);
        download(ready, TYPE);
        return fileWords.savedPlain(ready);
      } catch (error) {
        return fileWords.notSaved((error as Error).message);
      }
    });
  const printNow = () =>
    void busy("", async () => {
      await whenCalculated(sheet);
      return printSheet(sheet, keeper.now.name);
    });
  save.addEventListener("click", saveNow);
  plain.addEventListener("click", savePlain);
  print.addEventListener("click", printNow);
  close.addEventListener("click", () => say(""));
  say(start.says);
  if (start.says === "") void offerLast(keeper, say, resume);
  // A key pressed while something is under way asks for nothing more.
  return {
    save: () => save.disabled || saveNow(),
    print: () => print.disabled || printNow(),
    changed,
    other: () => keeper.replaced(),
    flush: () => keeper.flush(),
  };
}

/** Offers to go on with the job that was changed last. */
async function offerLast(
  keeper: JobKeeper,
  say: (text: string, ...buttons: HTMLButtonElement[]) => void,
  resume: (job: KeptJob) => void,
): Promise<void> {
  const [last] = await keeper.list().catch(() => []);
  if (!last || last.form > JOB_FORM) return;
  const go = element("button", { type: "button", textContent: jobWords.resume });
  go.addEventListener("click", () => resume(last));
  say(jobWords.offer(last.name, last.changed), go);
}

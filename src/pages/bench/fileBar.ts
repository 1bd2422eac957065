import { bookOf } from "../../hosts/embedded/bookOf.ts";
import type { EmbeddedSheet } from "../../hosts/embedded/runningSheet.ts";
import { element } from "./element.ts";
import "./fileBar.css";
import { fileWords } from "./fileWords.ts";
import { leaveGuard } from "../../hosts/embedded/leaveGuard.ts";
import { openBook } from "../../hosts/embedded/openBook.ts";
import { isSample, sampleFile, SAMPLES } from "./sampleFiles.ts";
import { whenCalculated } from "../../hosts/embedded/whenCalculated.ts";
import { printSheet } from "./printSheet.ts";
import type { Start } from "./startBook.ts";

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** What the bar does, for the page's keys. */
export interface FileActions {
  save(): void;
  print(): void;
}

/** The bar above the sheet: opens a sample or a file of the user's, saves the sheets as a file, prints, and says what was not kept. */
export function fileBar(bar: HTMLElement, sheet: EmbeddedSheet, start: Start): FileActions {
  let { title } = start.book;
  const guard = leaveGuard(sheet);
  const samples = element("select", {}, [
    new Option(fileWords.choose, ""),
    ...Object.entries(SAMPLES).map(([name, words]) => new Option(words, name)),
  ]);
  const open = element("button", { type: "button", textContent: fileWords.open });
  const save = element("button", { type: "button", textContent: fileWords.save });
  const print = element("button", { type: "button", textContent: fileWords.print.button });
  const file = element("input", { type: "file", accept: `.xlsx,${TYPE}`, hidden: true });
  const says = element("p", {});
  says.setAttribute("role", "status");
  const close = element("button", { type: "button", textContent: "×", className: "close" });
  close.setAttribute("aria-label", fileWords.close);
  const message = element("div", { className: "message" }, [says, close]);
  bar.append(element("label", {}, [`${fileWords.samples} `, samples]), open, save, print, file, message);

  const say = (text: string) => {
    says.textContent = text;
    message.classList.toggle("shown", text !== "");
  };
  /** One thing at a time: a second press would open a file into a file. */
  const busy = async (doing: string, work: () => Promise<string>) => {
    const controls = [samples, open, save, print];
    const focused = controls.find((control) => control === document.activeElement);
    for (const control of controls) control.disabled = true;
    say(doing);
    say(await work());
    for (const control of controls) control.disabled = false;
    // A control that is out of use has lost the focus, and the keyboard its place, unless the user has gone elsewhere since.
    if (document.activeElement === document.body) focused?.focus();
  };
  const show = (name: string, bytes: () => Promise<Uint8Array>) =>
    busy(fileWords.opening(name), async () => {
      try {
        const { readBook } = await import("../../xlsx/readBook.ts");
        const { book, left } = await readBook(await bytes(), name.replace(/\.xlsx$/i, ""));
        const others = await openBook(sheet, book);
        title = book.title;
        guard.saved();
        return fileWords.opened(title, left, others);
      } catch (error) {
        return fileWords.notOpened(name, (error as Error).message);
      }
    });

  samples.addEventListener("change", () => {
    const name = samples.value;
    samples.value = "";
    if (isSample(name)) void show(SAMPLES[name], () => sampleFile(name));
  });
  open.addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const chosen = file.files?.[0];
    if (chosen)
      void show(chosen.name, async () => new Uint8Array(await chosen.arrayBuffer())).finally(
        () => void (file.value = ""),
      );
  });
  const saveNow = () =>
    void busy(fileWords.saving, async () => {
      try {
        const { writeBook } = await import("../../xlsx/writeBook.ts");
        await whenCalculated(sheet);
        const { book, left } = bookOf(sheet, title);
        const name = `${fileName(title)}.xlsx`;
        download(await writeBook(book), name);
        guard.saved();
        return fileWords.saved(name, book.sheets.length, left);
      } catch (error) {
        return fileWords.notSaved((error as Error).message);
      }
    });
  const printNow = () =>
    void busy("", async () => {
      await whenCalculated(sheet);
      return printSheet(sheet, title);
    });
  save.addEventListener("click", saveNow);
  print.addEventListener("click", printNow);
  close.addEventListener("click", () => say(""));
  say(start.says);
  // A key pressed while something is under way asks for nothing more.
  return { save: () => save.disabled || saveNow(), print: () => print.disabled || printNow() };
}

function download(bytes: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type: TYPE }));
  element("a", { href: address, download: name }).click();
  // The browser has taken hold of it by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A title as a file may be named on any system. */
function fileName(title: string): string {
  return (
    title
      .replace(/[\\/:*?"<>|\u0000-\u001f]+/g, " ")
      .replace(/\s+/g, " ")
      .trim()
      .slice(0, 80) || "Longpoint"
  );
}

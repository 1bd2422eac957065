import type { EmbeddedSheet } from "../../hosts/embedded/runningSheet.ts";
import { printedSheet } from "../../hosts/embedded/printedSheet.ts";
import { selectedRange } from "../../hosts/embedded/selectedRange.ts";
import { element } from "./element.ts";
import { fileWords } from "./fileWords.ts";
import { printPage } from "./printPage.ts";

/** Prints the active sheet, or the selection where several cells are selected and the user says so. Gives what there is to say after it. */
export async function printSheet(sheet: EmbeddedSheet, title: string): Promise<string> {
  const words = fileWords.print;
  const selection = selectedRange(sheet);
  const whole = printedSheet(sheet, title, null);
  const part = selection && printedSheet(sheet, title, selection);
  const chosen = whole && part ? await choose(whole, part) : (whole ?? part);
  if (!whole) return words.nothing;
  if (!chosen) return "";
  await printPage(chosen.html, words.title(chosen.place));
  return words.done(chosen.place);
}

type Printed = NonNullable<ReturnType<typeof printedSheet>>;

function choose(whole: Printed, part: Printed): Promise<Printed | null> {
  const words = fileWords.print;
  const button = (text: string, value: string) => element("button", { type: "submit", textContent: text, value });
  const form = element("form", { method: "dialog" }, [
    element("p", { textContent: words.ask }),
    button(words.sheet(whole.place), "whole"),
    button(words.selection(part.place), "part"),
    button(words.cancel, ""),
  ]);
  const dialog = element("dialog", { className: "choice" }, [form]);
  dialog.setAttribute("aria-label", words.ask);
  document.body.append(dialog);
  dialog.showModal();
  return new Promise((resolve) =>
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(dialog.returnValue === "whole" ? whole : dialog.returnValue === "part" ? part : null);
    }),
  );
}

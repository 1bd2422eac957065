import type { SavedFile } from "./saveFile.ts";

/** What the file bar says. */
export const fileWords = {
  samples: "Samples",
  width: "Width of the pane",
  choose: "Choose one …",
  open: "Open .xlsx …",
  save: "Save .xlsx",
  savePlain: "Save a copy with plain values",
  name: "Name",
  saveNamed: "Save under this name",
  offered: (title: string) => `${title} (changed)`.slice(0, 80),
  newName: (title: string, left: readonly string[]) =>
    [`Save under another name, so that ${title} stays as it is.`, notKept("Not kept in it", left)]
      .filter(Boolean)
      .join(" "),
  close: "Close this message",
  opening: (name: string) => `Opening ${name} …`,
  building: (name: string, percent: number) => `Opening ${name}: ${percent} % …`,
  calculating: (name: string) => `Calculating ${name} …`,
  stop: "Stop",
  stopped: "You stopped it.",
  opened: (title: string, left: readonly string[], others: readonly string[], whole: boolean) =>
    [
      `${title} is open. Undo brings back the sheets that were here.`,
      notKept(whole ? "Not shown here, but saved with the file as it is" : "Not kept from the file", left),
      different(others),
    ]
      .filter(Boolean)
      .join(" "),
  started: (title: string, left: readonly string[]) =>
    [`${title} is open.`, notKept("Not kept from the file", left)].filter(Boolean).join(" "),
  notOpened: (name: string, why: string) => `${name} was not opened. ${why} Your sheets are as they were.`,
  changedOnDisk: "The file was changed or moved after you chose it. Choose it again.",
  noSample: (name: string, known: readonly string[]) =>
    `There is no sample named "${name}". The samples are: ${known.join(", ")}.`,
  saving: "Saving …",
  saved: ({ name, sheets, left, ours, unknown, changedOnDisk }: SavedFile) =>
    [
      `${name} holds ${sheetsOf(sheets)} with formulas, values and formats.`,
      ours > 0 &&
        `Programs without this add-in show #NAME? in ${ours === 1 ? "1 cell" : `${ours.toLocaleString("en")} cells`} of RAFTER functions, and in what is calculated from them. A copy with plain values reads well everywhere.`,
      unknown > 0 &&
        `${unknown === 1 ? "1 cell uses a function" : `${unknown.toLocaleString("en")} cells use functions`} not known here and may hold an old value until the program that made the file opens it.`,
      notKept("Not kept in it", left),
      changedOnDisk && changed(changedOnDisk),
    ]
      .filter(Boolean)
      .join(" "),
  savedPlain: ({ name, sheets, left, changedOnDisk }: SavedFile) =>
    [
      `${name} holds ${sheetsOf(sheets)}, with the value of every RAFTER formula in its place. Your sheets keep their formulas.`,
      notKept("Not kept in it", left),
      changedOnDisk && changed(changedOnDisk),
    ]
      .filter(Boolean)
      .join(" "),
  print: {
    button: "Print",
    ask: "Print what?",
    sheet: (place: string) => `The sheet, ${place}`,
    selection: (place: string) => `The selection, ${place}`,
    cancel: "Cancel",
    title: (place: string) => `${place} for the printer`,
    nothing: "There is nothing on this sheet to print.",
    done: (place: string) => `${place} went to the printer.`,
  },
  find: {
    label: "Find in all sheets",
    next: "Next",
    previous: "Previous",
    close: "Close the search",
    found: (at: number, of: number) => `${at} of ${of}`,
    nothing: (text: string) => `No cell holds "${text}".`,
    by: "Replace with",
    replace: "Replace",
    all: "Replace all",
    replaced: (cells: number, found: number) =>
      cells === 0
        ? "Nothing was replaced: these cells show it as a result. Change what they are calculated from."
        : `Replaced in ${cells === 1 ? "1 cell" : `${cells.toLocaleString("en")} cells`}; one undo takes it back.${found > cells ? ` ${(found - cells).toLocaleString("en")} more show it as a result.` : ""}`,
  },
  notSaved: (why: string) => `The workbook was not saved: ${why}`,
} as const;

const sheetsOf = (count: number) => (count === 1 ? "the sheet" : `all ${count} sheets`);

const changed = (file: string) =>
  `${file} was changed or moved on the disk after it was opened here. The saved file has what was opened and your changes, not those made there.`;

function notKept(lead: string, left: readonly string[]): string {
  return left.length > 0 ? `${lead}: ${left.join("; ")}.` : "";
}

function different(addresses: readonly string[]): string {
  if (addresses.length === 0) return "";
  const shown = addresses.slice(0, 5).join(", ");
  const more = addresses.length > 5 ? ` and ${addresses.length - 5} more` : "";
  return `${addresses.length === 1 ? "This cell shows" : "These cells show"} another value here than in the file: ${shown}${more}.`;
}

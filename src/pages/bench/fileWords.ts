/** What the file bar says. */
export const fileWords = {
  samples: "Samples",
  choose: "Choose one …",
  open: "Open .xlsx …",
  save: "Save .xlsx",
  close: "Close this message",
  opening: (name: string) => `Opening ${name} …`,
  opened: (title: string, left: readonly string[], others: readonly string[]) =>
    [
      `${title} is open. Undo brings back the sheets that were here.`,
      notKept("Not kept from the file", left),
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
  saved: (file: string, sheets: number, left: readonly string[]) =>
    [
      `${file} holds ${sheets === 1 ? "the sheet" : `all ${sheets} sheets`} with formulas, values and formats.`,
      notKept("Not kept in it", left),
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
  },
  notSaved: (why: string) => `The workbook was not saved: ${why}`,
} as const;

function notKept(lead: string, left: readonly string[]): string {
  return left.length > 0 ? `${lead}: ${left.join("; ")}.` : "";
}

function different(addresses: readonly string[]): string {
  if (addresses.length === 0) return "";
  const shown = addresses.slice(0, 5).join(", ");
  const more = addresses.length > 5 ? ` and ${addresses.length - 5} more` : "";
  return `${addresses.length === 1 ? "This cell shows" : "These cells show"} another value here than in the file: ${shown}${more}.`;
}

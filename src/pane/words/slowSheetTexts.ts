/** What is said where a sheet is slow or fails, where nothing may be printed, and of copies to hand on. */
export const slowSheetTexts = {
  writing: (done: number, of: number) => `Writing, ${done} of ${of} cells`,
  working: "Working it out",
  stop: "Stop",
  stopped: "Stopped. Nothing was written.",
  failed: (why: string) => `Nothing was written. ${why}`,
  copyPlain: "Copy this sheet with plain values",
  plainSheet: (sheet: string) => `${sheet} plain`,
  plainCopied: (sheet: string, copy: string) =>
    `${copy} holds what ${sheet} shows, without formulas. It does not follow the roof.`,
  noAnswer:
    "The sheet has not answered for 10 seconds. It may still do what was asked: look at it before you try again.",
  undoFailed: (why: string) => `The undo is not finished. ${why} Press it again.`,
  noPrint: "No print window came: printing is switched off here.",
  printElsewhere: "Open it in the browser and print there",
};

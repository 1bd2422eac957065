/** What people can do about Excel's commonest errors, by Excel's code. */
const WORDS: Readonly<Record<string, string>> = {
  AccessDenied:
    "Excel does not allow it: the sheet or the workbook is protected. Unprotect it (Review, Unprotect Sheet) and try again.",
  InvalidOperationInCellEditMode:
    "Excel is waiting for a cell to be finished. Press Enter or Esc in the sheet and try again.",
  ItemNotFound: "A sheet or a cell that was there a moment ago is gone. Try again.",
};

/** Runs a job on the workbook. It waits until the user has finished a cell; what Excel refuses is told in words. */
export async function inExcel<T>(job: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, job);
  } catch (error) {
    const words = WORDS[(error as { code?: string }).code ?? ""];
    throw words ? new Error(words, { cause: error }) : error;
  }
}

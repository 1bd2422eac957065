/** Opens a page beside the pane's in the system's browser; Excel on the web, which is in one, opens a tab. */
export function openPage(address: string): void {
  const url = new URL(address, location.href).href;
  if (Office.context.requirements.isSetSupported("OpenBrowserWindowApi", "1.1"))
    Office.context.ui.openBrowserWindow(url);
  else window.open(url, "_blank", "noopener");
}

let large: Office.Dialog | null = null;

/** Shows a page in a dialog of Excel, nearly as large as its window, in the place of the one before; where Excel opens none, in the browser. */
export function openLarge(address: string): Promise<boolean> {
  const url = new URL(address, location.href).href;
  large?.close();
  large = null;
  const elsewhere = () => {
    try {
      openPage(url);
      return true;
    } catch {
      return false;
    }
  };
  if (!Office.context.requirements.isSetSupported("DialogApi", "1.1")) return Promise.resolve(elsewhere());
  return new Promise((resolve) => {
    // On the web over the workbook, where no pop-up must be allowed.
    Office.context.ui.displayDialogAsync(url, { height: 90, width: 90, displayInIframe: true }, ({ status, value }) => {
      if (status === Office.AsyncResultStatus.Failed) return resolve(elsewhere());
      large = value;
      // Once the user has closed it there is nothing to close.
      value.addEventHandler(Office.EventType.DialogEventReceived, () => (large = null));
      resolve(true);
    });
  });
}

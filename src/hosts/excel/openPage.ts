/** Opens a page beside the pane's in the system's browser; Excel on the web, which is in one, opens a tab. */
export function openPage(address: string): void {
  const url = new URL(address, location.href).href;
  if (Office.context.requirements.isSetSupported("OpenBrowserWindowApi", "1.1"))
    Office.context.ui.openBrowserWindow(url);
  else window.open(url, "_blank", "noopener");
}

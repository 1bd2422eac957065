/** Prints a whole document (HTML text) without showing it, and is done when the browser's print is over and the keyboard is where it was. */
export function printPage(html: string, title: string): Promise<void> {
  const before = document.activeElement;
  const frame = document.createElement("iframe");
  frame.title = title;
  frame.className = "printed";
  frame.srcdoc = html;
  return new Promise((resolve) => {
    frame.addEventListener("load", () => {
      const pages = frame.contentWindow!;
      pages.addEventListener("afterprint", () => {
        frame.remove();
        if (before instanceof HTMLElement) before.focus();
        resolve();
      });
      pages.focus();
      pages.print();
    });
    document.body.append(frame);
  });
}

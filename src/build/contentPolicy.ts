const OFFICE = "https://appsforoffice.microsoft.com";

/**
 * What a page may load and ask for: its own files and nothing else, so that no cell's value can leave it.
 *
 * The pages hold it in a `meta` element, for any server; ours sends it too. Styles in elements are the sheet's and the drawings'.
 *
 * @param office for Excel's pane: Office.js comes from its maker's address.
 */
export function contentPolicy({ office = false } = {}): string {
  return [
    "default-src 'self'",
    `script-src 'self'${office ? ` ${OFFICE}` : ""}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "frame-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/**
 * What the add-in's pages may load: their own files, and Office.js from its vendor. Nothing else is asked for, so nothing of a workbook can leave the machine.
 *
 * Styles stand in the drawings themselves, and pictures are drawn from data: addresses. Excel on the web shows the pane in a frame of its own, so frames are
 * not limited. `connect-src` is not named: nothing is fetched.
 */
export const POLICY =
  "default-src 'self'; script-src 'self' https://appsforoffice.microsoft.com; style-src 'self' 'unsafe-inline'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'none'";

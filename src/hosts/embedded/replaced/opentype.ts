/** Stands in for the package opentype.js in the page: it reads the machine's own font files, which nobody here asks the browser for. */
export function parse(): never {
  throw new Error("Font files are not read here.");
}

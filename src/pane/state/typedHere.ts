/** A function's message as it is said at a field: without the argument's name, and what to type stands there as in no formula. */
export function typedHere(message: string): string {
  const said = message.replace(/^[a-z]\w*: (.)/, (_, first: string) => first.toUpperCase());
  const at = said.indexOf("Type ");
  // A quote that opens follows a space; an inch mark follows a figure.
  return at < 0
    ? said
    : said.slice(0, at) +
        said
          .slice(at)
          .replace(/(?<=\s)"([^"]+)"(?=[\s,.;])/g, "$1")
          .replace(/\{([^}]*)\}/g, (_, list: string) => list.replaceAll(",", ", "));
}

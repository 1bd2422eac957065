/** A function's message as it is said at a field: what to type stands there without the quotes that a formula would want around it. */
export function typedHere(message: string): string {
  const at = message.indexOf("Type ");
  // A quote that opens follows a space; an inch mark follows a figure.
  return at < 0 ? message : message.slice(0, at) + message.slice(at).replace(/(?<=\s)"([^"]+)"(?=[\s,.;])/g, "$1");
}

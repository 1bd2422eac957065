/**
 * Text as it may stand in HTML and SVG, inside quotes too.
 *
 * @example
 * escaped('2" < 3"') // => "2&#34; &#60; 3&#34;"
 */
export function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);
}

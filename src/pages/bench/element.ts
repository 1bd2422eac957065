/** Makes an element with properties and children. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  has: Partial<HTMLElementTagNameMap[Tag]>,
  children: readonly (Node | string)[] = [],
): HTMLElementTagNameMap[Tag] {
  const made = Object.assign(document.createElement(tag), has);
  made.append(...children);
  return made;
}

/** An element of a drawing: what is written of it, where it stands in the whole, and what the browser made of it. */
interface Part {
  readonly name: string;
  /** Names and values in turn, a name with the signs round it. */
  readonly attributes: readonly string[];
  /** At its head. */
  readonly text: string;
  readonly parts: Part[];
  readonly from: number;
  to: number;
  element?: Element;
}

/**
 * Puts drawings (SVG text) into an element, one in the place of the other. What is alike in both stays: a browser takes most of its time for
 * making, styling and shaping elements.
 */
export function redrawn(place: Element): (svg: string) => void {
  let was: Part | undefined;
  return (svg) => {
    const now = svg === "" ? undefined : read(svg);
    if (was && now) change(was, now, svg);
    else {
      place.innerHTML = svg;
      if (now) made(now, place.firstElementChild!);
    }
    was = now;
  };
}

/** Reads what a canvas writes: tags, attributes in double quotes, texts. */
function read(svg: string): Part {
  const open: Part[] = [];
  for (let from = 0; ;) {
    const to = svg.indexOf(">", from) + 1;
    const next = svg.indexOf("<", to);
    if (svg[from + 1] === "/") {
      const part = open.pop()!;
      part.to = to;
      if (open.length === 0) return part;
    } else {
      const [tag, ...attributes] = svg.slice(from + 1, to).split('"');
      const single = svg[to - 2] === "/";
      const part: Part = {
        name: /^\w+/.exec(tag!)![0],
        attributes: [tag!.slice(tag!.indexOf(" ")), ...attributes],
        text: single ? "" : svg.slice(to, next),
        parts: [],
        from,
        to,
      };
      open.at(-1)?.parts.push(part);
      if (!single) open.push(part);
    }
    from = next;
  }
}

/** Keeps what the browser made of it. */
function made(part: Part, element: Element): void {
  part.element = element;
  part.parts.forEach((one, i) => made(one, element.children[i]!));
}

/** Makes what it was what it is to be. */
function change(was: Part, now: Part, svg: string): void {
  const element = was.element!;
  now.element = element;
  const [before, after] = [was.attributes, now.attributes];
  // After the last value comes the tag's end.
  for (let i = 0; i < before.length - 1; i += 2)
    if (before[i] !== after[i] && !after.includes(before[i]!)) element.removeAttribute(nameOf(before[i]!));
  for (let i = 0; i < after.length - 1; i += 2)
    if (before[i] !== after[i] || before[i + 1] !== after[i + 1])
      element.setAttribute(nameOf(after[i]!), plain(after[i + 1]!));
  if (was.text !== now.text) element.textContent = plain(now.text);
  let i = 0;
  for (const part of now.parts) {
    // One that is no longer there, such as the ground of a text, or one that is new.
    if (was.parts[i]?.name !== part.name && was.parts[i + 1]?.name === part.name) was.parts[i++]!.element!.remove();
    const old = was.parts[i];
    if (old?.name === part.name) {
      change(old, part, svg);
      i++;
      continue;
    }
    const text = svg.slice(part.from, part.to);
    if (old) old.element!.insertAdjacentHTML("beforebegin", text);
    else element.insertAdjacentHTML("beforeend", text);
    made(part, old ? old.element!.previousElementSibling! : element.lastElementChild!);
  }
  for (const old of was.parts.slice(i)) old.element!.remove();
}

/** A name without ` ` before and `=` after it. */
const nameOf = (written: string) => written.slice(1, -1);

/** What `escaped` wrote. */
const plain = (text: string) =>
  text.includes("&") ? text.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code))) : text;

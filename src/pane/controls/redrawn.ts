/** An element of a drawing: what is written of it, and what the browser has of it. */
interface Part {
  readonly name: string;
  /** What it is known by from drawing to drawing: its name with its text, with the piece that it is, or with how its texts look. */
  readonly key: string;
  /** Names and values in turn, a name with the signs round it. */
  readonly attributes: readonly string[];
  /** At its head. */
  readonly text: string;
  readonly parts: Part[];
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
    if (was && now) change(was, now);
    else place.replaceChildren(...(now ? [made(now, place.ownerDocument)] : []));
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
      if (open.length === 0) return part;
    } else {
      const [tag, ...attributes] = svg.slice(from + 1, to).split('"');
      const single = svg[to - 2] === "/";
      const name = /^\w+/.exec(tag!)![0];
      const text = single ? "" : svg.slice(to, next);
      const part: Part = {
        name,
        key: tag!.endsWith("piece=")
          ? `${name} ${attributes[0]} ${attributes[2]}`
          : `${name} ${text || (name === "text" && svg.slice(from, to))}`,
        attributes: [tag!.slice(tag!.indexOf(" ")), ...attributes],
        text,
        parts: [],
      };
      open.at(-1)?.parts.push(part);
      if (!single) open.push(part);
    }
    from = next;
  }
}

/** An element made of it, which it keeps: for the few that come with a key quicker than the browser's reading of a text. */
function made(part: Part, page: Document): Element {
  const element = (part.element = page.createElementNS("http://www.w3.org/2000/svg", part.name));
  for (let i = 0; i < part.attributes.length - 1; i += 2)
    element.setAttribute(nameOf(part.attributes[i]!), plain(part.attributes[i + 1]!));
  if (part.text !== "") element.textContent = plain(part.text);
  element.append(...part.parts.map((one) => made(one, page)));
  return element;
}

/** Makes what it was what it is to be. */
function change(was: Part, now: Part): void {
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
  const [gone, come] = [was.parts, now.parts];
  let i = 0;
  for (const [k, part] of come.entries()) {
    let old = gone[i];
    let stays = old?.key === part.key;
    if (old && !stays) {
      // Either some before it are gone or some are new, whichever are fewer; one that is nowhere else becomes the other.
      const [away, back] = [stepsTo(part, gone, i), stepsTo(old, come, k)];
      stays = away <= back && (away < Infinity || old.name === part.name);
      if (stays && away < Infinity) {
        for (const one of gone.slice(i, i + away)) one.element!.remove();
        old = gone[(i += away)];
      }
    }
    if (stays) {
      change(old!, part);
      i++;
      continue;
    }
    element.insertBefore(made(part, element.ownerDocument), old?.element ?? null);
  }
  for (const old of gone.slice(i)) old.element!.remove();
}

/** How far on in a list the next one is that is known as this one; Infinity where there is none. */
function stepsTo({ key }: Part, list: readonly Part[], from: number): number {
  for (let i = from; i < list.length; i++) if (list[i]!.key === key) return i - from;
  return Infinity;
}

/** A name without ` ` before and `=` after it. */
const nameOf = (written: string) => written.slice(1, -1);

/** What `escaped` wrote. */
const plain = (text: string) =>
  text.includes("&") ? text.replace(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code))) : text;

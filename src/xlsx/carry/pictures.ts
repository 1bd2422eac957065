import { fileSheets } from "./fileSheets.ts";
import type { Parts } from "./parts.ts";
import { attribute, elements, rootOf, tagOf, textOf, type Xml } from "./xml.ts";

/** A picture of a file's sheet, where the file has it. */
export interface Picture {
  /** Its bytes, as an address that holds them. */
  readonly data: string;
  readonly from: Corner;
  /** The corner that goes with its own cell, or the size in pixels. */
  readonly to: Corner | { readonly width: number; readonly height: number };
}

/** A cell, and how far into it in pixels. */
export interface Corner {
  readonly row: number;
  readonly column: number;
  readonly right: number;
  readonly down: number;
}

/** A file's pictures by its names of sheets, and in words what of them is not shown. */
export interface FilePictures {
  readonly sheets: ReadonlyMap<string, readonly Picture[]>;
  readonly left: readonly string[];
}

/** Most pixels of a picture that is shown: a small file can hold one that fills the memory. */
const MOST_PIXELS = 40_000_000;
/** Units of the format in a pixel. */
const UNITS = 9525;

/** The pictures of a file that can be shown here: whole ones, unturned, anchored to cells, of kinds that any browser shows. */
export function picturesIn(parts: Parts): FilePictures {
  const left = new Set<string>();
  const sheets = new Map<string, readonly Picture[]>();
  for (const { name, path } of fileSheets(parts)) {
    const drawing = path === null ? null : parts.relations(path).find(({ kind }) => kind === "drawing")?.to;
    if (!drawing || !parts.has(drawing)) continue;
    const found = drawingIn(parts, drawing, left);
    if (found.length > 0) sheets.set(name, found);
  }
  return { sheets, left: [...left] };
}

function drawingIn(parts: Parts, drawing: string, left: Set<string>): Picture[] {
  const xml = parts.text(drawing);
  const targets = new Map(parts.relations(drawing).map(({ id, to }) => [id, to]));
  return elements(xml, rootOf(xml)).flatMap((anchor): Picture[] => {
    const inside = elements(xml, anchor);
    const part = (name: string) => inside.find((one) => one.name === name);
    const pic = part("pic");
    if (!pic) {
      // Grouped pictures, and those of newer programs.
      if (/<(?:\w+:)?pic\b/.test(xml.slice(anchor.start, anchor.end))) left.add("some pictures");
      return [];
    }
    const from = part("from");
    const to = part("to");
    const size = part("ext");
    const blip = find(xml, pic, ["blipFill", "blip"]);
    const path = blip && targets.get(/\s[\w.-]+:embed\s*=\s*["']([^"']*)/.exec(tagOf(xml, blip))?.[1] ?? "");
    if (!from || !(to ?? size) || !path || !parts.has(path) || isChanged(xml, pic)) {
      left.add("some pictures");
      return [];
    }
    const bytes = parts.bytesOf(path);
    const kind = kindOf(bytes);
    if (!kind) {
      left.add("some pictures");
      return [];
    }
    if (kind.width * kind.height > MOST_PIXELS) {
      const name = path.slice(path.lastIndexOf("/") + 1);
      left.add(
        `the picture ${name}, too large to show (${kind.width.toLocaleString("en")} by ${kind.height.toLocaleString("en")} pixels)`,
      );
      return [];
    }
    return [
      {
        data: `data:${kind.type};base64,${base64(bytes)}`,
        from: cornerOf(xml, from),
        to: to ? cornerOf(xml, to) : sizeOf(tagOf(xml, size!)),
      },
    ];
  });
}

function find(xml: string, at: Xml, [name, ...names]: readonly string[]): Xml | undefined {
  const its = elements(xml, at).find((one) => one.name === name);
  return its && names.length > 0 ? find(xml, its, names) : its;
}

/** Cut off at a side, turned or mirrored: shown whole it would be another picture. */
function isChanged(xml: string, pic: Xml): boolean {
  const cut = find(xml, pic, ["blipFill", "srcRect"]);
  const turned = find(xml, pic, ["spPr", "xfrm"]);
  const sides = cut ? ["l", "t", "r", "b"].map((side) => Number(attribute(tagOf(xml, cut), side) ?? 0)) : [];
  const turns = turned ? ["rot", "flipH", "flipV"].map((one) => attribute(tagOf(xml, turned), one) ?? "0") : [];
  return sides.some((side) => side !== 0) || turns.some((turn) => turn !== "0" && turn !== "false");
}

function cornerOf(xml: string, at: Xml): Corner {
  const number = (name: string) => {
    const its = elements(xml, at).find((one) => one.name === name);
    return its ? Number(textOf(xml, its)) || 0 : 0;
  };
  return { row: number("row"), column: number("col"), right: number("colOff") / UNITS, down: number("rowOff") / UNITS };
}

const sizeOf = (tag: string) => ({
  width: Number(attribute(tag, "cx")) / UNITS,
  height: Number(attribute(tag, "cy")) / UNITS,
});

/** What kind of picture bytes are and how large it is, by its head: PNG, GIF or JPEG; null for any other. */
export function kindOf(
  bytes: Uint8Array,
): { readonly type: string; readonly width: number; readonly height: number } | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length > 24 && view.getUint32(0) === 0x89504e47)
    return { type: "image/png", width: view.getUint32(16), height: view.getUint32(20) };
  if (bytes.length > 10 && view.getUint32(0) === 0x47494638)
    return { type: "image/gif", width: view.getUint16(6, true), height: view.getUint16(8, true) };
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return null;
  // Segments of a JPEG (ITU T.81, B.1): the frame's head has its size.
  for (let at = 2; at + 9 < bytes.length && bytes[at] === 0xff; at += 2 + view.getUint16(at + 2)) {
    const mark = bytes[at + 1]!;
    if (mark >= 0xc0 && mark <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(mark))
      return { type: "image/jpeg", width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
  }
  return null;
}

function base64(bytes: Uint8Array): string {
  let text = "";
  // All at once is too much for one call.
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(text);
}

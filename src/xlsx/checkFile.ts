import { UnreadableFile } from "./unreadableFile.ts";

/** Most bytes of a file that are opened: more would stop the page. */
export const MOST_BYTES = 20_000_000;
/** Most bytes that its parts may have once unpacked. */
const MOST_UNPACKED = 100_000_000;
/** Most sheets. */
export const MOST_SHEETS = 255;

/**
 * Refuses what cannot be opened before any of it is unpacked, and says by name what it is instead.
 *
 * A part that unpacks to more than its directory says is refused by the reader itself.
 *
 * @throws UnreadableFile with the reason in words.
 */
export function checkFile(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new UnreadableFile("The file is empty.");
  if (bytes.length > MOST_BYTES)
    throw new UnreadableFile(
      `The file has ${Math.ceil(bytes.length / 1e6)} MB; ${MOST_BYTES / 1e6} MB at most can be opened here.`,
    );
  const other = otherKind(bytes);
  if (other) throw new UnreadableFile(other);
  const parts = partsOf(bytes);
  if (!parts) throw new UnreadableFile("The file is broken, or is no .xlsx workbook: its parts could not be read.");
  const names = new Set(parts.map(({ name }) => name));
  const packed = packedKind(names, bytes);
  if (packed) throw new UnreadableFile(packed);
  const unpacked = parts.reduce((sum, { size }) => sum + size, 0);
  if (unpacked > MOST_UNPACKED || parts.some(({ size, stored }) => size === 0 && stored > 2))
    throw new UnreadableFile(
      `The file unpacks to ${Math.ceil(unpacked / 1e6)} MB; ${MOST_UNPACKED / 1e6} MB at most can be opened here.${wayOn(parts)}`,
    );
  const sheets = parts.filter(({ name }) => /^xl\/worksheets\/[^/]+\.xml$/i.test(name)).length;
  if (sheets > MOST_SHEETS)
    throw new UnreadableFile(
      `The file has ${sheets.toLocaleString("en")} sheets; ${MOST_SHEETS} at most can be opened here.`,
    );
}

/** What to do about a file that is too large for one of its pictures. */
function wayOn(parts: readonly Part[]): string {
  const [largest] = [...parts].sort((a, b) => b.size - a.size);
  return largest && largest.size > MOST_UNPACKED / 2 && /^xl\/media\//i.test(largest.name)
    ? ` Most of it is one picture, ${largest.name.slice("xl/media/".length)}: make it smaller or take it out in the program that made the file, and open it again.`
    : "";
}

/** Whether the file brings macros along, which do nothing here. */
export function hasMacros(bytes: Uint8Array): boolean {
  return partsOf(bytes)?.some(({ name }) => /^xl\/vbaProject\.bin$/i.test(name)) ?? false;
}

/** What a file is that is no package of parts, by its first bytes; null where it is one. */
function otherKind(bytes: Uint8Array): string | null {
  const start = new TextDecoder("latin1").decode(bytes.subarray(0, 512));
  if (start.startsWith("PK")) return null;
  if (start.startsWith("\xd0\xcf\x11\xe0"))
    return holds(bytes, "EncryptedPackage")
      ? "The workbook is locked with a password. Open it in Excel, remove the password and save it again."
      : "This is a workbook in the old .xls format. Open it in Excel and save it as .xlsx.";
  if (start.startsWith("%PDF")) return "This is a PDF, whatever its name says. Open a workbook saved as .xlsx.";
  if (/^\s*(?:\ufeff|\xef\xbb\xbf)?\s*<(?:!doctype|html|table|\?xml)/i.test(start))
    return "This is a web page or XML text named as a workbook. Open it in Excel and save it as .xlsx.";
  return /^[\t\r\n\x20-\x7e\x80-\xff]*$/.test(start)
    ? "This is a text file, such as .csv, named as a workbook. Open it in Excel and save it as .xlsx."
    : "This is no .xlsx workbook. A workbook saved as .xlsx can be opened here.";
}

function packedKind(names: ReadonlySet<string>, bytes: Uint8Array): string | null {
  const any = (start: string) => [...names].some((name) => name.startsWith(start));
  if (names.has("xl/workbook.bin")) return "This is a binary workbook (.xlsb). Save it as .xlsx and open that.";
  if (any("word/")) return "This is a Word document, whatever its name says. Open a workbook saved as .xlsx.";
  if (any("ppt/")) return "These are slides, whatever the name says. Open a workbook saved as .xlsx.";
  if (names.has("content.xml") && holdsText(bytes.subarray(0, 200), "opendocument"))
    return "This is an OpenDocument file (.ods). Save it as .xlsx and open that.";
  return any("xl/") ? null : "This is an archive (.zip) without a workbook in it. Unpack it first.";
}

/** One part of a package, with its size once unpacked and as it is stored. */
interface Part {
  readonly name: string;
  readonly size: number;
  readonly stored: number;
}

/** The parts of a package by its directory (APPNOTE 6.3.10, 4.3.12 and 4.3.16); null where there is none to read. */
function partsOf(bytes: Uint8Array): Part[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  while (end >= 0 && view.getUint32(end, true) !== 0x06054b50 && bytes.length - end < 65_557 + 22) end--;
  if (end < 0 || view.getUint32(end, true) !== 0x06054b50) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const parts: Part[] = [];
  for (let i = 0; i < count; i++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) return null;
    const length = view.getUint16(at + 28, true);
    parts.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + length)),
      size: view.getUint32(at + 24, true),
      stored: view.getUint32(at + 20, true),
    });
    at += 46 + length + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return parts;
}

/** Whether the bytes hold a name as old Office files write it, two bytes a letter. */
function holds(bytes: Uint8Array, name: string): boolean {
  const wanted = [...name].flatMap((letter) => [letter.charCodeAt(0), 0]);
  const last = Math.min(bytes.length - wanted.length, 8_000_000);
  for (let i = 0; i <= last; i++)
    if (bytes[i] === wanted[0] && wanted.every((byte, j) => bytes[i + j] === byte)) return true;
  return false;
}

function holdsText(bytes: Uint8Array, text: string): boolean {
  return new TextDecoder("latin1").decode(bytes).includes(text);
}

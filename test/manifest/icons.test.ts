import { readFileSync } from "node:fs";
import { crc32, inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { ICON_SIZES, icon } from "../../src/build/icons.ts";

/** The chunks of a PNG file, their checks held. */
function chunks(file: Buffer): Map<string, Buffer> {
  expect(file.subarray(0, 8)).toEqual(Buffer.from("\x89PNG\r\n\x1a\n", "latin1"));
  const found = new Map<string, Buffer>();
  for (let at = 8; at < file.length;) {
    const length = file.readUInt32BE(at);
    expect(crc32(file.subarray(at + 4, at + 8 + length))).toBe(file.readUInt32BE(at + 8 + length));
    found.set(file.toString("latin1", at + 4, at + 8), file.subarray(at + 8, at + 8 + length));
    at += 12 + length;
  }
  return found;
}

describe.each(ICON_SIZES)("the icon of %i pixels", (size) => {
  const committed = chunks(readFileSync(`manifest/icon-${size}.png`));
  it("has the size it is named for, 8 bits a channel with alpha", () => {
    const header = committed.get("IHDR")!;
    expect([header.readUInt32BE(0), header.readUInt32BE(4), ...header.subarray(8)]).toEqual([
      size,
      size,
      8,
      6,
      0,
      0,
      0,
    ]);
    expect([...committed.keys()]).toEqual(["IHDR", "IDAT", "IEND"]);
  });
  it("is what the script draws", () => {
    const pixels = inflateSync(committed.get("IDAT")!);
    expect(pixels.equals(inflateSync(chunks(icon(size)).get("IDAT")!))).toBe(true);
    expect(pixels.length).toBe(size * (size * 4 + 1));
  });
});

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

// Drawn from manifest/icon.svg. Excel's ribbon takes 16, 32 and 80 pixels, its list of add-ins 32 and 64, the store's page 128, the unified manifest 192.
describe.each([16, 32, 64, 80, 128, 192])("the icon of %i pixels", (size) => {
  it("is a PNG of the size it is named for, in color with alpha", () => {
    const file = readFileSync(`manifest/icon-${size}.png`);
    expect(file.toString("latin1", 0, 8)).toBe("\x89PNG\r\n\x1a\n");
    // ISO/IEC 15948: the header is the first chunk: width, height, bits a channel, color type (6: RGB with alpha).
    expect(file.toString("latin1", 12, 16)).toBe("IHDR");
    expect([file.readUInt32BE(16), file.readUInt32BE(20), file[24], file[25]]).toEqual([size, size, 8, 6]);
  });
});

it("the outline is white on nothing, 32 pixels, as the unified manifest wants it", () => {
  const file = readFileSync("manifest/icon-outline.png");
  expect([file.readUInt32BE(16), file.readUInt32BE(20), file[25]]).toEqual([32, 32, 6]);
});

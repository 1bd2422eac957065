import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { expect, it } from "vitest";
import { kindOf, picturesIn } from "../../../src/xlsx/carry/pictures.ts";
import { Parts } from "../../../src/xlsx/carry/parts.ts";
import { readBook } from "../../../src/xlsx/readBook.ts";
import { byExceljs, withMore } from "./otherPrograms.ts";

const DRAWING = "xl/drawings/drawing1.xml";
const MEDIA = "xl/media/image1.png";
/** The file with some of its parts changed. */
const having = (bytes: Uint8Array, change: (parts: Record<string, Uint8Array>) => void) => {
  const parts = unzipSync(bytes);
  change(parts);
  return zipSync(parts);
};
const text = (change: (xml: string) => string) => (parts: Record<string, Uint8Array>) =>
  void (parts[DRAWING] = strToU8(change(strFromU8(parts[DRAWING]!))));

it("a picture is read from the file's own bytes, with the cells that it stands on", async () => {
  const bytes = withMore(await byExceljs());
  const { sheets, left } = picturesIn(new Parts(bytes));
  expect(left).toEqual([]);
  const [picture, ...others] = sheets.get("Estimate")!;
  expect(others).toEqual([]);
  expect(picture!.from).toMatchObject({ row: 1, column: 5 });
  expect(picture!.to).toMatchObject({ row: 5, column: 7 });
  expect(picture!.data).toBe(`data:image/png;base64,${Buffer.from(unzipSync(bytes)[MEDIA]!).toString("base64")}`);
  expect((await readBook(bytes, "", "a file")).left).not.toContain("pictures");
});

it("one that fills the memory is named and not shown; nothing is unpacked for it", async () => {
  const bytes = having(await byExceljs(), (parts) => {
    const huge = Uint8Array.from(parts[MEDIA]!);
    new DataView(huge.buffer).setUint32(16, 60_000);
    new DataView(huge.buffer).setUint32(20, 50_000);
    parts[MEDIA] = huge;
  });
  const { sheets, left } = picturesIn(new Parts(bytes));
  expect(sheets.size).toBe(0);
  expect(left).toEqual(["the picture image1.png, too large to show (60,000 by 50,000 pixels)"]);
  expect((await readBook(bytes, "", "a file")).left).toContain(left[0]);
});

it.each([
  ["cut off at a side", (xml: string) => xml.replace("<a:stretch>", '<a:srcRect l="20000"/><a:stretch>')],
  ["turned", (xml: string) => xml.replace(/<a:xfrm>/, '<a:xfrm rot="5400000">')],
  ["from elsewhere", (xml: string) => xml.replace(/r:embed=/, "r:link=")],
])("one that is %s is not shown as if it were not", async (_, change) => {
  const bytes = having(await byExceljs(), text(change));
  expect(picturesIn(new Parts(bytes))).toEqual({ sheets: new Map(), left: ["some pictures"] });
});

it("kinds and sizes are read from the heads of files", () => {
  const gif = Uint8Array.from([0x47, 0x49, 0x46, 0x38, 0x39, 0x61, 3, 0, 2, 1, 0, 0]);
  expect(kindOf(gif)).toEqual({ type: "image/gif", width: 3, height: 258 });
  const jpeg = Uint8Array.from([
    0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xc2, 0, 11, 8, 0, 7, 1, 0, 1, 1, 0x11, 0, 0xff, 0xd9,
  ]);
  expect(kindOf(jpeg)).toEqual({ type: "image/jpeg", width: 256, height: 7 });
  expect(kindOf(strToU8("<svg onload='x'/>"))).toBeNull();
  expect(kindOf(new Uint8Array())).toBeNull();
});

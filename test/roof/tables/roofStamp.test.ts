import { expect, it } from "vitest";
import { roofStamp } from "../../../src/roof/tables/roofStamp.ts";
import { usual } from "../anySpec.ts";

it("the stamp of a roof is the same for the same roof, another for another roof, other boards or another kerf", () => {
  const stamps = [
    roofStamp(usual, 0.125),
    roofStamp({ ...usual, span: 289 }, 0.125),
    roofStamp({ ...usual, boards: [96] }, 0.125),
    roofStamp(usual, 0.25),
  ];
  expect(new Set(stamps).size).toBe(4);
  expect(roofStamp({ ...usual }, 0.125)).toBe(stamps[0]);
  for (const stamp of stamps) expect(stamp).toMatch(/^[2-9A-HJ-NP-Z]{5}$/);
});

it("is the checksum FNV-1a of 32 bits, five bits to a sign from the lowest on", () => {
  const fnv = (text: string) =>
    [...text].reduce(
      (sum, letter) => ((sum ^ BigInt(letter.codePointAt(0)!)) * 16_777_619n) % 2n ** 32n,
      2_166_136_261n,
    );
  // A published test value of FNV-1a; from memory.
  expect(fnv("a")).toBe(0xe40c292cn);
  const signs = fnv(JSON.stringify([usual, 0.125]))
    .toString(2)
    .padStart(32, "0");
  const fives = [1, 2, 3, 4, 5].map((n) => parseInt(signs.slice(32 - 5 * n, 37 - 5 * n), 2));
  expect(roofStamp(usual, 0.125)).toBe(fives.map((five) => "23456789ABCDEFGHJKLMNPQRSTUVWXYZ"[five]).join(""));
});

import type { BlockRow } from "../../functions/arguments/roofBlock.ts";
import { chance } from "../solids/chance.ts";
import type { Block } from "./answers.ts";

/** The same blocks on every machine: roofs with one to three wings of every kind, with tails and blocks of every kind; half of them are refused, each for its place. */
export function wingedBlocks(count: number, first = 12_000): Block[] {
  return Array.from({ length: count }, (_, i) => block(chance(first + i)));
}

type Column = Partial<Record<BlockRow, string | number>>;

function block(next: () => number): Block {
  const one = <T>(...of: readonly T[]): T => of[Math.floor(next() * of.length)]!;
  const between = (least: number, most: number) => Math.round((least + next() * (most - least)) * 4) / 4;
  const some = (often: number, make: () => Column): Column => (next() < often ? make() : {});
  const span = between(200, 360);
  const length = between(420, 720);
  const pitch = one(4, 5, 6, 6, 8, 9.5, 12);
  const endPitch = one(pitch, pitch, 5, 8, 10);
  const overhang = one(0, 12, 16, between(4, 24));
  const [rafter, deeper] = one(["2x6", "2x8"], ["2x8", "2x10"], ["2x10", "2x12"]) as [string, string];
  const main: Column = {
    Span: span,
    Length: length,
    Pitch: pitch,
    "End pitch": endPitch,
    Ends: one("hip and hip", "hip and hip", "hip and gable", "gable and hip"),
    Spacing: one(16, 19.2, 24),
    Overhang: overhang,
    ...some(0.1, () => ({ "End overhang": between(4, 24) })),
    Rafter: rafter,
    Hip: deeper,
    Ridge: one("2x12", "2x12", deeper),
    ...some(0.5, () => ({ Valley: one(deeper, "2x12", "3 x 10") })),
    ...some(0.5, () => ({ Seat: between(1.5, 4) })),
    ...some(0.4, () => ({ "Set out from": "corner" })),
    "Hip top": one("dropped", "backed", "shifted"),
    ...some(0.3, () => ({ "Hip head": "ridge" })),
    ...some(0.15, () => ({ Correction: one(0.25, -0.5) })),
    ...some(0.1, () => ({ "End correction": 0.25 })),
    ...(overhang === 0
      ? {}
      : some(0.6, () => ({
          "Tail cut": one("square", "level", "plumb"),
          Fascia: one("2x6", "2x8"),
          ...some(0.3, () => ({ "Sub-fascia": "2x4" })),
        }))),
    ...some(0.8, () => ({ Blocking: one("plate", "corner", "both", "both") })),
  };
  const wing = (): Column => {
    const laid = next() < 0.3;
    const flush = !laid && next() < 0.35;
    const own = flush ? endPitch : one(pitch, pitch, 5, 9, 12);
    const level = next() < 0.2;
    const wide = level ? (span * pitch) / own : between(90, Math.min(260, (span * pitch * 1.05) / own));
    const end = one("hip", "gable");
    return {
      Wall: one("front", "back"),
      "From left corner": flush ? one("flush left", "flush right") : between(12, length - wide - 12),
      "Out from wall": between(40, 200),
      Span: wide,
      Ends: end,
      ...(own === pitch ? {} : { Pitch: own }),
      ...(end === "hip" ? some(0.3, () => ({ "End pitch": one(6, 8, 11) })) : {}),
      ...some(0.15, () => ({ Overhang: between(3, 24) })),
      ...some(0.1, () => ({ "End overhang": between(3, 24) })),
      ...some(0.2, () => ({ Ridge: one(deeper, "3 x 7.25") })),
      ...(level || flush || laid ? {} : some(0.7, () => ({ "Long valley": one("left", "right") }))),
      ...(laid ? { "Wing framing": "laid over", ...some(0.5, () => ({ Sheathing: 0.75 })) } : {}),
    };
  };
  const wings = Array.from({ length: one(1, 1, 1, 2, 2, 3) }, wing);
  const columns = [main, ...wings];
  const rows = [...new Set(columns.flatMap((column) => Object.keys(column)))] as BlockRow[];
  return [
    ["", "Main roof", ...wings.map((_, i) => `Wing ${"ABC"[i]}`)],
    ...rows.map((row) => [row, ...columns.map((column) => column[row] ?? "")]),
  ];
}

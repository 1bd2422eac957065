import { describe, expect, it } from "vitest";
import { PAPERS } from "../../../src/drawing/cards/cardStyles.ts";
import { labelSheets, STICKERS } from "../../../src/drawing/packet/labelSheets.ts";
import { longPointFace } from "../../../src/drawing/packet/longPointFace.ts";
import { handOf } from "../../../src/roof/frame/rafterLines.ts";
import { endReach } from "../../../src/roof/members/plumbEnd.ts";
import { framed, HALL } from "../../roof/outlineSpecs.ts";
import { WINGED_ROOFS } from "../wingedRoofs.ts";

const PACKET = { job: "Weighhouse", date: "Nov 26, 2026", stamp: "A2B3C" };

describe("labelSheets", () => {
  it.each(["letter", "A4"] as const)("has a sticker for every board of the roof, all on the %s page", (paper) => {
    const { pieces } = framed(HALL);
    const pages = labelSheets(pieces, PACKET, paper);
    const { columns, rows, width, height } = STICKERS[paper];
    const all = pieces.reduce((sum, { left, right, plain }) => sum + left + right + plain, 0);
    const places = [...pages.join("").matchAll(/style="left:([\d.]+)in;top:([\d.]+)in"/g)];
    expect(places).toHaveLength(all);
    expect(pages).toHaveLength(Math.ceil(all / (columns * rows)));
    for (const [, left, top] of places) {
      expect(Number(left) + width).toBeLessThanOrEqual(PAPERS[paper].width);
      expect(Number(top) + height).toBeLessThanOrEqual(PAPERS[paper].height);
    }
  });
});

describe("longPointFace", () => {
  it("is the left face of a left jack and the right face of a right one, facing uphill", () => {
    const { pieces } = framed(HALL);
    const jacks = pieces.filter(({ member }) => member === "jack");
    expect(jacks.length).toBeGreaterThan(2);
    for (const jack of jacks)
      expect([longPointFace(jack, "left"), longPointFace(jack, "right")]).toEqual(["left", "right"]);
  });
  it("is the head's farther face by its saw cut on roofs with wings too, and the other one on the mirror image", () => {
    let other = 0;
    for (const spec of Object.values(WINGED_ROOFS))
      for (const piece of framed(spec).pieces) {
        const [stand] = piece.stands;
        if (stand?.kind !== "rafter" || piece.head.tilts.length !== 1) continue;
        const half = piece.section.thickness / 2;
        const own = handOf(stand);
        const face = endReach([stand.head], half) > endReach([stand.head], -half) ? "left" : "right";
        const mirror = face === "left" ? "right" : "left";
        expect([piece.mark, longPointFace(piece, own)]).toEqual([piece.mark, face]);
        if (own === "plain") continue;
        expect([piece.mark, longPointFace(piece, own === "left" ? "right" : "left")]).toEqual([piece.mark, mirror]);
        if (face !== own) other++;
      }
    expect(other).toBeGreaterThan(0);
  });
});

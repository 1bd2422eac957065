import { describe, expect, it } from "vitest";
import { framed } from "./outlineSpecs.ts";
import { WINGED_ROOFS } from "../drawing/wingedRoofs.ts";

/** What a first jack teaches is of the hip jacks on the main roof's planes: common practice, no source. */
describe("a Correction of a roof with wings", () => {
  it.each(Object.entries(WINGED_ROOFS))(
    "moves the heads of the main roof's hip jacks, and leaves every other piece alone: %s",
    (_, spec) => {
      const by = spec.unit === "mm" ? 6 : 0.25;
      const before = framed(spec).pieces;
      const after = new Map(
        framed({ ...spec, correction: by, endCorrection: 2 * by }).pieces.map((piece) => [piece.stands, piece]),
      );
      let moved = 0;
      for (const piece of after.values()) {
        const own = piece.member === "jack" && piece.planes.every(({ block }) => block === 0);
        const plane = piece.planes[0];
        // The same rafter: it stands on one plane, at one place.
        const old = before.find(
          (one) =>
            one.member === piece.member &&
            one.stands.some((stand) => {
              const [a, b] = [stand, piece.stands[0]!];
              if (a.kind === "rafter" || b.kind === "rafter")
                return (
                  a.kind === "rafter" &&
                  b.kind === "rafter" &&
                  a.plane.index === b.plane.index &&
                  Math.abs(a.station - b.station) < 1e-9 &&
                  a.foot.at === b.foot.at
                );
              return a.kind === b.kind && a.wing === b.wing && a.start === b.start && a.hand === b.hand;
            }),
        )!;
        const added = own ? (plane!.end ? 2 * by : by) : 0;
        if (own) moved++;
        expect([piece.mark, piece.longPoint - old.longPoint]).toEqual([piece.mark, expect.closeTo(added, 9)]);
        expect([piece.mark, piece.shortestBoard - old.shortestBoard]).toEqual([piece.mark, expect.closeTo(added, 9)]);
        expect(piece.head.tilts).toEqual(old.head.tilts);
      }
      expect(moved).toBeGreaterThan(0);
    },
  );
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planCutsNow } from "../../cutting/planCutsNow.ts";
import { Failure } from "../../../src/measure/result.ts";
import { ridgeJoints } from "../../../src/roof/members/ridgeJoints.ts";
import { joinPlaces, stockPieces, type RoofStock } from "../../../src/roof/tables/stockPieces.ts";
import { ROOFS } from "../../drawing/allDrawings.ts";
import { wingedCases } from "../../solids/wings/cases.ts";
import { modelOf } from "../../solids/wings/frameOf.ts";
import { anyRoof, framed, HALL, SHAPES } from "../outlineSpecs.ts";

const LONG = [{ length: 1e6, cost: 1 }];
const order = (spec: Parameters<typeof framed>[0], boards = LONG) => {
  const { frame, pieces } = framed(spec);
  return { frame, members: pieces, ...stockPieces(frame, pieces, () => boards) };
};
const named = (stock: readonly RoofStock[], name: string, hand = "plain") =>
  stock.find((piece) => piece.name === name && piece.hand === hand)!;

describe("stockPieces", () => {
  it("a common, a jack and a hip of the hall, by hand", () => {
    const { pieces } = order(HALL);
    const along = Math.sqrt(5) / 2;
    // Commons: five pairs on a ridge of 12 feet; run 144 less half the ridge, overhang 16; a 2x6 at 6 in 12 leans 5.5 x 1/2.
    expect(named(pieces, "C")).toMatchObject({ size: "2x6", count: 10, lean: 2.75, toe: 2.75, slants: [0, 0] });
    expect(named(pieces, "C").length).toBeCloseTo((144 - 0.75 + 16) * along, 9);
    // Longest jack at 120: less T / (2 cos 45), plus t / 2 for its long side; its head turns by its own thickness.
    expect(named(pieces, "J1", "left").length).toBeCloseTo((120 - 0.75 * Math.SQRT2 + 0.75 + 16) * along, 9);
    expect(named(pieces, "J1", "left").slants[1]).toBeCloseTo(1.5 * along, 9);
    expect(named(pieces, "J1", "right").slants[1]).toBeCloseTo(-1.5 * along, 9);
    expect(named(pieces, "J1", "left").spread).toBeCloseTo(along * Math.SQRT2, 9);
    expect(named(pieces, "J1", "right")).toMatchObject({ count: 4, slant: named(pieces, "C").slant });
    // Hip: root 2 times run and overhang in plan, less half the 45-degree thickness of the king commons.
    expect(named(pieces, "H").length).toBeCloseTo(
      (144 + 16) * Math.SQRT2 * Math.sqrt(1 + 1 / 8) - 0.75 * Math.SQRT2 * Math.sqrt(1 + 1 / 8),
      9,
    );
    expect(named(pieces, "H")).toMatchObject({ count: 4, slants: [0, 0] });
    expect(named(pieces, "R")).toMatchObject({ count: 1, length: 145.5, lean: 0, toe: 0, spread: 1, slant: "square" });
  });

  it.each(Object.entries(SHAPES))(
    "%s: every piece of the schedule in its number, and no board shorter than its own",
    (_, spec) => {
      const { members, pieces } = order(spec);
      for (const piece of members) {
        const own = pieces.filter(({ name }) => name === piece.mark);
        expect(own.map(({ hand, count }) => [hand, count])).toEqual(
          (["left", "right", "plain"] as const).filter((hand) => piece[hand] > 0).map((hand) => [hand, piece[hand]]),
        );
        for (const { length, toe } of own) expect(length + toe).toBeGreaterThanOrEqual(piece.shortestBoard - 1e-9);
      }
      expect(pieces.length).toBe(
        members.reduce(
          (sum, { left, right, plain }) => sum + (left > 0 ? 1 : 0) + (right > 0 ? 1 : 0) + (plain > 0 ? 1 : 0),
          0,
        ),
      );
    },
  );

  it("alone in a board, every piece takes its shortest board; a backed hip what it takes before it is backed", () => {
    fc.assert(
      fc.property(anyRoof, (spec) => {
        const { members, pieces } = order(spec);
        for (const piece of members) {
          for (const { length, toe, slants, hand } of pieces.filter(({ name }) => name === piece.mark)) {
            const slack = piece.member === "hip" && spec.hipTop === "backed" ? piece.section.thickness : 0;
            expect(length + toe).toBeGreaterThan(piece.shortestBoard - 1e-9);
            expect(length + toe).toBeLessThan(piece.shortestBoard + slack + 1e-9);
            if (piece.member === "jack") expect(Math.abs(slants[1])).toBeCloseTo(piece.longPoint - piece.shortPoint, 9);
            if (slants[1] !== 0) expect(hand).not.toBe("plain");
          }
        }
      }),
      { seed: 5, numRuns: 60 },
    );
  });

  it("with wings, the slants of both ends make the difference of a piece's faces; of cripples between parallel bearers they are one", () => {
    const kinds = new Set<string>();
    for (const plan of Object.values(wingedCases)) {
      const { frame, pieces: members } = modelOf(plan);
      const { pieces } = stockPieces(frame, members, () => LONG);
      for (const piece of members.filter(({ planes, over, tailCut }) => planes.length > 0 && !over && !tailCut)) {
        for (const { slants, hand } of pieces.filter(({ name, hand: own }) => name === piece.mark && own !== "plain")) {
          const [low, head] = slants;
          if (piece.foot.bearer === "valley board") continue;
          expect(Math.abs(head - low), piece.mark).toBeCloseTo(piece.longPoint - piece.shortPoint, 9);
          // What stands on a valley alone has its long point on the face of its hand.
          if (head === 0 && low !== 0) expect(low < 0).toBe(hand === "left");
          kinds.add(piece.member);
        }
      }
      for (const { slants } of pieces.filter(({ name }) => name.startsWith("HV")))
        kinds.add(slants[0] === slants[1] ? "parallel" : "not parallel");
    }
    expect([...kinds]).toEqual(expect.arrayContaining(["jack", "valley jack", "valley cripple", "parallel"]));
  });

  it("jacks of one pitch have one turn to the last bit, so that their pairs are told", () => {
    for (const spec of [HALL, { ...HALL, endOverhang: 9 }, { ...HALL, correction: 0.125 }]) {
      expect(
        new Set(
          order(spec)
            .pieces.filter(({ slants }) => slants[1] !== 0)
            .map(({ slants, slant }) => `${Math.abs(slants[1])} ${slant}`),
        ).size,
      ).toBe(1);
    }
  });

  it("hips on the ridge share their one cheek: a left and a right save what it leans across the board", () => {
    // 6 and 8 in 12: runs of 144 and 108, so the hip lies 3-4-5 in plan, 4/5 across the ridge and 3/5 along it, and rises 72 in 180.
    const { pieces } = order({ ...HALL, endPitch: 8 / 12, hipHead: "ridge" });
    const along = Math.hypot(1, 72 / 180);
    for (const hand of ["left", "right"]) {
      const hip = named(pieces, "H", hand);
      expect(hip.slants[1] * (hand === "left" ? 1 : -1)).toBeCloseTo(1.5 * (3 / 4) * along, 9);
      expect(hip.spread).toBeCloseTo(along / (4 / 5), 9);
    }
    // Between king commons two cheeks meet in a point, and no cut is shared; each is as long as the one across.
    const between = named(order({ ...HALL, endPitch: 8 / 12 }).pieces, "H", "left");
    expect(between.slants).toEqual([0, 0]);
    expect(between.spread).toBeCloseTo(along, 9);
  });

  it("adds spares cut like the common, of no hand", () => {
    expect(named(order({ ...HALL, spares: 3 }).pieces, "C spare")).toMatchObject({
      count: 3,
      hand: "plain",
      slants: [0, 0],
    });
    expect(named(order({ ...HALL, spares: 3 }).pieces, "C spare").length).toBe(named(order(HALL).pieces, "C").length);
    // A pyramid has no common: the longest rafter serves.
    expect(order({ ...HALL, length: 288, spares: 2 }).pieces.find(({ name }) => name.endsWith("spare"))!.name).toBe(
      "K spare",
    );
  });

  it("joins a ridge longer than every board over commons, in parts that make the whole", () => {
    const { frame, pieces, joined } = order(
      { ...HALL, length: 960 },
      [240, 288].map((length) => ({ length, cost: length })),
    );
    const parts = pieces.filter(({ name }) => name.startsWith("R "));
    expect(parts.map(({ name }) => name)).toEqual(["R 1 of 3", "R 2 of 3", "R 3 of 3"]);
    expect(parts.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(960 - 2 * 144 + 1.5, 9);
    // The ridge begins half a rafter before the first king common, which stands the end's run from the corner.
    for (const at of joined[0]!.joints)
      expect(frame.commons.stations.some((x) => Math.abs(x - 144 + 0.75 - at) < 1e-9)).toBe(true);
    expect(Math.max(...parts.map(({ length }) => length))).toBeLessThanOrEqual(288);
  });

  it("a ridge may be joined over its own rafters, in order from its first end, but for those at its ends", () => {
    const places = ({ frame, pieces }: ReturnType<typeof modelOf> | ReturnType<typeof framed>) =>
      pieces.filter(({ member }) => member === "ridge").map((ridge) => joinPlaces(frame, ridge));
    const close = (at: number) => expect.closeTo(at, 9) as number;
    // King commons stand half a thickness inside the ridge's ends, 144 apart; between them the layout goes on at 24.
    expect(places(framed(HALL))).toEqual([[24.75, 48.75, 72.75, 96.75, 120.75].map(close)]);
    // 192 between the king commons of the main roof; one of them is a valley jack on the wing's side. The wing is set out from its gable, whose rafter is flush.
    expect(places(modelOf(wingedCases["a T with a lower ridge"]!))).toEqual([
      [24.75, 48.75, 72.75, 96.75, 120.75, 144.75, 168.75].map(close),
      [24, 48, 72, 96, 120, 144, 168, 192].map(close),
    ]);
    // A gable's rafter is flush with the ridge's end.
    const [gabled] = places(framed(SHAPES["one end a gable"]!));
    expect(gabled!.at(-1)).toBeCloseTo(288.75 - 24, 9);
  });

  it("leaves the ridge whole where no joint will do, so that it is refused by its own length", () => {
    expect(named(order({ ...HALL, length: 960 }, [{ length: 20, cost: 1 }]).pieces, "R").length).toBe(673.5);
  });
});

describe("ridgeJoints", () => {
  const lengths = fc.array(fc.integer({ min: 1, max: 14 }), { minLength: 1, maxLength: 3 });
  it("takes the fewest parts, and of those the cheapest, of all ways there are", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 24 }),
        fc.uniqueArray(fc.integer({ min: 1, max: 23 }), { maxLength: 8 }),
        lengths,
        (length, rafters, boards) => {
          const stock = boards.map((board, i) => ({ length: board, cost: board * (1 + (i % 2)) }));
          const stops = rafters.filter((at) => at < length).sort((a, b) => a - b);
          let best: [number, number] | null = null;
          for (let set = 0; set < 1 << stops.length; set++) {
            const cuts = [0, ...stops.filter((_, i) => set & (1 << i)), length];
            const costs = cuts
              .slice(1)
              .map((to, i) =>
                Math.min(...stock.filter((board) => to - cuts[i]! <= board.length).map(({ cost }) => cost)),
              );
            const found: [number, number] = [costs.length, costs.reduce((sum, cost) => sum + cost, 0)];
            if (
              Number.isFinite(found[1]) &&
              (!best || found[0] < best[0] || (found[0] === best[0] && found[1] < best[1]))
            )
              best = found;
          }
          const joints = ridgeJoints(length, rafters, stock);
          if (!best || !joints) {
            expect(joints).toBe(best);
            return;
          }
          const cuts = [0, ...joints, length];
          const cost = cuts
            .slice(1)
            .reduce(
              (sum, to, i) =>
                sum + Math.min(...stock.filter((board) => to - cuts[i]! <= board.length).map((board) => board.cost)),
              0,
            );
          expect([joints.length + 1, cost]).toEqual(best);
          expect(joints.every((at) => stops.includes(at))).toBe(true);
        },
      ),
      { seed: 6 },
    );
  });
});

describe("the order of every roof of the tests", () => {
  const FEET = {
    in: [8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 36, 40].map((feet) => feet * 12),
    mm: [2400, 3000, 3600, 4200, 4800, 5400, 6000, 7200],
  };
  it.each(Object.entries(ROOFS))("%s: is proved least", (_, spec) => {
    const { pieces } = order(
      spec,
      FEET[spec.unit].map((length) => ({ length, cost: length })),
    );
    const boards = [...new Set(pieces.map(({ size }) => size))].flatMap((size) =>
      FEET[spec.unit].map((length) => ({ size, length })),
    );
    const plan = planCutsNow(pieces, boards, { kerf: spec.unit === "mm" ? 3 : 0.125 });
    if (plan instanceof Failure) throw new Error(JSON.stringify(plan.problem));
    expect(plan.proved).toBe(true);
    expect(plan.cost - plan.bound).toBeLessThanOrEqual(1e-9 * plan.cost);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MM_PER_INCH } from "../../../src/measure/unit.ts";
import { pieceBoardFeet } from "../../../src/roof/tables/pieceBoardFeet.ts";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { sideName, type Piece } from "../../../src/roof/frame/piece.ts";
import { wingedCases } from "../../solids/wings/cases.ts";
import { modelOf } from "../../solids/wings/frameOf.ts";
import { anyFrame, framed, usual } from "../anySpec.ts";

const jacksOf = (all: readonly Piece[]) => all.filter(({ member }) => member === "jack");
const byMark = (all: readonly Piece[], mark: string): Piece => all.find((piece) => piece.mark === mark)!;

describe("pieces", () => {
  const inT = modelOf(wingedCases["a T with a lower ridge"]!).pieces;

  it("come as ridge, commons, king commons, hip, and jacks from long to short", () => {
    expect(pieces(framed()).map(({ mark }) => mark)).toEqual(["R", "C", "K", "KE", "H", "J1", "J2", "J3", "J4", "J5"]);
    expect(
      pieces(framed({ endPitch: 9 / 12 }))
        .map(({ mark }) => mark)
        .filter((mark) => mark.startsWith("J")),
    ).toEqual(["JM1", "JE1", "JM2", "JE2", "JE3", "JM3", "JE4", "JE5"]);
  });

  it("jacks of a framing-square table: 26.83 in apart at 6 in 12 and 24 in on centers, the first pair of each hand at every corner", () => {
    const jacks = jacksOf(pieces(framed()));
    jacks.slice(1).forEach(({ longPoint }, i) => expect(jacks[i]!.longPoint - longPoint).toBeCloseTo(26.83, 2));
    expect(jacks.map(({ left, right, plain }) => [left, right, plain])).toEqual(Array(5).fill([4, 4, 0]));
  });

  it("only a jack is marked on the plate, from the corner to its nearer face", () => {
    // Centers at 24, 48 ... 120 from the corner; half of 1 1/2 in nearer.
    const marks = pieces(framed()).map(({ mark, foot }) => [mark, foot.mark]);
    expect(marks.filter(([, at]) => at !== null)).toEqual(
      [120, 96, 72, 48, 24].map((at, i) => [`J${i + 1}`, at - 0.75]),
    );
  });

  it("a valley jack is marked on its valley midway between the feet of its two edges", () => {
    // At 6 in 12, 18 in from the inner corner, 139.6864 long as the solid models measure it. In plan its center meets the valley's center 18 sqrt 2 up from
    // the corner, and the face of 1 1/2 in half of that farther; the valley rises 6 in 12 sqrt 2.
    const jack = inT.find(
      ({ member, longPoint }) => member === "valley jack" && Math.abs(longPoint - 139.6864) < 1e-4,
    )!;
    expect(jack.foot.mark).toBeCloseTo((18 * Math.SQRT2 + 0.75) * Math.hypot(1, 0.5 / Math.SQRT2), 9);
  });

  it("valleys of a wing of 16 feet in a roof of 24, both at 6 in 12, butt the ridge and each other", () => {
    // In plan at 45 degrees, so that a foot of run is 12 sqrt 2 and rises 6: the long one runs to the main ridge at 12 feet and loses half its 1 1/2 in at 45 degrees,
    // its faces half of its own more and less; the short one runs to the wing's at 8 and butts the long one square.
    const along = Math.hypot(Math.SQRT2, 0.5);
    const [long, short] = [byMark(inT, "VL-A"), byMark(inT, "VS-A")];
    expect([long.longPoint, long.shortPoint].map((length) => length / along)).toEqual(
      [144 - 0.75 + 0.75 / Math.SQRT2, 144 - 0.75 - 0.75 / Math.SQRT2].map((run) => expect.closeTo(run, 9) as number),
    );
    expect([short.longPoint, short.shortPoint].map((length) => length / along)).toEqual(
      [96 - 0.75 / Math.SQRT2, 96 - 0.75 / Math.SQRT2].map((run) => expect.closeTo(run, 9) as number),
    );
    expect([long, short].map(({ left, right, plain }) => [left, right, plain])).toEqual([
      [0, 1, 0],
      [1, 0, 0],
    ]);
  });

  it.each([
    // 120 out and 96 in to where its height is the main plane's; pointed into two valleys of 1 1/2 in at 45 degrees.
    ["a lower ridge", "a T with a lower ridge", 120 + 96 - 0.75 * Math.SQRT2],
    // 120 out and 144 in to the main ridge, whose face is 3/4 nearer.
    ["a level ridge", "a T with level ridges", 120 + 144 - 0.75],
    // Hipped 144 out: from its apex 48 out, half a rafter before it, to the crossing 96 in; then half its thickness past it at 45 degrees, to where the broken hip's
    // outer face leaves its own.
    ["a flush one", "an L, flush left, lower ridge", 0.75 + 144 + 0.75 + 0.75 * Math.SQRT2],
  ])("a wing's ridge: %s", (_, name, length) => {
    const { pieces: all } = modelOf(wingedCases[name]!);
    expect(byMark(all, "R-A").longPoint).toBeCloseTo(length, 9);
  });

  it("an end's king common loses half a thickness to the ridge, and notes by how much a steeper side passes over it", () => {
    const notes = (change: Parameters<typeof framed>[0]) => byMark(pieces(framed(change)), "KE").notes;
    // Half of 1 1/2 in; the sides rise 9 in 12 there, the ends 6.
    expect(notes({ pitch: 9 / 12, endPitch: 6 / 12, length: 600 })).toEqual([
      { kind: "butts", by: 0.75 },
      { kind: "above main plane", by: (0.75 * 3) / 12 },
    ]);
    for (const same of [{}, { endPitch: 9 / 12 }]) expect(notes(same)).toEqual([{ kind: "butts", by: 0.75 }]);
  });

  it("a level tail is plumb as far as its board is deep, and level from there; with no overhang it is plumb", () => {
    const tail = (overhang: number) =>
      byMark(
        pieces(framed({ overhang, tailCut: "level", subFascia: { name: "2x4", thickness: 1.5, depth: 3.5 } })),
        "C",
      ).tailEnd;
    // A 2x6 at 6 in 12 is 5 1/2 sqrt 5 / 2 deep plumb; what 3 1/2 leaves of it runs out level at 1 in 2.
    expect(tail(16)).toEqual({
      cut: "level",
      plumb: 3.5,
      soffit: expect.closeTo(((5.5 * Math.sqrt(5)) / 2 - 3.5) * 2, 9) as number,
    });
    expect(tail(0)).toEqual({ cut: "plumb", plumb: null, soffit: null });
  });

  it("hips have a hand where their two cheeks differ, and where they lie on the ridge", () => {
    const hands = (change: Parameters<typeof framed>[0]) => {
      const { left, right, plain } = byMark(pieces(framed(change)), "H");
      return [left, right, plain];
    };
    expect([
      hands({}),
      hands({ endPitch: 0.75 }),
      hands({ hipHead: "ridge" }),
      hands({ ends: "hip and gable" }),
    ]).toEqual([
      [0, 0, 4],
      [2, 2, 0],
      [2, 2, 0],
      [0, 0, 2],
    ]);
  });

  it("a correction is added to the long point of every jack of its side, runs through tape and board, and is named", () => {
    const [plain, corrected] = [
      pieces(framed({ endPitch: 0.75 })),
      pieces(framed({ endPitch: 0.75, correction: 0.25, endCorrection: -0.5 })),
    ];
    for (const [i, one] of corrected.entries()) {
      const was = plain[i]!;
      const by = one.member !== "jack" ? 0 : !one.planes[0]!.end ? 0.25 : -0.5;
      expect(one.longPoint - was.longPoint, one.mark).toBeCloseTo(by, 9);
      expect(one.shortPoint - was.shortPoint, one.mark).toBeCloseTo(by, 9);
      expect(one.shortestBoard - was.shortestBoard, one.mark).toBeCloseTo(by, 9);
      if (one.tape !== null && by !== 0) expect(Math.sign(one.tape - was.tape!), one.mark).toBe(Math.sign(by));
      expect([one.foot.mark, one.head.mark, one.lineLength]).toEqual([was.foot.mark, was.head.mark, was.lineLength]);
      expect(one.notes.filter(({ kind }) => kind === "corrected")).toEqual(by === 0 ? [] : [{ kind: "corrected", by }]);
    }
  });

  it("equal pitches with two corrections are two kinds of jacks", () => {
    expect(jacksOf(pieces(framed({ endCorrection: 0.25 }))).map(({ planes }) => sideName(planes))).toContain("End");
  });

  it("a roof in millimeters is the same roof", () => {
    const metric = (value: number) => value * MM_PER_INCH;
    const section = ({ name, thickness, depth }: { name: string; thickness: number; depth: number }) => ({
      name,
      thickness: metric(thickness),
      depth: metric(depth),
    });
    const inMm = pieces(
      framed({
        unit: "mm",
        span: metric(288),
        length: metric(432),
        spacing: metric(24),
        overhang: metric(16),
        seat: metric(3.5),
        rafter: section(usual.rafter),
        hip: section(usual.hip),
        ridge: section(usual.hip),
      }),
    );
    const inInches = pieces(framed({ overhang: 16 }));
    expect(inMm).toHaveLength(inInches.length);
    inMm.forEach((piece, i) => {
      const other = inInches[i]!;
      expect([piece.longPoint, piece.shortestBoard, piece.notch].map((value) => value / MM_PER_INCH)).toEqual(
        [other.longPoint, other.shortestBoard, other.notch].map((value) => expect.closeTo(value, 9)),
      );
      expect(pieceBoardFeet(piece, "mm")).toBeCloseTo(pieceBoardFeet(other, "in"), 9);
    });
  });

  it("short points are below long ones, boards hold them with their tails, and each length is one piece", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        for (const one of pieces(frame)) {
          expect(one.shortPoint).toBeLessThanOrEqual(one.longPoint);
          expect(one.shortestBoard).toBeGreaterThanOrEqual((one.longPoint + one.tail) * (1 - 1e-12));
          expect(one.left + one.right + one.plain).toBeGreaterThan(0);
          expect(one.notch).toBeLessThan(one.section.depth);
        }
      }),
      { seed: 7 },
    );
  });

  it("a plane without overhang has no tail to cut, whatever the tails of the others are", () => {
    const boards = (tailCut: "plumb" | "square") =>
      pieces(framed({ overhang: 16, endOverhang: 0, tailCut })).flatMap(({ mark, shortestBoard }) =>
        /^(JE|KE)/.test(mark) ? [[mark, shortestBoard]] : [],
      );
    expect(boards("square").length).toBeGreaterThan(3);
    expect(boards("square")).toEqual(boards("plumb"));
  });

  it("mirror images: as many left as right", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        for (const { left, right } of pieces(frame)) expect(left).toBe(right);
      }),
      { seed: 8 },
    );
  });
});

// A board foot is 144 cubic inches, nominal.
describe("pieceBoardFeet", () => {
  it("counts the shortest board of every piece at its nominal size", () => {
    const hip = byMark(pieces(framed()), "H");
    expect(pieceBoardFeet(hip, "in")).toBeCloseTo((4 * 2 * 8 * hip.shortestBoard) / 144, 9);
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pieces } from "../../../src/roof/frame/pieces.ts";
import { plateMarks } from "../../../src/roof/tables/plateMarks.ts";
import type { PlateList } from "../../../src/roof/tables/plateList.ts";
import { wingedCases } from "../../solids/wings/cases.ts";
import { modelOf } from "../../solids/wings/frameOf.ts";
import { anyFrame, framed } from "../anySpec.ts";

const brief = ({ marks }: PlateList) =>
  marks.map(({ piece, hand, mark }) => [hand === "plain" ? piece : `${piece} ${hand}`, mark]);

describe("plateMarks", () => {
  // The gable's rafters are flush with the ridge's end, the others stand every 24 from there; edges 3/4 in nearer the hook.
  it("lists what meets a wing's ridge, face by face", () => {
    const lists = plateMarks(modelOf(wingedCases["a T with a lower ridge"]!).frame);
    const { marks } = lists.find(({ place }) => place?.kind === "ridge" && place.wing === "A")!;
    const pairs = [0.75, 24, 48, 72, 96, 120, 144, 168, 192].flatMap((center) => [center - 0.75, center - 0.75]);
    expect(marks.map(({ mark }) => mark)).toEqual(pairs.map((mark) => expect.closeTo(mark, 9) as number));
    expect(marks.flatMap(({ notes }) => notes)).toEqual([]);
  });

  // By hand: jacks at 24 and 48, king common at the end's run of 72, commons every 24; edges 3/4 in nearer the hook.
  it("lists a plain roof's two kinds of plates once each", () => {
    const [main, end, ...more] = plateMarks(framed({ span: 144, length: 192 }));
    expect(more).toEqual([]);
    expect([main!.plates, main!.hook, end!.plates, end!.hook]).toEqual([2, "left", 2, "left"]);
    expect(brief(main!)).toEqual([
      ["J2 right", 23.25],
      ["J1 right", 47.25],
      ["K", 71.25],
      ["C", 95.25],
      ["K", 119.25],
      ["J1 left", 143.25],
      ["J2 left", 167.25],
    ]);
    expect(brief(end!)).toEqual([
      ["J2 right", 23.25],
      ["J1 right", 47.25],
      ["KE", 71.25],
      ["J1 left", 95.25],
      ["J2 left", 119.25],
    ]);
  });

  it("measures both main plates from the same end of the building where an odd bay makes them differ, so that commons stand opposite", () => {
    const [left, right] = plateMarks(framed({ span: 144, length: 206 }));
    expect([left!.hook, left!.plates, right!.hook, right!.plates]).toEqual(["left", 1, "right", 1]);
    expect(left!.marks.map(({ mark }) => mark)).toEqual(right!.marks.map(({ mark }) => mark));
    expect(brief(right!)[0]).toEqual(["J2 left", 23.25]);
    expect(left!.marks.flatMap(({ notes }) => notes)).toContainEqual({ kind: "last bay", width: 14 });
  });

  it("hooks both main plates of a gable at the hip's corner, and gives the gable no list", () => {
    const lists = plateMarks(framed({ span: 144, length: 240, ends: "hip and gable" }));
    expect(lists.map(({ plate, hook, plates }) => [plate, hook, plates])).toEqual([
      ["Main", "left", 1],
      ["Main", "right", 1],
      ["End", "left", 1],
    ]);
    expect(brief(lists[0]!).at(-1)).toEqual(["C", 238.5]);
    expect(lists[0]!.marks.at(-1)!.notes.map(({ kind }) => kind)).toEqual(["at gable", "last bay"]);
  });

  it("names the bays at the corners, blocked, and the double bay over an apex without a king common", () => {
    const [main, end] = plateMarks(framed({ hipHead: "ridge" }));
    for (const { marks } of [main!, end!])
      for (const one of [marks[0]!, marks.at(-1)!]) expect(one.notes.map(({ kind }) => kind)).toContain("corner bay");
    expect(end!.marks.flatMap(({ notes }) => notes)).toContainEqual({ kind: "odd bay", width: 48 });
    expect(main!.marks.some(({ piece }) => piece === "K")).toBe(false);
  });

  it("names the corner bay on the king common where a side has no jacks", () => {
    const [main] = plateMarks(framed({ endPitch: 1, spacing: 71 }));
    expect(main!.marks[0]).toMatchObject({ piece: "K", bay: 72, notes: [{ kind: "corner bay, seat", width: 72 }] });
  });

  it("marks run on, and count what MEMBERS counts, hand by hand", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const lists = plateMarks(frame);
        const count = new Map<string, number>();
        for (const { plates, marks } of lists) {
          marks.forEach(({ piece, hand, mark, bay }, i) => {
            count.set(`${piece} ${hand}`, (count.get(`${piece} ${hand}`) ?? 0) + plates);
            expect(bay).toBeGreaterThan(0);
            if (i > 0) expect(mark - marks[i - 1]!.mark).toBeCloseTo(bay, 6);
          });
        }
        for (const { mark, member, left, right, plain } of pieces(frame)) {
          if (member === "ridge" || member === "hip") continue;
          expect(
            [count.get(`${mark} left`) ?? 0, count.get(`${mark} right`) ?? 0, count.get(`${mark} plain`) ?? 0],
            mark,
          ).toEqual([left, right, plain]);
        }
      }),
      { seed: 9 },
    );
  });

  it("a plate seen from its other end is its mirror: left for right", () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const { marks } = plateMarks(frame).find(({ plate }) => plate === "End")!;
        const turned = [...marks]
          .reverse()
          .map(({ piece, hand, mark }) => ({
            piece,
            hand: hand === "left" ? "right" : hand === "right" ? "left" : hand,
            mark: frame.spec.span - mark - frame.spec.rafter.thickness,
          }));
        turned.forEach((one, i) => {
          expect([one.piece, one.hand]).toEqual([marks[i]!.piece, marks[i]!.hand]);
          expect(one.mark).toBeCloseTo(marks[i]!.mark, 6);
        });
      }),
      { seed: 10 },
    );
  });
});

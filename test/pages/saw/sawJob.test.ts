import { describe, expect, it, vi } from "vitest";
import { roofAsked, stampOf, type RoofAsked } from "../../../src/pages/packet/packetAsked.ts";
import {
  doneOf,
  newSawJob,
  progress,
  readSawJob,
  roofChange,
  tick,
  untick,
  withRoof,
  type SawJob,
} from "../../../src/pages/saw/sawJob.ts";
import { sawState } from "../../../src/pages/saw/sawState.ts";
import { sawStore } from "../../../src/pages/saw/sawStore.ts";
import { canBecome, waysOut } from "../../../src/pages/saw/wrongCut.ts";
import type { Inputs } from "../../../src/pane/state/fields.ts";
import { sawAddress } from "../../../src/pane/writing/printAddress.ts";
import { PACKET_ROOFS, typed } from "../packet/roofs.ts";

const roofFrom = (inputs: Inputs): RoofAsked => roofAsked(sawAddress("", typed(inputs)))!;
const SAMPLE = PACKET_ROOFS.sample;
const roof = roofFrom(SAMPLE);
const pieceOf = (mark: string, of = roof) => of.model.pieces.find((piece) => piece.mark === mark)!;

/** A job with so many of a piece ticked. */
const ticked = (counts: readonly (readonly [string, "left" | "right" | "plain", number])[]): SawJob =>
  counts.reduce(
    (job, [mark, hand, count]) =>
      Array.from({ length: count }).reduce<SawJob>((one) => tick(one, pieceOf(mark), hand), job),
    newSawJob(roof),
  );

function storage(): Storage {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (i: number) => [...kept.keys()][i] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  } as unknown as Storage;
}

describe("ticks", () => {
  it("count up to what the roof needs, by mark and hand, and back", () => {
    let job = ticked([["J1", "left", 9]]);
    expect(doneOf(job, "J1", "left")).toBe(pieceOf("J1").left);
    expect(doneOf(job, "J1", "right")).toBe(0);
    job = untick(job, "J1", "left");
    expect(doneOf(job, "J1", "left")).toBe(pieceOf("J1").left - 1);
    expect(untick(job, "J2", "left")).toBe(job);
    const all = roof.model.pieces.reduce((sum, { left, right, plain }) => sum + left + right + plain, 0);
    expect(progress(job, roof.model)).toEqual({ done: pieceOf("J1").left - 1, all });
  });
  it("are read back as they were kept, and nothing else is", () => {
    const job = ticked([["H", "plain", 2]]);
    expect(readSawJob(JSON.stringify(job))).toEqual(job);
    for (const text of ["", "{}", "null", JSON.stringify({ ...job, form: 2 }), JSON.stringify({ ...job, cuts: [{}] })])
      expect(readSawJob(text)).toBeNull();
  });
});

describe("a changed roof", () => {
  // By hand: two feet more of length add commons and ridge; hips and jacks stay. A flatter roof has no rafter of the old.
  it("two feet longer keeps hips, commons and jacks, and takes no more than there are", () => {
    const job = ticked([
      ["H", "plain", 4],
      ["J1", "left", 2],
      ["R", "plain", 1],
    ]);
    const longer = roofFrom({ ...SAMPLE, Length: "38'" });
    const change = roofChange(job, roof.model, longer.model);
    expect(change.serve.map(({ mark }) => mark).sort()).toEqual(["H", "H", "H", "H", "J1", "J1"]);
    expect(change.unused).toMatchObject([{ mark: "R", count: 1 }]);
    const next = withRoof(job, longer, change);
    expect([doneOf(next, "H", "plain"), doneOf(next, "J1", "left"), doneOf(next, "R", "plain")]).toEqual([4, 2, 0]);
    expect(next.known).toEqual([stampOf(roof), stampOf(longer)]);
  });
  it("of another pitch keeps none of the rafters, of another unit nothing at all", () => {
    const job = ticked([["J1", "left", 2]]);
    for (const inputs of [{ ...SAMPLE, Pitch: "8" }, PACKET_ROOFS.metric]) {
      const change = roofChange(job, roof.model, roofFrom(inputs).model);
      expect(change.serve).toEqual([]);
      expect(change.unused).toMatchObject([{ mark: "J1", hand: "left", count: 2 }]);
    }
  });
  it("says what is to be cut off, and leaves that unticked", () => {
    const job = ticked([["J1", "left", 1]]);
    const shorter = roofFrom({ ...SAMPLE, Correction: "-1/2", "End correction": "-1/2" });
    const change = roofChange(job, roof.model, shorter.model);
    expect(change.recuts).toMatchObject([{ mark: "J1", hand: "left", count: 1, from: "J1" }]);
    expect(change.recuts[0]!.off).toBeCloseTo(0.5, 9);
    expect(doneOf(withRoof(job, shorter, change), "J1", "left")).toBe(0);
  });
});

describe("which job a roof is", () => {
  it("the one that knows its stamp; of the same name it asks, once something is cut; of another name a new one", () => {
    const own = storage();
    const kept = sawStore(() => own);
    const first = sawState(kept, roof, null)!;
    first.set((job) => tick(job, pieceOf("H"), "plain"));
    const again = sawState(kept, roof, null)!;
    expect([again.id.value, again.changed.value, doneOf(again.job.value, "H", "plain")]).toEqual([
      first.id.value,
      null,
      1,
    ]);
    const changed = sawState(kept, roofFrom({ ...SAMPLE, Length: "38'" }), null)!;
    expect(changed.id.value).toBe(first.id.value);
    expect(changed.changed.value!.change.serve).toHaveLength(1);
    // Nothing is changed before one says so.
    expect(changed.job.value.roof).toBe(first.job.value.roof);
    const other = sawState(kept, roofFrom({ ...SAMPLE, "Job name": "Mill" }), null)!;
    expect(other.id.value).not.toBe(first.id.value);
    expect(kept.list()).toHaveLength(2);
  });
  it("has the boards of its plan on the cards, of the roof that it has now", async () => {
    const own = storage();
    const state = sawState(
      sawStore(() => own),
      roof,
      null,
    )!;
    const longer = roofFrom({ ...SAMPLE, Length: "38'" });
    // Changed before the plan of the first roof is found.
    state.set((job) => withRoof(job, longer, roofChange(job, roof.model, longer.model)));
    const said = () => state.cards.value.find(({ mark }) => mark === "H")!.cards[0]!.steps[0]!;
    await vi.waitFor(() => expect(said()).toMatch(/^Cut from the plan's board/), 15_000);
  });
  it("works on where the browser keeps nothing, and says so", () => {
    const state = sawState(
      sawStore(() => {
        throw new Error("SecurityError");
      }),
      roof,
      null,
    )!;
    expect(state.unkept.value).toBe(true);
    state.set((job) => tick(job, pieceOf("H"), "plain"));
    expect(doneOf(state.job.value, "H", "plain")).toBe(1);
  });
});

describe("a piece cut wrong", () => {
  it("becomes what SALVAGE says, of what is still to be cut", () => {
    const cut = { hand: "left", longPoint: pieceOf("J1").longPoint - 1 } as const;
    const ways = waysOut(roof.model, newSawJob(roof), pieceOf("J1"), cut);
    expect(ways[0]).toMatchObject({ hand: "left", piece: { mark: "J2" }, open: 4 });
    expect(ways[0]!.lost).toBeCloseTo(cut.longPoint - pieceOf("J2").longPoint, 9);
    const after = waysOut(roof.model, ticked([["J2", "left", 4]]), pieceOf("J1"), cut);
    expect(after[0]).toMatchObject({ hand: "right", piece: { mark: "J2" } });
  });
  it("a common gives a jack of either hand, with nothing lost by turning its square head", () => {
    const common = pieceOf("C");
    const ways = waysOut(roof.model, newSawJob(roof), common, { hand: "plain", longPoint: common.longPoint - 2 });
    expect(ways.slice(0, 2).map(({ piece, hand, turn }) => [piece.mark, hand, turn])).toEqual([
      ["J1", "left", 0],
      ["J1", "right", 0],
    ]);
  });
  it("is offered for jacks and commons of a wing only where slope, tail and seat are the same", () => {
    const winged = roofFrom(PACKET_ROOFS.winged);
    for (const piece of winged.model.pieces.filter(canBecome))
      for (const hand of ["left", "right", "plain"] as const) {
        if (piece[hand] === 0) continue;
        for (const way of waysOut(winged.model, newSawJob(winged), piece, { hand, longPoint: piece.longPoint })) {
          expect([piece.mark, way.piece.slope, way.piece.tail]).toEqual([piece.mark, piece.slope, piece.tail]);
          expect(way.piece.longPoint).toBeLessThanOrEqual(piece.longPoint + 0.25);
        }
      }
    expect(canBecome(pieceOf("H"))).toBe(false);
  });
});

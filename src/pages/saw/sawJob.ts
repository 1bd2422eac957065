import * as z from "zod/mini";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import { changes as changesOf } from "../../roof/tables/changes.ts";
import { HANDS, type Hand, type Piece } from "../../roof/frame/piece.ts";
import { roofText } from "../../pane/state/remembered.ts";
import { stampOf, type RoofAsked } from "../packet/packetAsked.ts";

/** The form in which progress is kept. A later one has a higher number. */
export const SAW_FORM = 1;

const Cut = z.object({ mark: z.string(), hand: z.enum(HANDS), longPoint: z.number() });
const Recut = z.object({ ...Cut.shape, count: z.number(), from: z.string(), off: z.number() });
const Job = z.object({
  form: z.literal(SAW_FORM),
  /** As the pane keeps it. */
  roof: z.string(),
  /** Stamps of the roofs that came from the sheet and are this job. */
  known: z.array(z.string()),
  cuts: z.array(Cut),
  recuts: z.array(Recut),
  tapes: z.record(z.string(), z.string()),
  at: z.string(),
  order: z.enum(["long", "saw", "board"]),
});

/** A piece that is cut, with its length to the long point as it was cut. */
export type CutPiece = z.infer<typeof Cut>;

/** Pieces cut for an older roof that serve once they are cut shorter at the head. */
export type Recut = z.infer<typeof Recut>;

/** A roof at the saw, and how far one is. All that is ticked stays as it was cut, whatever becomes of the roof. */
export type SawJob = z.infer<typeof Job>;

/** Reads what was kept; null for anything else. */
export function readSawJob(text: string): SawJob | null {
  try {
    const { data } = Job.safeParse(JSON.parse(text));
    return data ?? null;
  } catch {
    return null;
  }
}

/** A roof of which nothing is cut yet. */
export function newSawJob(roof: RoofAsked): SawJob {
  return {
    form: SAW_FORM,
    roof: roofText(roof),
    known: [stampOf(roof)],
    cuts: [],
    recuts: [],
    tapes: {},
    at: "",
    order: "long",
  };
}

/** How many of a piece and hand are ticked. */
export const doneOf = ({ cuts }: SawJob, mark: string, hand: Hand): number =>
  cuts.filter((cut) => cut.mark === mark && cut.hand === hand).length;

/** How many pieces of a roof are ticked, of how many. No mark counts for more than the roof needs of it. */
export function progress(job: SawJob, { pieces }: RoofModel): { readonly done: number; readonly all: number } {
  let done = 0;
  let all = 0;
  for (const piece of pieces)
    for (const hand of HANDS) {
      done += Math.min(piece[hand], doneOf(job, piece.mark, hand));
      all += piece[hand];
    }
  return { done, all };
}

/** Ticks one more of a piece, never more than there are to cut. */
export function tick(job: SawJob, piece: Piece, hand: Hand): SawJob {
  const { mark, longPoint } = piece;
  return doneOf(job, mark, hand) >= piece[hand] ? job : { ...job, cuts: [...job.cuts, { mark, hand, longPoint }] };
}

/** Takes the last tick of a piece off. */
export function untick(job: SawJob, mark: string, hand: Hand): SawJob {
  const at = job.cuts.findLastIndex((cut) => cut.mark === mark && cut.hand === hand);
  return at < 0 ? job : { ...job, cuts: job.cuts.filter((_, i) => i !== at) };
}

/** What a changed roof makes of what is ticked. */
export interface RoofChange {
  /** Ticked pieces that are pieces of the new roof as they are. */
  readonly serve: readonly CutPiece[];
  readonly recuts: readonly Recut[];
  /** Ticked pieces that nothing of the new roof can use. */
  readonly unused: readonly (CutPiece & { readonly count: number })[];
}

/** Which ticked pieces serve a changed roof. A roof of the other unit takes none: nothing is said of lengths that were read otherwise. */
export function roofChange(job: SawJob, old: RoofModel, now: RoofModel): RoofChange {
  const { unit } = now.frame.spec;
  const ticked = cutPieces(job, old.pieces);
  const { changes, unused } =
    old.frame.spec.unit === unit
      ? changesOf(ticked, now.pieces, unit)
      : { changes: [], unused: ticked.flatMap((piece) => HANDS.map((hand) => ({ piece, hand, count: piece[hand] }))) };
  const found = changes.flatMap(({ piece: { mark }, hand, from, off }) =>
    from ? [{ mark, hand, longPoint: from.piece.longPoint, count: from.count, from: from.piece.mark, off }] : [],
  );
  return {
    serve: found
      .filter(({ off }) => off === 0)
      .flatMap(({ mark, hand, longPoint, count }) => Array.from({ length: count }, () => ({ mark, hand, longPoint }))),
    recuts: found.filter(({ off }) => off > 0),
    unused: unused
      .filter(({ count }) => count > 0)
      .map(({ piece: { mark, longPoint }, hand, count }) => ({ mark, hand, longPoint, count })),
  };
}

/** The ticked pieces of a roof, each length by itself, with as many of each hand as are ticked. */
function cutPieces({ cuts }: SawJob, pieces: readonly Piece[]): Piece[] {
  const lengths = new Map(cuts.map((cut) => [`${cut.mark} ${cut.longPoint}`, cut]));
  return [...lengths.values()].flatMap(({ mark, longPoint }) => {
    const piece = pieces.find((one) => one.mark === mark);
    if (!piece) return [];
    const count = (hand: Hand) =>
      cuts.filter((cut) => cut.mark === mark && cut.hand === hand && cut.longPoint === longPoint).length;
    return [{ ...piece, longPoint, left: count("left"), right: count("right"), plain: count("plain") }];
  });
}

/** The job with a changed roof: what serves stays ticked. */
export function withRoof(job: SawJob, roof: RoofAsked, { serve, recuts }: RoofChange): SawJob {
  return {
    ...job,
    roof: roofText(roof),
    known: [...job.known, stampOf(roof)],
    cuts: [...serve],
    recuts: [...recuts],
    tapes: {},
  };
}

import { batch, computed, signal, type ReadonlySignal, type Signal } from "@preact/signals";
import type { CutCard } from "../../drawing/cards/cutCard.ts";
import type { Stick } from "../../drawing/cards/drawSticks.ts";
import { Failure } from "../../measure/result.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { orderNow } from "../../pane/state/orderNow.ts";
import { cardsOf } from "../../pane/writing/cards.ts";
import type { Offline } from "../bench/offline.ts";
import { roofOf, stampOf, type RoofAsked } from "../packet/packetAsked.ts";
import { newSawJob, roofChange, withRoof, type RoofChange, type SawJob } from "./sawJob.ts";
import type { SawStore } from "./sawStore.ts";

/** How it stands with this page when there is no network; null until that is known. */
export const offline = signal<Offline | null>(null);

/** The stamp of the roof as it is typed in the sheet now, once it is typed over. */
export const newer = signal<string | null>(null);

/** What one looks at. */
export type View = "piece" | "tape" | "wrong" | "list";

/** The cards of one board, and its pieces: one of a rafter, several where commons are alike. */
export interface SawCard {
  readonly mark: string;
  readonly pieces: readonly Piece[];
  readonly cards: readonly CutCard[];
}

/** A job in hand. */
export interface SawState {
  readonly id: Signal<string>;
  readonly job: Signal<SawJob>;
  readonly roof: ReadonlySignal<RoofAsked>;
  readonly cards: ReadonlySignal<readonly SawCard[]>;
  readonly card: ReadonlySignal<SawCard>;
  readonly view: Signal<View>;
  /** What was last done. */
  readonly says: Signal<string>;
  /** The browser does not keep it. */
  readonly unkept: Signal<boolean>;
  /** The roof came changed from the sheet, and what becomes of the ticked pieces; null once that is settled. */
  readonly changed: Signal<{ readonly roof: RoofAsked; readonly change: RoofChange } | null>;
  /** Changes the job, and keeps it. */
  set(change: (job: SawJob) => SawJob): void;
}

/** Which job an asked roof is: of those of its name the one that knows it, else the last one, which it then changes, else a new one. */
export function sawState(
  store: SawStore,
  asked: RoofAsked | null,
  kept: { id: string; job: SawJob } | null,
): SawState | null {
  const named = asked ? store.list().filter(({ job }) => roofOf(job.roof)?.model.job === asked.model.job) : [];
  const own = kept ?? named.find(({ job }) => job.known.includes(stampOf(asked!))) ?? named[0];
  const first = own ?? (asked && { id: store.freeId(), job: newSawJob(asked) });
  const start = first && roofOf(first.job.roof);
  if (!first || !start) return null;
  const id = signal(first.id);
  const job = signal(first.job);
  const sticks = signal<{ readonly roof: string; readonly sticks: readonly Stick[] } | null>(null);
  const text = computed(() => job.value.roof);
  const roof = computed(() => roofOf(text.value) ?? start);
  const cards = computed(() => {
    const { model } = roof.value;
    const plan = sticks.value?.roof === text.value ? { sticks: sticks.value.sticks } : {};
    return inOrder(grouped(cardsOf(model, plan), model.pieces), job.value.order, plan.sticks ?? []);
  });
  const unkept = signal(!store.keep(first.id, first.job));
  const change =
    asked && !first.job.known.includes(stampOf(asked)) ? roofChange(first.job, start.model, asked.model) : null;
  // Nothing is cut yet: nothing is to be asked.
  const silent = change && first.job.cuts.length === 0;
  const state: SawState = {
    id,
    job,
    roof,
    cards,
    card: computed(() => cards.value.find(({ mark }) => mark === job.value.at) ?? cards.value[0]!),
    view: signal<View>("piece"),
    says: signal(""),
    unkept,
    changed: signal(change && !silent ? { roof: asked!, change } : null),
    set(how) {
      const next = how(job.value);
      if (next === job.value) return;
      batch(() => {
        job.value = next;
        unkept.value = !store.keep(id.value, next);
      });
    },
  };
  if (silent) state.set((one) => withRoof(one, asked!, change));
  // Now, and whenever the roof is another; a plan that comes late is of a roof before.
  text.subscribe((now) => void planned(roof.value, now).then((found) => now === text.value && (sticks.value = found)));
  return state;
}

async function planned(roof: RoofAsked, text: string) {
  const order = await orderNow(roof).catch(() => null);
  return order && !(order instanceof Failure) ? { roof: text, sticks: order.plan.sticks } : null;
}

function grouped(cards: readonly CutCard[], pieces: readonly Piece[]): SawCard[] {
  const marks = [...new Set(cards.map(({ mark }) => mark))];
  return marks.map((mark) => {
    const own = new Set(mark.split(", "));
    return {
      mark,
      pieces: pieces.filter((piece) => own.has(piece.mark)),
      cards: cards.filter((card) => card.mark === mark),
    };
  });
}

/** Longest first is the order of the cards; by the saw's settings, so that it is set once for all that are cut alike; by the boards of the plan. */
function inOrder(cards: readonly SawCard[], order: SawJob["order"], sticks: readonly Stick[]): readonly SawCard[] {
  const key = ({ pieces: [piece], mark }: SawCard): number => {
    if (order === "saw") return (piece!.head.tilts[0] ?? 0) * 1000 + piece!.headCut;
    const own = new Set(mark.split(", "));
    return sticks.find((stick) => stick.pieces.some(({ name }) => own.has(name)))?.number ?? Infinity;
  };
  return order === "long" ? cards : [...cards].sort((a, b) => key(a) - key(b) || 0);
}

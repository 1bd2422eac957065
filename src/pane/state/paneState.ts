import { jackTable } from "../../../functions/jackTable.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { BlockRow } from "../../../functions/arguments/roofBlock.ts";
import { computed, signal, type ReadonlySignal, type Signal } from "@preact/signals";
import type { Area, Host, Written } from "../../hosts/host.ts";
import type { Cell } from "../../registry/worksheetFunction.ts";
import type { Result } from "../../measure/result.ts";
import { Refusal } from "../../registry/refusal.ts";
import { blockRows } from "./blockCells.ts";
import { START_INPUTS, type Inputs } from "./fields.ts";
import { report, type Report } from "./report.ts";
import type { SheetBlock } from "./sheetBlock.ts";
import { exceededIn, type Exceeded } from "./exceeded.ts";
import { looking, type Looking } from "./looking.ts";
import type { Order } from "./orderNow.ts";
import { evaluateFunction } from "./evaluateFunction.ts";
import { texts } from "../words/texts.ts";

/** A question that must be answered before anything is written. */
export interface Question {
  readonly title: string;
  readonly lines: readonly string[];
  /** The last choice is the way out, which Escape takes. A choice with `sure` asks once more, in those words. */
  readonly choices: readonly { readonly id: string; readonly label: string; readonly sure?: string }[];
  answer(id: string): void;
}

/** Something that is going on in the sheet. */
export interface Work {
  readonly done: number;
  readonly of: number;
  /** It has taken long enough to be shown. */
  readonly shown: boolean;
  stop(): void;
}

/** What the pane knows of a sheet and its roof. */
export interface PaneState extends RoofState {
  readonly host: Host;
}

/** What the pane knows. Components read it; the functions that reach the sheet change it. */
export interface RoofState {
  readonly inputs: Signal<Inputs>;
  readonly report: ReadonlySignal<Report>;
  /** The last roof that could be framed, which stays in view while something typed cannot be read; null before there was one. */
  readonly lastModel: ReadonlySignal<RoofModel | null>;
  readonly looking: Looking;
  /** Its figures outside the published ones. */
  readonly exceeded: ReadonlySignal<readonly Exceeded[]>;
  readonly schedule: ReadonlySignal<readonly (readonly Cell[])[] | null>;
  readonly selection: Signal<Area | null>;
  readonly cellMessage: Signal<{ readonly at: string; readonly message: string } | null>;
  /** A block under the selection that could be used. */
  readonly offer: Signal<SheetBlock | null>;
  /** The block in the sheet that the fields follow. */
  readonly link: Signal<SheetBlock | null>;
  readonly question: Signal<Question | null>;
  readonly work: Signal<Work | null>;
  readonly written: Signal<readonly Written[]>;
  /** What was last done, or why it was not: shown and read out. */
  readonly says: Signal<string>;
  /** Width of the saw cut that the lumber order counts, as typed. */
  readonly kerf: Signal<string>;
  /** The order that was found last, and for what: inputs and kerf as text. */
  readonly found: Signal<{ readonly key: string; readonly order: Result<Order> } | null>;
  /** Tapes measured on site, by the jack's name. */
  readonly measured: Signal<Readonly<Record<string, string>>>;
}

export const paneState = (host: Host): PaneState => ({ host, ...roofState() });

/** The same without a sheet, to look at a roof. */
export function roofState(): RoofState {
  const inputs = signal(START_INPUTS);
  const now = computed(() => report(inputs.value));
  let last: RoofModel | null = null;
  return {
    inputs,
    report: now,
    lastModel: computed(() => (last = now.value.model ?? last)),
    looking: looking(),
    exceeded: computed(() => (now.value.model ? exceededIn(now.value.model) : [])),
    schedule: computed(() => {
      if (!now.value.model) return null;
      const table = evaluateFunction(jackTable, [blockRows(inputs.value)]);
      return Array.isArray(table) && !(table instanceof Refusal) ? table : null;
    }),
    selection: signal<Area | null>(null),
    cellMessage: signal(null),
    offer: signal<SheetBlock | null>(null),
    link: signal<SheetBlock | null>(null),
    question: signal<Question | null>(null),
    work: signal<Work | null>(null),
    written: signal<readonly Written[]>([]),
    says: signal(""),
    kerf: signal(""),
    found: signal(null),
    measured: signal({}),
  };
}

/** Types into a field. */
export function setInput(state: PaneState, row: BlockRow, text: string, wing?: string): void {
  const inputs = state.inputs.value;
  state.inputs.value =
    wing === undefined
      ? { ...inputs, [row]: text }
      : { ...inputs, wings: inputs.wings.map((one) => (one.letter === wing ? { ...one, [row]: text } : one)) };
  // What was said belonged to the roof before.
  state.says.value = "";
}

/** Asks, with a way out that writes nothing, and waits for the answer; null where that way was taken, which is then said. */
export function ask(state: PaneState, question: Omit<Question, "answer">): Promise<string | null> {
  return new Promise((resolve) => {
    state.question.value = {
      ...question,
      choices: [...question.choices, { id: "cancel", label: texts.ask.cancel }],
      answer(id) {
        state.question.value = null;
        if (id === "cancel") state.says.value = texts.ask.canceled;
        resolve(id === "cancel" ? null : id);
      },
    };
  });
}

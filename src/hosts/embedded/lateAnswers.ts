import { LimitedMap } from "../../measure/limitedMap.ts";
import type { Answer } from "../../registry/call.ts";
import type { Place } from "./output.ts";

const MOST_KEPT = 200;

/**
 * Answers that come as promises, for asynchronous functions.
 *
 * The engine's own asynchronous functions hold up the whole calculation and lose edits made meanwhile (0.25.1: an edit that stops a
 * running calculation is forgotten when the calculation ends instead of stopping). So a call answers at once, with "not yet", and the
 * cells that wait are calculated again when the answer is there. Equal arguments give equal answers, so an answer is kept by its call.
 */
export class LateAnswers {
  readonly #answers = new LimitedMap<string, Answer>(MOST_KEPT);
  readonly #waiting = new Map<string, Place[]>();
  readonly #recalculate: (places: readonly Place[]) => void;

  constructor(recalculate: (places: readonly Place[]) => void) {
    this.#recalculate = recalculate;
  }

  get pending(): number {
    return this.#waiting.size;
  }

  /** The answer of a call if it is known, else null: the cell is then calculated again once it is. */
  get(call: string, place: Place, start: () => Promise<Answer>): Answer | null {
    const known = this.#answers.get(call);
    if (known !== undefined) return known;
    const waiting = this.#waiting.get(call);
    if (waiting) {
      waiting.push(place);
      return null;
    }
    this.#waiting.set(call, [place]);
    void start().then((answer) => this.#arrived(call, answer));
    return null;
  }

  #arrived(call: string, answer: Answer): void {
    this.#answers.set(call, answer);
    const places = this.#waiting.get(call) ?? [];
    this.#waiting.delete(call);
    this.#recalculate(places);
  }
}

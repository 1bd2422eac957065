import { signal, type Signal } from "@preact/signals";
import type { Hand, Piece } from "../../roof/frame/piece.ts";
import type { FieldPlace } from "./fields.ts";

/** A piece by its mark, in one of its hands. */
export interface Picked {
  readonly mark: string;
  readonly hand: Hand;
}

/** How the roof is drawn. */
export type ViewName = "plan" | "round" | "plates" | "corner" | "hip" | "valley";

/** Turned about the plumb line, 0 at the front and 90 at the right end, and looked down on. Degrees. */
export interface Eye {
  readonly turn: number;
  readonly down: number;
}

/** Where one may stand: the first is where it starts. */
export const STANDS = {
  angle: { turn: -28, down: 32 },
  front: { turn: 0, down: 8 },
  end: { turn: 90, down: 8 },
  above: { turn: 0, down: 90 },
} as const satisfies Record<string, Eye>;

/** Turns the frame by so many degrees. */
export function turnBy({ eye }: Looking, about: number, over: number): void {
  const { turn, down } = eye.value;
  eye.value = { turn: ((((turn + about) % 360) + 540) % 360) - 180, down: Math.max(0, Math.min(90, down + over)) };
}

/** What the reader looks at: none of it is kept, and none of it changes the roof. */
export interface Looking {
  readonly view: Signal<ViewName>;
  /** From where the frame is looked at, in degrees. */
  readonly eye: Signal<Eye>;
  /** The piece whose card stands on the screen. */
  readonly picked: Signal<Picked | null>;
  /** The mark of the piece under the pointer, or the one that the keyboard is at. */
  readonly pointed: Signal<string | null>;
  /** The field that was typed into last, for its help. */
  readonly inHand: Signal<FieldPlace>;
  /** The field that has the keyboard, whose length or members are lit in the plan. */
  readonly lit: Signal<FieldPlace | null>;
  readonly help: Signal<boolean>;
  /** The pane fills the window. */
  readonly whole: Signal<boolean>;
}

export function looking(): Looking {
  return {
    view: signal<ViewName>("plan"),
    eye: signal<Eye>(STANDS.angle),
    picked: signal<Picked | null>(null),
    pointed: signal<string | null>(null),
    inHand: signal<FieldPlace>({ row: "Span" }),
    lit: signal<FieldPlace | null>(null),
    help: signal(false),
    whole: signal(false),
  };
}

/** The hand that a piece is shown in: the one asked for if it is cut in it. */
export function handOf({ left, right, plain }: Pick<Piece, "left" | "right" | "plain">, asked: Hand = "left"): Hand {
  if (plain > 0) return "plain";
  return asked === "right" ? (right > 0 ? "right" : "left") : left > 0 ? "left" : "right";
}

/** Opens the card of a piece, or of the one `by` places on in the list, round its ends. */
export function pick({ picked }: Looking, pieces: readonly Piece[], mark: string, hand: Hand = "left", by = 0): void {
  const at = pieces.findIndex((one) => one.mark === mark);
  const piece = pieces[(at + by + pieces.length) % pieces.length];
  if (at >= 0 && piece) picked.value = { mark: piece.mark, hand: handOf(piece, hand) };
}

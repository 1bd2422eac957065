import type { Unit } from "../../measure/unit.ts";
import type { TailCut } from "../members/tail.ts";

/** A board's section: thickness and depth as they are, and the name people give it ("2x8"). */
export interface Section {
  readonly name: string;
  readonly thickness: number;
  readonly depth: number;
}

/** A wing: a block with a ridge of its own, square to a long plate of the main roof. Left and right are as seen from outside, facing its wall. */
export interface WingSpec {
  /** A to H, as in its heading. */
  readonly letter: string;
  readonly wall: "front" | "back";
  /** Level, from that wall's left corner to the wing's nearer plate line; flush: the wing's outer side is in the plane of that end. */
  readonly from: number | "flush left" | "flush right";
  /** Level, from the main plate line to the wing's outer one. */
  readonly out: number;
  readonly span: number;
  /** Its outer end. */
  readonly end: "hip" | "gable";
  readonly pitch: number;
  /** null: as its pitch. */
  readonly endPitch: number | null;
  /** null: by the level fascia. */
  readonly overhang: number | null;
  readonly endOverhang: number | null;
  readonly ridge: Section;
  /** Which of its valleys runs on to the main ridge; null: the one whose head is farther from the nearer end of that ridge. */
  readonly longValley: "left" | "right" | null;
  readonly framing: "framed in" | "laid over";
  /** Thickness of the main roof's sheathing, on which a wing that is laid over stands; null where it is framed in. */
  readonly sheathing: number | null;
}

/** Everything a hip roof is framed from: a rectangle, and the wings on its long sides. Lengths in one unit; pitches as rise over run. */
export interface RoofSpec {
  readonly unit: Unit;
  /** Across the plates, and along them. */
  readonly span: number;
  readonly length: number;
  readonly pitch: number;
  /** null: as the main pitch. */
  readonly endPitch: number | null;
  /** Left and right end, seen from the front. */
  readonly ends: "hip and hip" | "hip and gable" | "gable and hip";
  /** Center to center. */
  readonly spacing: number;
  /** Level, from the plate line to the plumb tail cut. */
  readonly overhang: number;
  /** null: by the level fascia. */
  readonly endOverhang: number | null;
  readonly rafter: Section;
  readonly hip: Section;
  readonly valley: Section;
  /** null where commons meet with no ridge between them. */
  readonly ridge: Section | null;
  /** One of the two is given: the level width of the seat, or the height above plate. */
  readonly seat: number | null;
  readonly heel: number | null;
  readonly setOutFrom: "king common" | "corner";
  readonly hipTop: "dropped" | "backed" | "shifted";
  readonly hipHead: "king commons" | "ridge";
  /** Added to the long point of every main jack and every end jack, learned from the first one tried. */
  readonly correction: number;
  readonly endCorrection: number;
  /** Lengths of board on hand, shortest first. */
  readonly boards: readonly number[];
  /** Taken off every board of an order, both ends together. */
  readonly endTrim: number;
  /** Whether a jack may lie end for end in its board, its crown down, where that saves a board or money. */
  readonly crownDown: boolean;
  /** How the tails of commons and jacks end. A level one is plumb as deep as the board that is nailed to it. */
  readonly tailCut: TailCut;
  /** The boards along the eaves, the sub-fascia on the tails and the fascia on it; null where there is none. */
  readonly fascia: Section | null;
  readonly subFascia: Section | null;
  /** Which bays along the plates are blocked: those between rafters, those beside a hip. */
  readonly blocking: "none" | "plate" | "corner" | "both";
  /** Percent, and pieces. */
  readonly waste: number;
  readonly spares: number;
  readonly wings: readonly WingSpec[];
}

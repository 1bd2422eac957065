import { LimitedMap } from "../../src/measure/limitedMap.ts";
import { Failure, type Result } from "../../src/measure/result.ts";
import { CellError, Refusal, type Place } from "../../src/registry/refusal.ts";
import type { Input, Parameter } from "../../src/registry/worksheetFunction.ts";
import { eaveBoards } from "../../src/roof/frame/eaveBoards.ts";
import { plateBlocks } from "../../src/roof/frame/plateBlocks.ts";
import { frame, type Frame } from "../../src/roof/frame/frame.ts";
import type { Piece } from "../../src/roof/frame/piece.ts";
import { pieces } from "../../src/roof/frame/pieces.ts";
import type { FrameProblem } from "../../src/roof/frame/frameProblem.ts";
import type { ArgumentProblem } from "./blockProblem.ts";
import { readWholeBlock, type BlockRow } from "./roofBlock.ts";

/** A roof block read and framed: what every table of the roof is made from. */
export interface RoofModel {
  readonly frame: Frame;
  /** Ridges, rafters, hips and valleys. */
  readonly pieces: readonly Piece[];
  /** Boards along the eaves and blocks over the plates, where the block asks for them. */
  readonly eaves: readonly Piece[];
  /** What papers call the job; empty where it has no name. */
  readonly job: string;
}

/** Why a block is no roof. */
export type RoofProblem = ArgumentProblem | FrameProblem;

/** How many different blocks are kept framed; a sheet seldom has more roofs than that. */
const KEPT = 32;
const framed = new LimitedMap<string, Result<RoofModel, RoofProblem>>(KEPT);

/** A block of label and value that describes one roof; cells that share a block share its framing. */
export function roof<const N extends string>(name: N): Parameter<RoofModel, N> {
  return {
    name,
    description:
      "Roof block: two columns, label and value, such as Span, Length and Pitch; a wing takes one column more.",
    quantity: "roof",
    block: true,
    read(input, reading) {
      const model = readRoof(name, input);
      if (model instanceof Failure) return model;
      // Every other length of the call is in the block's unit.
      reading.unit = model.frame.spec.unit;
      reading.unitFrom = { argument: name };
      return model;
    },
  };
}

/** Reads and frames a roof block; the same cells give the same model, framed once. */
export function readRoof(name: string, input: Input): Result<RoofModel, RoofProblem> {
  const key = keyOf(input);
  const known = key === null ? undefined : framed.get(key);
  if (known) return known;
  const model = frameBlock(name, input);
  if (key !== null && !(model instanceof CellError)) framed.set(key, model);
  return model;
}

function frameBlock(name: string, input: Input): Result<RoofModel, RoofProblem> {
  const read = readWholeBlock(name, input);
  if (read instanceof Failure) return read;
  const { spec, job } = read;
  const set = frame(spec);
  if (!(set instanceof Failure))
    return { frame: set, pieces: pieces(set), eaves: [...eaveBoards(set), ...plateBlocks(set)], job };
  return new Refusal(set.problem, framePlace(name, set.problem), spec.unit);
}

/** Where in a block lies what cannot be framed. */
export function framePlace(argument: string, problem: FrameProblem): Place {
  const place = { argument, row: ROW_OF[problem.at] };
  return "wing" in problem ? { ...place, wing: problem.wing } : place;
}

/** The row of the block in which each part of the spec stands. */
const ROW_OF: Readonly<Record<FrameProblem["at"], BlockRow>> = {
  span: "Span",
  length: "Length",
  endPitch: "End pitch",
  spacing: "Spacing",
  hip: "Hip",
  hipHead: "Hip head",
  seat: "Seat",
  heel: "Heel",
  tailCut: "Tail cut",
  correction: "Correction",
  endCorrection: "End correction",
  valley: "Valley",
  wingFrom: "From left corner",
  wingOut: "Out from wall",
  wingSpan: "Span",
  wingPitch: "Pitch",
  wingEndPitch: "End pitch",
  longValley: "Long valley",
  wingFraming: "Wing framing",
  wingSheathing: "Sheathing",
};

/** Two blocks with the same key are the same block; null for cells that no key tells apart. */
function keyOf(input: Input): string | null {
  if (!Array.isArray(input) || input.length > 200) return null;
  let key = "";
  for (const row of input) {
    if (!Array.isArray(row)) return null;
    for (const cell of row) {
      if (typeof cell === "object" && cell !== null) return null;
      const text = String(cell ?? "");
      if (text.length > 600) return null;
      key += `${typeof cell} ${text.length} ${text}|`;
    }
    key += "\n";
  }
  return key;
}

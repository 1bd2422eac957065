import type { Kinds } from "../../src/measure/result.ts";
import type { StockProblem } from "../../src/cutting/model/stockProblem.ts";
import type { Refuses } from "../../src/registry/worksheetFunction.ts";
import type { MemberProblem } from "../../src/roof/members/memberProblem.ts";
import { memberWords } from "./memberWords.ts";
import { stockWords } from "./stockWords.ts";
import { sayIn, type Words } from "./words.ts";

/** Problems of single functions. */
export type OwnProblem = Kinds<{ "no triangle": { least: number; most: number }; "sides differ": object }>;

const ownWords: Words<OwnProblem> = {
  "no triangle": ({ least, most }, say) => [
    `with these sides it lies between ${say.least(least)} and ${say.most(most)}`,
    "Measure the diagonal between the ends of the two sides again",
  ],
  "sides differ": () => [
    "the main and end jacks of this roof differ",
    "Type Main or End, whichever the jack was cut for",
  ],
};

type Refused = MemberProblem | StockProblem<"no board long enough"> | OwnProblem;
const WORDS: Words<Refused> = {
  ...memberWords,
  ...ownWords,
  "no board long enough": stockWords["no board long enough"],
};

/** One refusal of the core: its kind, the argument at fault, and when it comes up. */
function refuses(kind: Refused["kind"], argument: string, when: string): Refuses {
  return {
    kind,
    when,
    say: (problem) => `${argument}: ${WORDS[kind](problem as never, sayIn(null, true)).join(". ")}.`,
  };
}

export const noHip = refuses("no hip", "otherPitch, corner", "the two planes meet in no hip or valley at this corner");
export const ridgeFillsRun = refuses("ridge fills the run", "run", "half the ridge is as thick as the run");
export const headPastCorner = refuses(
  "head past the corner",
  "run",
  "the run is too small for a hip's head between king commons",
);
export const seatTakesHeel = refuses(
  "seat takes the heel",
  "seat",
  "the seat is so wide that no height above plate is left",
);
export const heelAboveDepth = refuses(
  "heel above depth",
  "heel",
  "the height above plate is the plumb depth of the rafter or more",
);
export const jackTooWide = refuses("jack wider than offset", "offset", "the jack is thicker than its offset");
export const shortBelowPlate = refuses(
  "short point below plate",
  "offset",
  "the jack's short point would lie below the plate line",
);
export const squareTailCutsSeat = refuses(
  "square tail cuts the seat",
  "overhang",
  "the overhang is so small that a square tail cut would run into the seat",
);
export const fasciaMissing = refuses("fascia missing", "fascia", "a level tail cut has no fascia");
export const fasciaNotUsed = refuses("fascia not used", "fascia", "a plumb or square tail cut has a fascia");
export const fasciaTooDeep = refuses(
  "fascia too deep",
  "fascia",
  "the fascia's plumb cut is as deep as the rafter's plumb end",
);
export const fasciaAbovePlate = refuses(
  "fascia above the plate",
  "fascia",
  "the level cut would lie above the plate's top",
);
export const tapeBelowHeel = refuses(
  "tape not above heel",
  "tape",
  "the tape is no longer than the height above plate",
);
export const valleyJackVanishes = refuses(
  "valley jack vanishes",
  "offset",
  "nothing is left of the valley jack at this offset",
);
export const noValleyJack = refuses(
  "no valley jack fits",
  "run",
  "the run is too short for a valley jack at any offset",
);
export const crippleVanishes = refuses("cripple vanishes", "distance", "hip and valley stand too near each other");
export const dropTakesHeel = refuses("drop takes the heel", "heel", "the hip must be dropped below the plate");
export const hipAbovePlate = refuses(
  "hip too shallow for the plate",
  "depth",
  "the hip is not deep enough to reach down to the plate",
);
export const noTriangle = refuses("no triangle", "diagonal", "the three measures do not make a triangle");
export const noBoard = refuses("no board long enough", "length", "no board on hand is long enough");
export const sidesDiffer = refuses("sides differ", "side", "side is Both, and the roof's main and end jacks differ");

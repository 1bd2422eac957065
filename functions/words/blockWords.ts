import { lengthText } from "../../src/measure/lengthText.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { isBlank } from "../../src/registry/cells.ts";
import type { BlockProblem } from "../arguments/blockProblem.ts";
import { shown } from "./shown.ts";
import type { Say, Words } from "./words.ts";

/** Why a block, a list or a range cannot be read. */
export const blockWords: Words<BlockProblem> = {
  "row missing": ({ row }, say) => [
    "the block has no value for it",
    `Type ${row === "Pitch" ? `6 or ${say.typed("6/12")}` : say.unit === "mm" ? say.typed(METRIC[row]) : USUAL[row]} beside the label ${row}`,
  ],
  "row of 0": () => ["0 was read, as some sheets hand over an empty cell", "Type a length, or take the row away"],
  "overhang of 0": () => [
    "0 was read, as some sheets hand over an empty cell",
    "Type none for no overhang, or leave it blank for a level fascia",
  ],
  "unknown heading": ({ read }) => [
    `${shown(read)} heads no column of a roof block`,
    "Type Main roof over the main roof's values, and Wing A to Wing H over a wing's",
  ],
  "wing twice": ({ heading }) => [`${heading} stands there twice`, "Type another letter over one of the two columns"],
  "too many wings": ({ most }) => [
    `there are more than ${most} columns of wings`,
    `Keep ${most} at most, and point to no other columns`,
  ],
  "wing without": ({ row }) => ["the column has no value for it", `Type ${WING_EXAMPLES[row]}, or clear the column`],
  "row of the main roof": ({ row, read }) => [
    `${shown(read)} was read in a wing's column`,
    row === "Length" ? "Type Out from wall instead" : "Clear it: the main roof's value counts for the wings too",
  ],
  "row of a wing": ({ read }) => [
    `${shown(read)} was read in the main roof's column`,
    "Type it in a column of its own, right of the main roof's: that is a wing",
  ],
  "wing on an end": ({ read }) => [
    `${shown(read)} was read, and the ends of the main roof take no wing yet`,
    "Type front or back",
  ],
  "no place on the wall": ({ read }) => [
    `${shown(read)} was read`,
    "Type a length above 0, such as 8', or flush left or flush right",
  ],
  "wings need a ridge": () => ["a roof with wings needs its ridge boards", "Type a size such as 2x10, or clear it"],
  "heel beside seat": () => [
    "the block has both Heel and Seat, and one follows from the other",
    "Keep one of the two rows",
  ],
  "level tail without fascia": () => [
    "a level cut starts at the foot of the board on the tail, and the block has neither Fascia nor Sub-fascia",
    "Type a size such as 2x6 beside the label Fascia, or plumb or square here",
  ],
  "blocking without spacing": (_, { unit }) => [
    "blocks are cut to the spacing, and the block has no value for it",
    `Type ${unit === "mm" ? 600 : 24} beside the label Spacing`,
  ],
  "part for percent": ({ waste }) => {
    const percent = Number((waste * 100).toPrecision(12));
    return [`${waste} was read, which a sheet makes of ${percent}%`, `Type ${percent} for ${percent} percent`];
  },
  "too short in this unit": ({ read, value }, { unit, typed }) => [
    `${shown(read)} was read, which is too short in ${UNIT[unit ?? "in"]}`,
    `Type ${unit === "mm" ? `${typed(`${value} m`)} for meters` : `${value}' for feet`}`,
  ],
  "too long in this unit": ({ read, value }, say) => [
    `${shown(read)} was read, which is too long in inches`,
    `Type ${say.typed(`${value} mm`)} for millimeters, or in beside the label Unit`,
  ],
  "boards too short in this unit": ({ read }, { unit, typed }) => {
    const [mark, units] = unit === "mm" ? [" m", "meters"] : ["'", "feet"];
    const marked = String(read)
      .trim()
      .replace(/[\d.]+/g, `$&${mark}`);
    return [
      `${shown(read)} was read, and no board so short in ${UNIT[unit ?? "in"]} frames a roof`,
      `Type ${typed(marked)} for ${units}`,
    ];
  },
  "row in other unit": ({ read, unit, unitRow }) => [
    `${shown(read)} is ${unit === "mm" ? "metric" : "feet and inches"}, but the block is in ${unit === "mm" ? "feet and inches" : "millimeters"}`,
    `Type every length of the block in one unit${unitRow ? ", or change the row Unit" : ""}`,
  ],

  "no length of board": (_, say) => [
    "no length of board was given",
    `Type lengths such as 8', 12', 16', or ${say.typed("8' to 20' by 2'")}`,
  ],
  "text too long for boards": ({ read }) => [
    `${shown(read)} was read, which is too long for a list of lengths`,
    "Type lengths such as 8', 12', 16'",
  ],
  "comma between meters": ({ read }) => [
    `${shown(read)} was read`,
    "Type a decimal point instead of a decimal comma, and a blank after a comma between two lengths",
  ],
  "too many lengths of board": ({ most }) => [
    `more than ${most} lengths of board were given`,
    "Type the few that are on hand",
  ],
  "range without ends or step": ({ read }, say) => [
    `${shown(read)} was read`,
    `Type the shortest length, the longest and the step between them, such as ${range(say)}`,
  ],
  "range runs backwards": ({ read }) => [`${shown(read)} runs backwards`, "Type the shortest length first"],
  "0 in a range": () => ["0 was read, as some sheets hand over an empty cell", "Point to the filled cells only"],
  "too many kinds of board": ({ most }) => [
    `more than ${most} kinds of board were given`,
    "Point to the ones that are to be had",
  ],
  "price missing": ({ read }) => [
    `${isBlank(read) ? "nothing was given" : "0 was read"}, but other boards have a price`,
    "Type a price for each board or for none; 0.01 for boards that are paid for",
  ],
  "no boards in a row": () => [
    "0 was read, as some sheets hand over an empty cell",
    "Take the row out where there are none, or type how many there are",
  ],

  "no values": ({ examples: [one, several] }, { block }) => ["nothing was given", `Type ${one}, or ${block(several)}`],
  "too many values": ({ most }) => [`more than ${most} values were given`, `Point to ${most} cells at most`],

  "neither list nor roof": ({ read, headings }) => [
    isBlank(read)
      ? "nothing was given"
      : Array.isArray(read)
        ? "this block is neither"
        : `${shown(read)} was read, which is neither`,
    `Point to a list with the headings ${headings.join(", ")}, or to a roof block (Span, Length, Pitch and so on)`,
  ],
  "piece without name": ({ read }) => [
    isBlank(read) ? "nothing was given" : `${shown(read)} was read`,
    "Type what is written on the piece, such as J1",
  ],
  "name too long": ({ read, most }) => [`${shown(read)} is too long for a board`, `Type ${most} letters at most`],
  "tilt out of range": ({ read }) => [
    `${shown(read)} was read; it is the saw's tilt from square, under 85 degrees`,
    "Type 45 for a regular jack",
  ],
  "tilt without hand": () => ["a piece with a saw tilt is left or right", "Type left or right"],
  "too many joints": ({ most }) => [`there are more than ${most} places to join`, `Keep ${most} at most`],
  "slant of unknown size": ({ read }, { typed }) => [
    `${shown(read)} is no lumber size, and a slanting cut needs thickness and depth`,
    `Type 2x8, ${typed("1.5 x 7.25")} or ${typed("38 x 184")}`,
  ],

  "kerf too wide": ({ read }, { unit, typed }) => [
    `${shown(read)} was read, which is wider than a saw cuts`,
    `Type ${unit === "mm" ? typed("3 mm") : `1/8"`}`,
  ],
  "trim takes the board": ({ trim, board }, { unit, typed }) => [
    `${lengthText(trim, unit, 16)} off the ends leaves nothing of a board of ${lengthText(board, unit, 16)}`,
    `Type ${unit === "mm" ? typed("12 mm") : `1/2"`}, or take the short board out of the list`,
  ],
};

const UNIT: Readonly<Record<Unit, string>> = { in: "inches", mm: "millimeters" };
const WING_EXAMPLES = {
  Wall: "front or back",
  "From left corner": "its distance from the wall's left corner, or flush left or flush right",
  "Out from wall": "how far it stands out",
  Span: "its span across the plates",
  Ends: "hip or gable",
} as const;
const USUAL = { Span: "24' or 288", Length: "36' or 432" } as const;
const METRIC = { Span: "7.2 m", Length: "10.8 m" } as const;

const range = ({ unit, typed }: Say) => typed(unit === "mm" ? "2.4 m to 6 m by 0.6 m" : "8' to 20' by 2'");

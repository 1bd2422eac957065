import { roofCells } from "./arguments/roofCells.ts";
import { Failure } from "../src/measure/result.ts";
import type { Unit } from "../src/measure/unit.ts";
import { choice, length } from "../src/registry/parameters.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { isBlank } from "../src/registry/cells.ts";
import { refuse } from "../src/registry/refuse.ts";
import { worksheetFunction, type Parameter } from "../src/registry/worksheetFunction.ts";
import { sideName } from "../src/roof/frame/piece.ts";
import { salvage as rescues, type Rescue } from "../src/roof/tables/salvage.ts";
import { refused } from "./arguments/refused.ts";
import { roof } from "./arguments/roofModel.ts";
import { smallLength } from "./arguments/smallLength.ts";

const columns: readonly Column<Rescue, Unit>[] = [
  column("Piece", "text", ({ piece }) => piece.mark),
  column("Side", "text", ({ piece }) => sideName(piece.planes)),
  column("Hand", "text", ({ hand }) => hand),
  column("Long point", "length", ({ piece }) => piece.longPoint),
  column("Cut off", "length", ({ lost }) => lost),
  column("How", "text", how, 480),
  column("Needed", "count", ({ piece, hand }) => piece[hand]),
];

/** Whether the jack is one of an end; null where that makes no difference. */
const SIDES = { Main: false, End: true, Both: null } as const;

/** Less than a tape shows. */
const UNSEEN = { in: 1 / 32, mm: 0.5 } as const;

/** What the jack was cut as: of wings any piece on a hip or valley can be named. */
const pieceMark: Parameter<string | null, "piece"> = {
  name: "piece",
  description: "Mark of the piece it was cut as, such as J1-A, VJ2-A or HV1-A; side then does not count.",
  quantity: "text",
  optional: true,
  defaultText: "a hip jack of the main roof",
  read(cell, reading) {
    if (isBlank(cell)) return null;
    if (typeof cell === "string") return cell.slice(0, 64);
    return refuse(reading, { kind: "no such word", read: cell, choices: ["J1-A", "VJ2-A", "HV1-A"] });
  },
};

export const salvage = worksheetFunction({
  name: "SALVAGE",
  family: "roof",
  summary:
    "The jacks that a wrongly cut one can still become, of the same hand or re-cut to the other, least lost first.",
  parameters: [
    roof("roof"),
    choice("side", "Side the jack was cut for: Main, End, or Both where both have the same jacks.", [
      "Main",
      "End",
      "Both",
    ] as const),
    choice("hand", "Hand it was cut to, left or right: seen from outside, looking up the hip.", [
      "left",
      "right",
    ] as const),
    length("longPoint", "Length to its long point as it was cut, along the top edge.", { example: "53.25" }),
    pieceMark,
  ],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings; lengths in the unit of the block. One row says so where it can become none.",
  examples: [
    {
      cells: [roofCells({ Span: 192, Length: 288, Pitch: 6 }), "Both", "left", 80.1511],
      // prettier-ignore
      result: [
        headings(columns),
        ["J1", "Both", "left", 80.1511, 0, "as it is", 4],
        ["J2", "Both", "left", 53.3183, 26.8328, `cut 2' 2 13/16" off along the head cut`, 4],
        ["J2", "Both", "right", 53.3183, 26.8328, `re-cut the head to the other hand: 1 11/16" lost by that, 2' 1 1/8" to its length`, 4],
        ["J3", "Both", "left", 26.4855, 53.6656, `cut 4' 5 11/16" off along the head cut`, 4],
        ["J3", "Both", "right", 26.4855, 53.6656, `re-cut the head to the other hand: 1 11/16" lost by that, 4' 4" to its length`, 4],
      ],
      tolerance: 0.0001,
      source:
        "by hand: 1.5 tan 45° / cos 26.57° = 1.6771 lost to the other hand, 26.8328 to the next jack (framing-square table: 26.83)",
    },
    {
      cells: [roofCells({ Span: 192, Length: 288, Pitch: 6 }), "Main", "right", `1' 8"`],
      result: [
        headings(columns),
        ["none", "Main", "right", "", "", "shorter than every jack that it could become: keep it for blocking", 0],
      ],
      tolerance: 0.0001,
    },
  ],
  refuses: refused("sides differ", "no such piece"),
  compute({ roof: { frame, pieces }, side, hand, longPoint, piece }) {
    const found = rescues(frame, pieces, { end: SIDES[side], hand, longPoint, mark: piece });
    if (found instanceof Failure) return found;
    if (found.length > 0) return tableOf(columns, found, frame.spec.unit);
    const none = "shorter than every jack that it could become: keep it for blocking";
    return [headings(columns), ["none", side, hand, "", "", none, 0]];
  },
});

function how({ lost, turn, short, ends }: Rescue, unit: Unit): string {
  const text = (value: number) => smallLength(value, unit);
  const rest = lost - turn;
  const turned = `re-cut ${ends === "both" ? "both ends" : `the ${ends}`} to the other hand: ${text(turn)} lost by that`;
  if (short > UNSEEN[unit])
    return `${turn > 0 ? turned : "as it is"}; ${text(short)} short, which can often still be used (common practice, no source): try it in place`;
  if (turn > 0) return rest > UNSEEN[unit] ? `${turned}, ${text(rest)} to its length` : turned;
  return lost > UNSEEN[unit] ? `cut ${text(lost)} off along the head cut` : "as it is";
}

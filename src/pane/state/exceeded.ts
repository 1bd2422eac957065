import { cautions } from "../../../functions/cautions.ts";
import type { RoofModel } from "../../../functions/arguments/roofModel.ts";
import type { Unit } from "../../measure/unit.ts";
import { tableOf } from "../../registry/columns.ts";
import { sawReaches } from "../../roof/members/sawReach.ts";
import { cautions as cautionsOf, type Caution, type CautionKind } from "../../roof/tables/cautions.ts";
import type { Piece } from "../../roof/frame/piece.ts";

/** A figure of the roof outside the published one, in words, and the pieces that it concerns. */
export interface Exceeded {
  readonly check: string;
  readonly here: string;
  readonly published: string;
  readonly remark: string;
  readonly marks: readonly string[];
  /** The end of the piece that it is at. */
  readonly end: "head" | "foot";
}

/** Every figure that an inspector looks at, in words: headings, then those outside a published figure first. */
export function cautionTable({ frame, pieces }: RoofModel): string[][] {
  return worded(cautionsOf(frame, pieces), frame.spec.unit);
}

function worded(list: readonly Caution[], unit: Unit): string[][] {
  return tableOf(cautions.columns, list, unit).map((row) => row.map(String));
}

/** What lies outside a published figure, as `cautionTable` words it. */
export function exceededIn({ frame, pieces }: RoofModel): readonly Exceeded[] {
  const { unit } = frame.spec;
  // Most roofs are inside of all: what need not be worded takes no time of a keystroke.
  const list = cautionsOf(frame, pieces).filter(({ outside }) => outside);
  const [, ...rows] = worded(list, unit);
  return list.map((caution, i) => {
    const [check, here, published, , remark] = rows[i] as [string, string, string, string, string];
    const marks = pieces.filter((piece) => concerns(caution, piece, unit)).map(({ mark }) => mark);
    return { check, here, published, remark, marks, end: AT_HEAD.has(caution.kind) ? "head" : "foot" };
  });
}

const AT_HEAD: ReadonlySet<CautionKind> = new Set<CautionKind>([
  "jacks' tilt",
  "hip's tilt",
  "toe below hip",
  "jacks proud",
  "valley's tilt",
  "ridge depth",
  "ridge thickness",
]);

function concerns(caution: Caution, piece: Piece, unit: Unit): boolean {
  const { kind } = caution;
  const { member, foot, head, section } = piece;
  const past = () => [...head.tilts, ...foot.tilts].some((tilt) => !sawReaches(tilt, section.thickness, unit));
  switch (kind) {
    case "ridge thickness":
    case "ridge depth":
      return member === "ridge";
    case "hip thickness":
    case "hip depth":
    case "hip deeper than commons":
    case "hip's heel":
    case "hip's tilt":
      return member === "hip" || member === "broken hip";
    case "broken hip":
      return member === "broken hip";
    case "valley thickness":
    case "valley depth":
    case "valley proud":
    case "toe below long valley":
    case "valley's tilt":
      return member === "valley";
    case "valley board width":
      return foot.bearer === "valley board" && standsOn(caution, piece);
    case "toe below valley":
      return foot.bearer === "valley" || head.bearer === "valley";
    case "valley pieces' tilt":
      return past() && (foot.bearer === "valley" || head.bearer === "valley");
    case "jacks' tilt":
      return member === "jack" && past() && standsOn(caution, piece);
    case "toe below hip":
    case "jacks proud":
      return member === "jack" && standsOn(caution, piece);
    case "widest bay":
    case "sizing":
      return false;
    default:
      return standsOn(caution, piece);
  }
}

/** Whether a rafter stands on the side that a caution is of. */
function standsOn({ side, wing }: Caution, { planes }: Piece): boolean {
  return planes.some((plane) =>
    wing !== "" ? plane.wing === wing : side === null || side === "Both" || plane.end === (side === "End"),
  );
}

import { lengthText } from "../../src/measure/lengthText.ts";
import type { Reason } from "../../src/measure/reason.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import { limitText } from "./limitText.ts";
import type { PieceSource } from "../arguments/pieceList.ts";

/** Why pieces cannot be cut from boards, worded by the piece and, on a user's own list, by its row. */
export function orderRefusal({ tag, figures }: Reason, source: PieceSource, unit: Unit | null): Refusal {
  const row = "list" in source ? source.list[Number(figures["row"]) - 1]?.row : undefined;
  const at = row === undefined ? "pieces" : `pieces, row ${row}`;
  const { name, size } = figures;
  const length = (figure: string) => lengthText(Number(figures[figure]), unit, 16);
  const words: Record<string, string> = {
    noPieces: "pieces: there is no piece to cut. Type how many under Count.",
    noBoardOfSize: `boards: there is none of ${size}, which ${name} is cut from (${at}). Add a row for that size, or type a plain list of lengths for every size.`,
    pieceTooLong: `${at}: ${name} is ${length("length")} long and takes a ${size} of ${limitText(Number(figures["needs"]), unit, "least")}; the longest board is ${length("longest")}. Add a longer board to boards, or splice the piece as the local code allows.`,
    pieceTurn: `${at}: ${name} is ${length("length")} long, and its slanting head takes more than that. Type a smaller Saw tilt or a longer Length.`,
    stockShort: `boards: there are not enough of ${size}; no way of cutting gets all pieces out of them. Raise a Count, or add boards.`,
    stockNotFound: `boards: no way was found to get all pieces out of the ${size} there are, in the time that a cell may take. Raise a Count, or add boards.`,
  };
  return new Refusal("#VALUE!", words[tag] ?? `pieces: the order cannot be planned (${tag}).`);
}

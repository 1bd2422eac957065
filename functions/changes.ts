import { roofCells } from "./arguments/roofCells.ts";
import { Failure } from "../src/measure/result.ts";
import { lengthText } from "../src/measure/lengthText.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { changes as changesOf, type Change, type Unused } from "../src/roof/tables/changes.ts";
import { refused } from "./arguments/refused.ts";
import { roof } from "./arguments/roofModel.ts";
import { markOf } from "./words/stickText.ts";

type Row = Change | Unused;
const isNew = (row: Row): row is Change => "needed" in row;
const oldOf = (row: Row) => (isNew(row) ? row.from?.piece : row.piece);
const named = ({ mark }: { mark: string }, hand: Row["hand"]) => markOf({ name: mark, hand });

const columns: readonly Column<Row, Unit>[] = [
  column("Piece", "text", (row) => (isNew(row) ? named(row.piece, row.hand) : ""), 100),
  column("Long point", "length", (row) => (isNew(row) ? row.piece.longPoint : "")),
  column("Count", "count", (row) => (isNew(row) ? row.needed : row.count)),
  column("Old piece", "text", (row) => (oldOf(row) ? named(oldOf(row)!, row.hand) : ""), 100),
  column("Old long point", "length", (row) => oldOf(row)?.longPoint ?? ""),
  column("What to do", "text", whatToDo, 300),
];

const OLD = roofCells({ Span: 192, Length: 288, Pitch: 9 });

export const changes = worksheetFunction({
  name: "CHANGES",
  family: "roof",
  summary: "Compares a changed roof with the old one: which pieces already cut still serve, and which to cut anew.",
  parameters: [roof("old"), roof("new")],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings; lengths along the top edge in the unit of the blocks. A piece serves where its size, slope, seat, saw tilt and hand are the same and it is long enough, its tail too; what it is too long is cut off. The last rows name old pieces that nothing can use.",
  examples: [
    {
      cells: [OLD, roofCells({ Span: 192, Length: 312, Pitch: 9 })],
      // prettier-ignore
      result: [
        headings(columns),
        ["H", 152.4744, 4, "H", 152.4744, "serves as it is"],
        ["R", 121.5, 1, "", "", "cut anew"],
        ["C", 119.0625, 6, "C", 119.0625, "serves as it is"],
        ["C", 119.0625, 2, "", "", "cut anew"],
        ["K", 119.0625, 4, "K", 119.0625, "serves as it is"],
        ["KE", 119.0625, 2, "KE", 119.0625, "serves as it is"],
        ["J1 L", 89.6117, 4, "J1 L", 89.6117, "serves as it is"],
        ["J1 R", 89.6117, 4, "J1 R", 89.6117, "serves as it is"],
        ["J2 L", 59.6117, 4, "J2 L", 59.6117, "serves as it is"],
        ["J2 R", 59.6117, 4, "J2 R", 59.6117, "serves as it is"],
        ["J3 L", 29.6117, 4, "J3 L", 29.6117, "serves as it is"],
        ["J3 R", 29.6117, 4, "J3 R", 29.6117, "serves as it is"],
        ["", "", 1, "R", 97.5, "not needed any more: keep it for blocking"],
      ],
      tolerance: 0.0001,
      source: "by hand: two feet more of length add one pair of commons and a longer ridge; hips, jacks and kings stay",
    },
    {
      cells: [OLD, roofCells({ Span: 192, Length: 288, Pitch: 6 })],
      // prettier-ignore
      result: [
        headings(columns),
        ["H", 142.875, 4, "", "", "cut anew"],
        ["C", 106.4927, 6, "", "", "cut anew"],
        ["K", 106.4927, 4, "", "", "cut anew"],
        ["KE", 106.4927, 2, "", "", "cut anew"],
        ["R", 97.5, 1, "R", 97.5, "serves as it is"],
        ["J1 L", 80.1511, 4, "", "", "cut anew"],
        ["J1 R", 80.1511, 4, "", "", "cut anew"],
        ["J2 L", 53.3183, 4, "", "", "cut anew"],
        ["J2 R", 53.3183, 4, "", "", "cut anew"],
        ["J3 L", 26.4855, 4, "", "", "cut anew"],
        ["J3 R", 26.4855, 4, "", "", "cut anew"],
        ["", "", 6, "C", 119.0625, "not needed any more: keep it for blocking"],
        ["", "", 4, "K", 119.0625, "not needed any more: keep it for blocking"],
        ["", "", 2, "KE", 119.0625, "not needed any more: keep it for blocking"],
        ["", "", 4, "H", 152.4744, "not needed any more: keep it for blocking"],
        ["", "", 4, "J1 L", 89.6117, "not needed any more: keep it for blocking"],
        ["", "", 4, "J1 R", 89.6117, "not needed any more: keep it for blocking"],
        ["", "", 4, "J2 L", 59.6117, "not needed any more: keep it for blocking"],
        ["", "", 4, "J2 R", 59.6117, "not needed any more: keep it for blocking"],
        ["", "", 4, "J3 L", 29.6117, "not needed any more: keep it for blocking"],
        ["", "", 4, "J3 R", 29.6117, "not needed any more: keep it for blocking"],
      ],
      tolerance: 0.0001,
    },
  ],
  refuses: refused("blocks of two units"),
  compute({ old, new: now }) {
    const { unit } = now.frame.spec;
    if (old.frame.spec.unit !== unit) return new Failure({ kind: "blocks of two units" });
    const found = changesOf([...old.pieces, ...old.eaves], [...now.pieces, ...now.eaves], unit);
    return tableOf<Row, Unit>(columns, [...found.changes, ...found.unused], unit);
  },
});

function whatToDo(row: Row, unit: Unit): string {
  if (!isNew(row)) return "not needed any more: keep it for blocking";
  if (row.from === null) return "cut anew";
  const { off, offTail, piece, from } = row;
  const recut =
    piece.tailEnd.cut !== from.piece.tailEnd.cut && piece.tail > 0 ? `cut its tail ${piece.tailEnd.cut}` : "";
  const parts = [
    off > 0 ? `cut ${lengthText(off, unit)} off at the head` : "",
    offTail > 0 ? `cut ${lengthText(offTail, unit)} off at the tail` : "",
    recut,
  ].filter((part) => part !== "");
  return parts.length === 0 ? "serves as it is" : parts.join(", ");
}

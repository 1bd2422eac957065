import { roofCells } from "./arguments/roofCells.ts";
import { lengthText } from "../src/measure/lengthText.ts";
import { column, headings, tableOf, type Cell, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import type { Piece, PieceEnd } from "../src/roof/frame/piece.ts";
import { joinPlaces, stockPieces, type RoofStock } from "../src/roof/tables/stockPieces.ts";
import { spareRafter } from "../src/roof/tables/takeOff.ts";
import { roof, type RoofModel } from "./arguments/roofModel.ts";

/** A piece as it is sawn, and the piece of the roof that it is. */
interface Listed {
  readonly stock: RoofStock;
  readonly piece: Piece;
}

const columns: readonly Column<Listed, RoofModel>[] = [
  column("Job", "text", (_, { job }) => job, 140),
  column("Piece", "text", ({ stock }) => stock.name, 100),
  column("Size", "text", ({ stock }) => stock.size, 100),
  column("Length", "length", ({ stock }) => stock.length),
  column("Count", "count", ({ stock }) => stock.count),
  column("Hand", "text", ({ stock }) => stock.hand),
  column("Pitch", "text", ({ piece }) => pitchCell(piece.slope)),
  // A head of two cheeks is cut afterwards: its piece is sawn square.
  column("Saw tilt", "angle", ({ stock, piece }) => tiltCell(stock, stock.slants[1], piece.head)),
  column("Join", "text", joinText, 240),
];

/** More columns where a roof has wings, whose valleys cut feet too. */
const footColumns: readonly Column<Listed, RoofModel>[] = [
  column("Foot tilt", "angle", ({ stock, piece: { foot, tailCut } }) =>
    tiltCell(stock, -stock.slants[0], tailCut ?? foot),
  ),
];

export const pieceList = worksheetFunction({
  name: "PIECELIST",
  family: "roof",
  summary: "Lists the pieces of a roof as they are sawn, spares included, for LUMBERORDER.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns:
    "a table that spills, with headings; lengths along the top edge, tail to long point, in the unit of the block. Stack the lists of several roofs and one order takes them all: repeated headings are passed over. Join says where a ridge, or a board along an eave, may be joined, from its first end. With wings, Foot tilt is the tilt at a low end that a valley cuts; a tilt has a minus where its long point is on the face that is not of the piece's hand.",
  examples: [
    {
      cells: [roofCells({ Span: 192, Length: 288, Pitch: 9, Overhang: 16, Spares: 1, "Job name": "Reading room" })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Reading room", "R", "2x8", 97.5, 1, "plain", "", "", `2' 0 3/4", 4' 0 3/4", 6' 0 3/4"`],
        ["Reading room", "C", "2x6", 139.0625, 6, "plain", 9, "", ""],
        ["Reading room", "K", "2x6", 139.0625, 4, "plain", 9, "", ""],
        ["Reading room", "KE", "2x6", 139.0625, 2, "plain", 9, "", ""],
        ["Reading room", "H", "2x8", 178.0869, 4, "plain", 6.364, "", ""],
        ["Reading room", "J1", "2x6", 109.6117, 4, "left", 9, 45, ""],
        ["Reading room", "J1", "2x6", 109.6117, 4, "right", 9, 45, ""],
        ["Reading room", "J2", "2x6", 79.6117, 4, "left", 9, 45, ""],
        ["Reading room", "J2", "2x6", 79.6117, 4, "right", 9, 45, ""],
        ["Reading room", "J3", "2x6", 49.6117, 4, "left", 9, 45, ""],
        ["Reading room", "J3", "2x6", 49.6117, 4, "right", 9, 45, ""],
        ["Reading room", "C spare", "2x6", 139.0625, 1, "plain", 9, "", ""],
      ],
      tolerance: 0.0001,
      source:
        "3-4-5 triangles: a common (96 - 0.75 + 16) x 5/4; the longest jack (72.75 - 0.75 x 1.4142 + 16) x 5/4, offset 72; counted by hand",
    },
    {
      cells: [roofCells({ Span: "5 m", Length: "8 m", Pitch: 6, Ends: "hip and gable" })],
      // prettier-ignore
      result: [
        headings(columns),
        ["", "R", "38 x 184 mm", 5519, 1, "plain", "", "",
         "619 mm, 1219 mm, 1819 mm, 2419 mm, 3019 mm, 3619 mm, 4219 mm, 4819 mm, 5419 mm"],
        ["", "C", "38 x 140 mm", 2773.8423, 20, "plain", 6, "", ""],
        ["", "K", "38 x 140 mm", 2773.8423, 2, "plain", 6, "", ""],
        ["", "KE", "38 x 140 mm", 2773.8423, 1, "plain", 6, "", ""],
        ["", "H", "38 x 184 mm", 3721.5, 2, "plain", 4.2426, "", ""],
        ["", "J1", "38 x 140 mm", 2115.4656, 2, "left", 6, 45, ""],
        ["", "J1", "38 x 140 mm", 2115.4656, 2, "right", 6, 45, ""],
        ["", "J2", "38 x 140 mm", 1444.6452, 2, "left", 6, 45, ""],
        ["", "J2", "38 x 140 mm", 1444.6452, 2, "right", 6, 45, ""],
        ["", "J3", "38 x 140 mm", 773.8248, 2, "left", 6, 45, ""],
        ["", "J3", "38 x 140 mm", 773.8248, 2, "right", 6, 45, ""],
      ],
      tolerance: 0.0001,
    },
  ],
  compute({ roof }) {
    const all = [...roof.pieces, ...roof.eaves];
    const { pieces } = stockPieces(roof.frame, all, () => []);
    const listed = pieces.map((stock): Listed => ({ stock, piece: pieceOf(stock, all) }));
    return tableOf(roof.frame.spec.wings.length === 0 ? columns : [...columns, ...footColumns], listed, roof);
  },
});

/** What goes under no piece's mark is a spare. */
function pieceOf({ name }: RoofStock, pieces: readonly Piece[]): Piece {
  return pieces.find(({ mark }) => mark === name) ?? spareRafter(pieces);
}

/** The tilt of a cut that neighbors may share; minus where its long point is on the face that is not of the piece's hand. */
function tiltCell({ hand }: RoofStock, slant: number, { tilts: [tilt] }: Pick<PieceEnd, "tilts">): Cell {
  if (slant === 0) return "";
  return slant > 0 === (hand === "left") ? tilt! : -tilt!;
}

/** A rise in 12 that a list reads back; text where a bare number would be taken for something else. */
function pitchCell(slope: number): Cell {
  const rise = slope * 12;
  if (rise === 0) return "";
  return rise >= 1 && rise <= 24 ? rise : `${rise} in 12`;
}

function joinText({ piece }: Listed, { frame }: RoofModel): string {
  const at = joinPlaces(frame, piece).map((place) => lengthText(place, frame.spec.unit));
  return [...new Set(at)].join(", ");
}

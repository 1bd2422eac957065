import { WORDS } from "../src/drawing/canvas/words.ts";
import type { PlateStrip } from "../src/drawing/views/drawPlates.ts";
import type { Frame } from "../src/roof/frame/frame.ts";
import { plateMarks } from "../src/roof/tables/plateMarks.ts";
import type { PlateList } from "../src/roof/tables/plateList.ts";
import { hookText, plateName } from "./plateMarks.ts";

/** The plates and ridges of a roof with their marks, as PLATEMARKS names them, to be drawn. */
export const plateStrips = (frame: Frame, wanted: (list: PlateList) => boolean = () => true): PlateStrip[] =>
  plateMarks(frame)
    .filter(wanted)
    .map((list) => ({
      name: plateName(list),
      hook: hookText(list),
      marks: list.marks.map(({ piece, hand, mark, notes }) => ({
        name: hand === "plain" ? piece : `${piece} ${WORDS[hand === "left" ? "leftShort" : "rightShort"]}`,
        from: mark,
        // The inner corner itself is one line.
        to: mark + (notes.some(({ kind }) => kind === "inner corner") ? 0 : frame.spec.rafter.thickness),
      })),
    }));

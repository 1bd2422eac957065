import { pick } from "../state/looking.ts";
import type { RoofState } from "../state/paneState.ts";
import { markStyle, pieceAt } from "./pieceAt.ts";

/** The style that marks the pieces that are looked at. */
export function MarkStyle({ state: { looking } }: { state: RoofState }) {
  return <style>{markStyle(looking.pointed.value, looking.picked.value)}</style>;
}

/** Wherever a piece is drawn or listed, pointing at it marks it everywhere, and pressing it opens its card. */
export function marking({ looking, report }: RoofState) {
  const { pointed } = looking;
  const point = (mark: string | null) => void (pointed.value = mark);
  // Where the keyboard is at a piece, a page that scrolls to it under a pointer at rest does not take the mark away.
  let atKey = false;
  let rests = "";
  const place = ({ clientX, clientY }: PointerEvent) => `${clientX} ${clientY}`;
  return {
    onPointerMove: (event: PointerEvent) => void (rests = place(event)),
    onPointerOver(event: PointerEvent) {
      if (atKey && rests === place(event)) return;
      point(pieceAt(event.target)?.mark ?? null);
    },
    onFocusIn({ target }: Event) {
      const mark = pieceAt(target)?.mark ?? null;
      atKey = mark !== null;
      point(mark);
    },
    onPointerLeave: () => !atKey && point(null),
    onClick({ target }: Event) {
      const piece = (target as Element).closest(".lp-card") ? null : pieceAt(target);
      const { model } = report.value;
      if (piece && model) pick(looking, model.pieces, piece.mark, piece.hand);
    },
  };
}

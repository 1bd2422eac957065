import type { Hand } from "../../roof/frame/piece.ts";
import { wholePiece } from "../../roof/members/pieceParts.ts";
import type { Picked } from "../state/looking.ts";

/** The piece that an element is drawn or listed as; null where it is none. */
export function pieceAt(target: EventTarget | null): Picked | null {
  const one = target instanceof Element ? target.closest("[data-piece]") : null;
  const mark = wholePiece(one?.getAttribute("data-piece") ?? "");
  return mark === "" ? null : { mark, hand: (one!.getAttribute("data-hand") ?? "left") as Hand };
}

/** The style that marks one piece in every drawing and table: those pointed at by their outline, the picked one filled. */
export function markStyle(pointed: string | null, picked: Picked | null): string {
  const drawn = (mark: string, more = "") =>
    [".lp-drawn", ".lp-sticks"].flatMap((place) =>
      [`="${CSS.escape(mark)}"`, `^="${CSS.escape(mark)} "`].map(
        (match) => `${place} polygon[data-piece${match}]${more}`,
      ),
    );
  const rule = (places: readonly string[], looks: string) => `${places.join()}{${looks}}`;
  const both = [...new Set([pointed, picked?.mark])].filter((mark) => typeof mark === "string");
  return [
    ...both.flatMap((mark) => [
      rule(drawn(mark), "stroke:var(--accent)!important;stroke-width:1.6!important;fill:var(--tint)!important"),
      rule([`.lp tr[data-piece="${CSS.escape(mark)}"]>*`], "background:var(--tint)"),
    ]),
    picked
      ? rule(
          drawn(picked.mark, `[data-hand="${picked.hand}"]`),
          "stroke-width:4!important;fill:var(--accent)!important",
        )
      : "",
  ].join("");
}

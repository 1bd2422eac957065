import type { Frame } from "../frame/frame.ts";
import type { Piece } from "../frame/piece.ts";
import { endsOf } from "../frame/pieces.ts";
import { handOf, type Rafter } from "../frame/rafterLines.ts";

/** A piece that ends on a hip or a valley, where it stands: its marks there, and how many of it stand so. */
export interface JackPlace extends Pick<Piece, "foot" | "head" | "offset" | "left" | "right"> {
  readonly piece: Piece;
}

/** Less than this is no difference at all, in any unit. */
const NONE = 1e-6;

/** Every rafter that ends on a hip or a valley, piece by piece; pieces alike that have other marks are rows of their own. */
export function jackPlaces({ spec }: Frame, pieces: readonly Piece[]): JackPlace[] {
  return pieces.flatMap((piece) => {
    if (
      piece.planes.length === 0 ||
      ![piece.foot, piece.head].some(({ bearer }) => bearer !== null && bearer !== "ridge")
    )
      return [];
    const places: { at: JackPlace; rafters: Rafter[] }[] = [];
    for (const rafter of piece.stands as readonly Rafter[]) {
      const { foot, head } = endsOf(rafter, spec.rafter.thickness);
      const known = places.find(({ at }) => near(at.foot.mark, foot.mark) && near(at.head.mark, head.mark));
      if (known) known.rafters.push(rafter);
      else places.push({ at: { piece, foot, head, offset: rafter.offset, left: 0, right: 0 }, rafters: [rafter] });
    }
    return places.map(({ at, rafters }) => {
      const count = (hand: string) => rafters.filter((one) => handOf(one) === hand).length;
      return { ...at, left: count("left"), right: count("right") };
    });
  });
}

const near = (a: number | null, b: number | null): boolean =>
  a === b || (a !== null && b !== null && Math.abs(a - b) < NONE);

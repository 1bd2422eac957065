import { pricedArea } from "../../../functions/takeOff.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Failure } from "../../measure/result.ts";
import type { Unit } from "../../measure/unit.ts";
import { comparedFigure } from "../../roof/tables/comparison.ts";
import type { Inputs } from "./fields.ts";
import { orderNow } from "./orderNow.ts";
import { report } from "./report.ts";

/** The roof as typed with another pitch and spacing. */
export interface Variant {
  readonly pitch: string;
  readonly spacing: string;
  readonly inputs: Inputs;
  /** In words, in the order of the headings after the first; empty where no such roof can be framed. */
  readonly figures: readonly string[];
}

/** What a variant's boards come to: how many, and how long together in the roof's unit; null where they cannot be worked out. */
export interface Boards {
  readonly boards: number;
  readonly length: number;
}

/** Every pitch with every spacing. */
export function variantsOf(inputs: Inputs, pitches: readonly string[], spacings: readonly string[]): Variant[] {
  return pitches.flatMap((pitch) =>
    spacings.map((spacing): Variant => {
      const own: Inputs = { ...inputs, Pitch: pitch, Spacing: spacing };
      const { model, unit } = report(own);
      if (!model) return { pitch, spacing, inputs: own, figures: [] };
      const { frame, pieces } = model;
      const area = pricedArea(comparedFigure("roof area", frame, pieces), unit);
      return {
        pitch,
        spacing,
        inputs: own,
        figures: [
          lengthText(comparedFigure("longest jack", frame, pieces), unit),
          lengthText(comparedFigure("ridge height", frame, pieces), unit),
          `${area.toFixed(1)} ${unit === "mm" ? "m²" : "sq ft"}`,
          comparedFigure("board feet", frame, pieces).toFixed(0),
        ],
      };
    }),
  );
}

/** The boards to buy for a variant; null where its order fails. */
export async function boardsOf({ inputs, figures }: Variant, kerf: string): Promise<Boards | null> {
  if (figures.length === 0) return null;
  const order = await orderNow({ inputs, kerf }).catch(() => null);
  return order === null || order instanceof Failure ? null : { boards: order.boards, length: order.length };
}

/** What boards cost at a price for a foot or a meter; "" where no price is typed, null where it is no number. */
export function costOf({ length }: Boards, price: string, unit: Unit): string | null {
  if (price.trim() === "") return "";
  const each = Number(price.trim().replace(/^\$\s*/, ""));
  if (!Number.isFinite(each) || each < 0) return null;
  return ((unit === "mm" ? length / 1000 : length / 12) * each).toFixed(2);
}

/** A length of boards as it is bought. */
export const boughtText = (length: number, unit: Unit): string =>
  unit === "mm" ? `${(length / 1000).toFixed(1)} m` : `${(length / 12).toFixed(0)} ft`;

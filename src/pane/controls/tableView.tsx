import type { ComponentChildren } from "preact";
import { nonBreaking } from "../../drawing/canvas/nonBreaking.ts";
import { texts } from "../words/texts.ts";

/** A table of texts. It scrolls in a place of its own, so that the pane never does; the first column names the row. */
export function TableView({
  name,
  headings,
  rows,
  numbers,
  pieces,
  racked,
}: {
  name: string;
  headings: readonly string[];
  rows: readonly (readonly ComponentChildren[])[];
  numbers?: readonly boolean[];
  /** The piece of each row, by its mark: the row is marked with it, and opens its card. */
  pieces?: readonly string[];
  /** The length of each row's piece, as a part of the longest: it lies under the row, as in a rack. */
  racked?: readonly number[];
}) {
  return (
    <div class={racked ? "lp-scroll lp-rack" : "lp-scroll"} role="region" tabIndex={0} aria-label={texts.scrolls(name)}>
      <table>
        <caption class="lp-hidden">{name}</caption>
        <thead>
          <tr>
            {headings.map((heading, j) => (
              <th key={heading} scope="col" class={numbers?.[j] ? "lp-number" : undefined}>
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={i} data-piece={pieces?.[i]}>
              {row
                .map((given) => (typeof given === "string" ? nonBreaking(given) : given))
                .map((cell, j) =>
                  j === 0 ? (
                    <th key={j} scope="row" style={racked && { "--part": racked[i] }}>
                      {pieces ? (
                        <button type="button" class="lp-word">
                          {cell}
                        </button>
                      ) : (
                        cell
                      )}
                    </th>
                  ) : (
                    <td key={j} class={numbers?.[j] ? "lp-number" : undefined}>
                      {cell}
                    </td>
                  ),
                )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

import { expect, it } from "vitest";
import { comparePage } from "../../../src/pane/writing/comparePage.ts";

it("prints title, headings, rows and notes in their order, whatever signs stand in them", () => {
  const html = comparePage(
    "A & B",
    ["Piece", "<1>"],
    [
      ["Hip", `9' 4"`],
      ["Jack", "48"],
    ],
    ["Note 1", "5 < 6"],
  );
  const body = html.slice(html.indexOf("<body>"), html.indexOf("</body>"));
  const cell = (tag: string, ...texts: string[]) => texts.map((text) => `<${tag}>${text}</${tag}>`).join("");
  expect(body).toBe(
    `<body>\n<h1>A &#38; B</h1><table><thead><tr>${cell("th", "Piece", "&#60;1&#62;")}</tr></thead><tbody>` +
      `<tr>${cell("td", "Hip", "9' 4&#34;")}</tr><tr>${cell("td", "Jack", "48")}</tr></tbody></table>` +
      `${cell("p", "Note 1", "5 &#60; 6")}\n`,
  );
});

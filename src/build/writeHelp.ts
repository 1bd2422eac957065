import { whenRefused } from "../../functions/words/whenRefused.ts";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { GUIDE_PAGE, helpIndexPage, helpPage, helpPath } from "../registry/helpPage.ts";
import type { WorksheetFunction } from "../registry/worksheetFunction.ts";
import { GUIDE_WIDTHS, guideDrawings } from "./guideDrawings.ts";
import { guidePage } from "./guidePage.ts";

/** Privacy, terms, support, and what to try first in Excel. */
const PAGES = new URL("../pages/help/", import.meta.url);

/** Writes a help page for each function, the list of them, the pages about the program, and the guide with its drawings below `folder`, where a function's helpUrl finds it. */
export function writeHelp(folder: string, functions: readonly WorksheetFunction[]): void {
  mkdirSync(join(folder, "help/drawings/narrow"), { recursive: true });
  writeFileSync(join(folder, "help/index.html"), helpIndexPage(functions));
  for (const definition of functions)
    writeFileSync(join(folder, helpPath(definition)), helpPage(definition, whenRefused));
  writeFileSync(
    join(folder, "help", GUIDE_PAGE),
    guidePage(readFileSync(new URL("../../functions/GUIDE.md", import.meta.url), "utf8")),
  );
  for (const file of readdirSync(PAGES))
    writeFileSync(
      join(folder, "help", file.replace(/\.md$/, ".html")),
      guidePage(readFileSync(new URL(file, PAGES), "utf8")),
    );
  for (const [width, place] of [
    [GUIDE_WIDTHS.wide, "help/drawings"],
    [GUIDE_WIDTHS.narrow, "help/drawings/narrow"],
  ] as const) {
    for (const [name, drawing] of Object.entries(guideDrawings(width)))
      writeFileSync(join(folder, place, name), drawing);
  }
}

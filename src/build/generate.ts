import { mkdirSync, writeFileSync } from "node:fs";
import { whenRefused } from "../../functions/words/whenRefused.ts";
import { functions } from "../../functions/index.ts";
import { referencePage } from "../registry/referencePage.ts";
import { GUIDE_WIDTHS, guideDrawings } from "./guideDrawings.ts";

// `npm run generate`: what is made from the definitions and committed. A test holds it fresh.
writeFileSync("functions/REFERENCE.md", referencePage(functions, whenRefused));
mkdirSync("functions/drawings", { recursive: true });
for (const [name, drawing] of Object.entries(guideDrawings(GUIDE_WIDTHS.wide)))
  writeFileSync(`functions/drawings/${name}`, drawing);

import { writeFileSync } from "node:fs";
import { functions } from "../../functions/index.ts";
import { referencePage } from "../registry/referencePage.ts";

// `npm run generate`: what is made from the definitions and committed. A test holds it fresh.
writeFileSync("functions/REFERENCE.md", referencePage(functions));

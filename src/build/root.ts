import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's folder, wherever a script is started. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), "../..");

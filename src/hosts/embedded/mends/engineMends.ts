import type { Injector } from "@univerjs/core";
import type { Messages } from "../messages.ts";
import { boundedFormulas } from "./boundedFormulas.ts";
import { growingSpills } from "./growingSpills.ts";
import { namesFollowed } from "./namesFollowed.ts";
import { nothingFetched } from "./nothingFetched.ts";
import { presentSheets } from "./presentSheets.ts";
import { shortTurns } from "./shortTurns.ts";
import { treesInTurns } from "./treesInTurns.ts";
import { wholeQuotes } from "./wholeQuotes.ts";

/** Mends what goes wrong inside the engine, one fault a file. Each has a test that fails when the engine changes. */
export function engineMends(injector: Injector, messages: Messages): void {
  wholeQuotes(injector);
  boundedFormulas(injector, (formula) => messages.tooDeep(formula));
  growingSpills(injector, messages);
  nothingFetched(injector);
  namesFollowed(injector);
  presentSheets(injector);
  shortTurns(injector);
  treesInTurns(injector);
}

import type { Injector } from "@univerjs/core";
import type { Messages } from "../messages.ts";
import { blockedSpills } from "./blockedSpills.ts";
import { boundedFormulas } from "./boundedFormulas.ts";
import { firstInOneGo } from "./firstInOneGo.ts";
import { formulasAlone } from "./formulasAlone.ts";
import { growingSpills } from "./growingSpills.ts";
import { namesFollowed } from "./namesFollowed.ts";
import { nothingFetched } from "./nothingFetched.ts";
import { presentSheets } from "./presentSheets.ts";
import { shortTurns } from "./shortTurns.ts";
import { treesInTurns } from "./treesInTurns.ts";
import { wholeQuotes } from "./wholeQuotes.ts";

/** Mends what goes wrong inside the engine, one fault a file. Each has a test that fails when the engine changes. */
export function engineMends(injector: Injector, messages: Messages, onPage: boolean): void {
  wholeQuotes(injector);
  boundedFormulas(injector, (formula) => messages.tooDeep(formula));
  growingSpills(injector, messages);
  blockedSpills(injector);
  nothingFetched(injector);
  formulasAlone(injector);
  namesFollowed(injector);
  presentSheets(injector);
  const first = firstInOneGo(injector, onPage);
  shortTurns(injector, first);
  treesInTurns(injector, first);
}

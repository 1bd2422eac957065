import type { Injector } from "@univerjs/core";
import { liveSuggestions } from "./liveSuggestions.ts";
import { releasedShapes } from "./releasedShapes.ts";

/** Mends what goes wrong on the page around the engine. */
export function pageMends(injector: Injector): void {
  liveSuggestions(injector);
  releasedShapes();
}

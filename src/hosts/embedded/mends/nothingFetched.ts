import type { Injector } from "@univerjs/core";
import { IFunctionService } from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import { FETCHING } from "../../../xlsx/fetching.ts";

/** Takes out the functions that ask for something elsewhere: an address made of cells would send their values away. */
export function nothingFetched(injector: Injector): void {
  injector.get(IFunctionService).unregisterExecutors(...FETCHING);
  injector.get(IDescriptionService).unregisterDescriptions([...FETCHING]);
}

import { LocaleService, LocaleType } from "@univerjs/core";
import { IDescriptionService } from "@univerjs/sheets-formula";
import type { EmbeddedSheet } from "./runningSheet.ts";

/** Loads what the sheet says about its own functions while a formula is typed. */
export async function loadFunctionWords({ univer }: EmbeddedSheet): Promise<void> {
  const { default: words } = await import("formula-words-original");
  const injector = univer.__getInjector();
  injector.get(LocaleService).load({ [LocaleType.EN_US]: words });
  // The sheet asks for the words once, as it starts.
  const descriptions = injector.get(IDescriptionService) as unknown as { _initRegisterDescriptions(): void };
  descriptions._initRegisterDescriptions();
}

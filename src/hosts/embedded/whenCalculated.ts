import type { EmbeddedSheet } from "./runningSheet.ts";

/** Waits until every edit is calculated, late answers included. */
export async function whenCalculated({ calculation, late }: EmbeddedSheet): Promise<void> {
  do {
    if (late.pending) await new Promise((resolve) => setTimeout(resolve, 20));
    await calculation.settled();
  } while (late.pending || calculation.busy);
}

import type { Written } from "./host.ts";

/**
 * A write that failed and of which something may stand in the sheet. Its words say where to look; nothing else is to be said of it.
 *
 * Every other failure of a write has left the sheet as it was.
 */
export class PartlyWritten extends Error {
  /** Takes away what is left, where the sheet knows how. */
  readonly written: Written | null;

  constructor(message: string, written: Written | null = null, options?: ErrorOptions) {
    super(message, options);
    this.name = "PartlyWritten";
    this.written = written;
  }
}

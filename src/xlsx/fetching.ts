import { withoutTexts } from "./withoutTexts.ts";

/** Worksheet functions that ask for something elsewhere: a picture, a page, a running program, a data server. */
export const FETCHING = ["IMAGE", "WEBSERVICE", "RTD", "STOCKHISTORY"] as const;

const CALL = new RegExp(String.raw`(?:^|[^\w.])(?:_xlfn\.|_xlws\.)*(${FETCHING.join("|")})\s*\(`, "i");

/**
 * The name of the function by which a formula asks for something elsewhere, or null.
 *
 * @example
 * fetching('=IMAGE("https://example.org/a.png")') // => "IMAGE"
 * fetching('="IMAGE("') // => null
 */
export function fetching(formula: string): string | null {
  return CALL.exec(withoutTexts(formula))?.[1]?.toUpperCase() ?? null;
}

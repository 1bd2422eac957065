import { contentPolicy } from "./contentPolicy.ts";

/**
 * Whether a request is meant for a server on this machine, by its Host header.
 *
 * A page elsewhere may have its own name answered with this machine's address, and then reads what is here as if it were its own.
 *
 * @example
 * forOwnMachine("localhost:4173") // => true
 * forOwnMachine("roofs.example.org:4173") // => false
 */
export function forOwnMachine(host: string | undefined): boolean {
  return host !== undefined && /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i.test(host);
}

// Excel shows its pane in a frame; no other page may stand in one.
const FRAMED = /(?:^|\/)pane\.html$/;

/** Headers by which a browser holds a page of ours to itself. */
export function safeHeaders(path: string): Record<string, string> {
  const framed = FRAMED.test(path);
  return {
    "content-security-policy": contentPolicy({ office: framed }) + (framed ? "" : "; frame-ancestors 'none'"),
    ...(!framed && { "x-frame-options": "DENY" }),
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
  };
}

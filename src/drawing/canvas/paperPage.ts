import { escaped } from "../../measure/escaped.ts";

/** A printable document as HTML text that needs nothing else. */
export const paperPage = (title: string, style: string, body: string): string =>
  `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title><style>${style}</style></head><body>\n${body}\n</body></html>\n`;

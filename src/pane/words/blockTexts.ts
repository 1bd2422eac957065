import { listed } from "./listed.ts";

/** What the pane says of the block in the sheet. */
export const blockTexts = {
  linked: (at: string) => `Follows the roof block at ${at}.`,
  unlink: "Unlink",
  lostLink: (at: string) => `The roof block at ${at} was deleted. These fields still show its last values.`,
  lostRows: (rows: readonly string[], at: string) =>
    `${listed(rows)} ${rows.length === 1 ? "is" : "are"} no longer in the roof block at ${at}. These fields keep ${rows.length === 1 ? "its value" : "their values"}; tables in the sheet do not read ${rows.length === 1 ? "it" : "them"}.`,
  foundBlock: (at: string) => `There is a roof block at ${at}.`,
  severalBlocks: (places: readonly string[]) =>
    `There are ${places.length} roof blocks: ${listed(places)}. Select the one to use.`,
  useBlock: "Use this block",
  usingBlock: (at: string) => `These fields now follow the roof block at ${at}.`,
  differs: (rows: readonly string[]) => `Not yet in the sheet: ${rows.join(", ")}.`,
  update: "Write into the block",
  updated: "Block",
  reread: "Reload from sheet",
  lacking: (rows: readonly string[]) =>
    `The block has no row for ${listed(rows)}, and no free one below it. Insert an empty row below the block and write again, or write a new block.`,
};

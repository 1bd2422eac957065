import { PAPERS, PIXELS, type CardPaper } from "../cards/cardStyles.ts";

/** Left blank round every page of a packet, in inches: more than printers cannot reach, so that a printer's own margin of 0 cuts nothing off. */
export const EDGE = 0.4;

/** Height of a page's foot with the air over it, in pixels. */
export const FOOT = 40;

/** What a page has room for over its foot, in pixels. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** The room of a page of this paper; a little is kept back, for a browser that rounds a page up starts another. */
export function roomOf(paper: CardPaper["paper"]): Room {
  const { width, height } = PAPERS[paper];
  return {
    width: Math.floor((width - 2 * EDGE) * PIXELS),
    height: Math.floor((height - 2 * EDGE - 0.01) * PIXELS) - FOOT,
  };
}

/** What stands on a page as one: never parted. `keep`: never the last of its page, as a heading. */
export interface Block {
  readonly html: string;
  readonly height: number;
  readonly keep?: boolean;
}

/** Rows that may go on on the next page, where their head stands again. */
export interface Rows {
  /** HTML before the rows and behind them. */
  readonly head: string;
  readonly foot: string;
  readonly headHeight: number;
  readonly rows: readonly Pick<Block, "html" | "height">[];
}

/** The bodies of as many pages as these take, one after the other; what is higher than a page stands on one of its own. */
export function flowed(blocks: readonly (Block | Rows)[], height: number): string[] {
  const pages: string[] = [];
  let page = "";
  let used = 0;
  const turn = () => {
    if (page !== "") pages.push(page);
    page = "";
    used = 0;
  };
  const put = (block: Block) => {
    page += block.html;
    used += block.height;
  };
  const least = (one: Block | Rows | undefined): number =>
    one === undefined ? 0 : "rows" in one ? one.headHeight + (one.rows[0]?.height ?? 0) : one.height;

  blocks.forEach((block, i) => {
    if (!("rows" in block)) {
      let needed = block.height;
      for (let next = i; (blocks[next] as Block | undefined)?.keep; next++) needed += least(blocks[next + 1]);
      if (used + needed > height) turn();
      return put(block);
    }
    let rest = block.rows;
    while (rest.length > 0) {
      if (used + block.headHeight + rest[0]!.height > height) turn();
      let count = 0;
      let tall = block.headHeight;
      while (count < rest.length && (count === 0 || used + tall + rest[count]!.height <= height))
        tall += rest[count++]!.height;
      const html = `${block.head}${rest
        .slice(0, count)
        .map((row) => row.html)
        .join("")}${block.foot}`;
      put({ html, height: tall });
      rest = rest.slice(count);
    }
  });
  turn();
  return pages;
}

import { escaped } from "../../measure/escaped.ts";
import { HANDS, type Hand, type Piece } from "../../roof/frame/piece.ts";
import type { Packet } from "../cards/cardOptions.ts";
import { PIXELS, type CardPaper } from "../cards/cardStyles.ts";
import { BOLD, startWithin, textWidth } from "../canvas/textWidth.ts";
import { WORDS } from "../canvas/words.ts";
import { longPointFace } from "./longPointFace.ts";
import { TEXT } from "./packetBlocks.ts";
import { packetWords as words } from "./packetWords.ts";

/** Sheets of stickers as they are sold for each paper, in inches: columns and rows, a sticker's size, from one to the next, and the first one's corner. */
export const STICKERS = {
  letter: { columns: 3, rows: 10, width: 2.625, height: 1, across: 2.75, down: 1, left: 0.1875, top: 0.5 },
  A4: {
    columns: 3,
    rows: 7,
    width: 63.5 / 25.4,
    height: 38.1 / 25.4,
    across: 66 / 25.4,
    down: 38.1 / 25.4,
    left: 7.25 / 25.4,
    top: 15.15 / 25.4,
  },
} as const;

/** What stands on one sticker. */
interface Label {
  readonly piece: Piece;
  readonly hand: Hand;
  readonly number: number;
  readonly of: number;
}

/** Which end of its board lies where, for a sticker on its side: a sticker for every board, as the bodies of as many pages as they take. */
export function labelSheets(pieces: readonly Piece[], packet: Packet, paper: CardPaper["paper"]): string[] {
  const labels = pieces.flatMap((piece) =>
    HANDS.flatMap((hand) =>
      Array.from({ length: piece[hand] }, (_, i): Label => ({ piece, hand, number: i + 1, of: piece[hand] })),
    ),
  );
  const { columns, rows } = STICKERS[paper];
  const most = columns * rows;
  return Array.from({ length: Math.ceil(labels.length / most) }, (_, page) =>
    labels
      .slice(page * most, (page + 1) * most)
      .map((label, i) => sticker(label, packet, paper, i))
      .join(""),
  );
}

function sticker({ piece, hand, number, of }: Label, packet: Packet, paper: CardPaper["paper"], at: number): string {
  const { columns, across, down, left, top, width } = STICKERS[paper];
  const x = left + (at % columns) * across;
  const y = top + Math.floor(at / columns) * down;
  const face = longPointFace(piece, hand);
  const room = width * PIXELS - 20;
  const big = Math.min(32, (room - 110) / textWidth(piece.mark, BOLD));
  const lines = [
    hand === "plain" ? WORDS.card.members[piece.member] : WORDS[hand],
    face === null ? "" : words.longPointOn(face),
  ];
  const texts = lines.map((line) => `<span>${escaped(line)}</span>`).join("");
  return `<div class="sticker" data-piece="${escaped(piece.mark)}" data-hand="${hand}" style="left:${x.toFixed(4)}in;top:${y.toFixed(4)}in"><div><b style="font-size:${big.toFixed(1)}px">${escaped(piece.mark)}</b><p>${texts}</p></div>${piece.member === "ridge" ? "" : arrow(face, room)}<small>${escaped(startWithin(`${words.oneOf(number, of)}. ${packet.stamp}. ${packet.job}`, TEXT.small, room))}</small></div>`;
}

/** A board from above, its head at the arrow's end: the triangle stands at the long point. */
function arrow(face: "left" | "right" | null, width: number): string {
  const [top, bottom, right] = [3, 15, width - 74];
  const [above, below] = face === null ? [right, right] : face === "left" ? [right, right - 12] : [right - 12, right];
  const tip = face === "right" ? bottom : top;
  const point = face === null ? "" : `<path d="M${right + 2} ${tip}l8 -4v8z"/>`;
  return `<svg width="${width}" height="19" viewBox="0 0 ${width} 19" font-size="11"><path d="M1 ${top}H${above}L${below} ${bottom}H1z" fill="none" stroke="#000"/><path d="M10 9H${right - 26}m-6 -4l6 4l-6 4" fill="none" stroke="#000" stroke-width="1.5"/>${point}<text x="${width}" y="13" text-anchor="end">${escaped(words.headEnd)}</text></svg>`;
}

/** How stickers look, for a paper. */
export const labelStyles = (paper: CardPaper["paper"]): string =>
  `.sticker{position:absolute;width:${STICKERS[paper].width}in;height:${STICKERS[paper].height}in;padding:6px 10px;overflow:hidden;display:flex;flex-direction:column;justify-content:space-between;line-height:1.15}
.sticker div{display:flex;gap:8px;align-items:center}
.sticker b{line-height:1;white-space:nowrap}
.sticker p{margin:0}
.sticker span{display:block;white-space:nowrap}
.sticker span:first-child{font-weight:600}
.sticker span,.sticker small{font-size:${TEXT.small}px}
.sticker svg{flex:none}
.sticker small{white-space:nowrap}
`;

import { answered } from "./answers.ts";
import { beyond, depthIn, opposite } from "./half.ts";
import { heading } from "./frame.ts";
import { centerLine, ON } from "./measure.ts";
import { above } from "./proof.ts";
import { measured, rowFor, rowsOf } from "./schedule.ts";
import { dot } from "./vector.ts";
import type { Framed, Roof } from "./assemble.ts";
import type { Shop } from "./shop.ts";

/** What a note is about, the words around its length, and the length as measured; 0 or less where no note is due. */
interface Due {
  readonly about: string;
  readonly words: RegExp;
  readonly measured: number;
  /** What is asked for at least must not be rounded down. */
  readonly least?: true;
}

/** Notes name a length to the sixty-fourth when it is small, to the sixteenth else: half of the sixteenth bounds both. */
const READ = 1 / 32 + 1e-6;

/** Whether the length in a note is the measured one as a tape shows it. */
const reads = (said: number, { measured: length, least }: Due): boolean =>
  least ? said >= length - 1e-6 && said <= length + 1 / 16 + 1e-6 : Math.abs(said - length) <= READ;

/** How a jack's head stands on its hip: its top above the hip's near arris, its toe below the hip's lower edge. */
function onHip(shop: Shop, piece: Framed): Due[] {
  const { face, on } = piece.bears!;
  const hip = on[0]!;
  const meets = centerLine(shop, piece).high;
  const half = shop.corners(shop.trim(piece.solid, beyond(piece.frame.left, piece.frame.at)));
  const toe = Math.min(
    ...half
      .filter((c) => Math.abs(depthIn(face, c)) < ON && Math.hypot(c[0] - meets[0], c[1] - meets[1]) < ON)
      .map((c) => c[2]),
  );
  // The hip sawn plumb and square across at the place: its near face's corners there.
  const ahead = heading(hip.frame);
  const there = shop
    .corners(shop.trim(hip.solid, opposite(beyond(ahead, meets))))
    .filter((c) => Math.abs(dot(ahead, c) - dot(ahead, meets)) < ON && Math.abs(depthIn(face, c)) < ON)
    .map((c) => c[2]);
  return [
    {
      about: "jack above the hip's arris",
      words: /stands (.+?) proud of the hip/,
      measured: meets[2] - Math.max(...there),
    },
    {
      about: "toe of the jack below the hip",
      words: /toe of the cut hangs (.+?) below the hip/,
      measured: Math.min(...there) - toe,
    },
  ];
}

/** How far a hip's head reaches past its own center line, along its top. */
function pastCenter(shop: Shop, piece: Framed): Due {
  const far = Math.max(...shop.corners(piece.solid).map((c) => dot(piece.frame.along, c)));
  return {
    about: "head past the center line",
    words: /farthest point of the head (.+?) past its center line/,
    measured: far - dot(piece.frame.along, centerLine(shop, piece).high),
  };
}

function due(shop: Shop, roof: Roof, piece: Framed): Due[] {
  if (piece.kind === "jack") return onHip(shop, piece);
  if (piece.kind === "hip") {
    const toes = roof.members
      .filter((one) => one.kind === "jack" && one.bears!.on[0] === piece)
      .map((jack) => onHip(shop, jack)[1]!.measured);
    // Plumb below the hip; the part of it square to the hip's slope is what its depth lacks.
    const toe = Math.max(...toes);
    return [
      pastCenter(shop, piece),
      {
        about: "hip too shallow",
        words: /take a hip at least (.+?) deep/,
        measured: toe > 1e-6 ? piece.depth + toe * piece.frame.top[2] : 0,
        least: true,
      },
    ];
  }
  if (piece.kind === "common") return [];
  return [
    {
      about: "above the end planes",
      words: /stands (.+?) above the end slope/,
      measured: above(shop, roof, piece, "end"),
    },
    {
      about: "above the main planes",
      words: /stand (.+?) above the main slopes/,
      measured: above(shop, roof, piece, "main"),
    },
  ];
}

/** Notes that are missing, wrong or not due, in words: every note of MEMBERS that tells of something a solid shows. */
export async function wrongNotes(shop: Shop, roof: Roof): Promise<string[]> {
  const rows = await rowsOf("MEMBERS", roof.plan);
  const found: string[] = [];
  for (const piece of roof.members) {
    const row = rowFor(rows, measured(shop, piece));
    if (!row) continue;
    const note = String(row["Note"]);
    for (const one of due(shop, roof, piece)) {
      const { about, words, measured: length } = one;
      const said = words.exec(note)?.[1];
      if (said === undefined ? length > 1e-6 : !(length > 1e-6) || !reads(await answered("INCHES", said), one))
        found.push(`${piece.name}: ${about} measures ${length}, the note says ${said ?? "nothing"}`);
    }
  }
  return found;
}

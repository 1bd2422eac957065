import type { StockBoard, StockPiece } from "../../src/cutting/stock.ts";
import { chance } from "../solids/chance.ts";

/** A list to plan. */
export interface Instance {
  readonly pieces: StockPiece[];
  readonly boards: StockBoard[];
  readonly kerf: number;
  readonly trim?: number;
  readonly crownDown?: boolean;
}

const FEET = [8, 10, 12, 14, 16, 18, 20];

/**
 * A random list in one size: two to seven lengths, now and then handed in pairs or anyhow, of one slope or two, priced or not, from stock of two to seven lengths, now and then limited or with ends to be taken off.
 *
 * @param small for a solver that must place every piece by itself.
 */
export function randomInstance(seed: number, small = false): Instance {
  const random = chance(seed);
  const upTo = (n: number): number => Math.floor(random() * n);
  const kind = seed % 5;
  const priced = random() < 0.5;
  const boards: StockBoard[] = FEET.filter(() => random() < 0.6).map((feet) =>
    boardOf(feet, priced ? Math.round((feet * 0.8 + random() * 3) * 100) / 100 : undefined, undefined),
  );
  boards.push(boardOf(20, priced ? 17.5 : undefined, undefined));
  if (random() < 0.3) boards.push(boardOf(14, priced ? 6 : undefined, 1 + upTo(3)));
  const pieces: StockPiece[] = [];
  const lengths = 2 + upTo(small ? 3 : 6);
  for (let n = 0; n < lengths; n++) {
    // Whole eighths half of the time, so that exact fits come up.
    const raw = 30 + random() * 150;
    const length = seed % 2 === 0 ? Math.round(raw * 8) / 8 : raw;
    const count = 1 + upTo(small ? 2 : 6);
    const slope = kind === 4 ? upTo(2) : 0;
    const slant = { lean: [2.75, 5.5][slope]!, slant: `slope ${slope}` };
    const turn = [1.677, 2.1213][slope]!;
    const base = { name: `P${n}`, size: "2x6", length, count };
    if (kind === 0) pieces.push(base);
    else if (kind === 1) pieces.push({ ...base, ...slant });
    else if (kind === 2)
      for (const hand of ["left", "right"] as const)
        pieces.push({ ...base, name: `P${n}${hand}`, ...slant, hand, turn });
    else {
      const hand = (["left", "right", "plain"] as const)[upTo(3)]!;
      pieces.push({ ...base, ...slant, hand, ...(hand === "plain" ? {} : { turn }) });
    }
  }
  // Two of three may be turned end for end; one of three loses its ends, and may have a piece as long as a board.
  const trim = seed % 3 === 0 ? 0.5 : 0;
  if (trim > 0) pieces[0] = { ...pieces[0]!, length: 144 - (pieces[0]!.lean ?? 0) };
  return { pieces, boards, kerf: [0, 0.125, 3 / 32][upTo(3)]!, trim, crownDown: seed % 3 !== 1 };
}

/** A small random list of pieces with slanting cuts at either end or both, of one slope or two: jacks, what stands on valleys, and cripples whose ends are parallel or not. */
export function slantedInstance(seed: number): Instance {
  const random = chance(seed * 31);
  const upTo = (n: number): number => Math.floor(random() * n);
  const turns = [1.677, 2.1213];
  const slantOf = (): number => (upTo(4) === 0 ? 0 : turns[seed % 3 === 0 ? upTo(2) : 0]! * (upTo(2) === 0 ? 1 : -1));
  const pieces = Array.from({ length: 3 + upTo(2) }, (_, n): StockPiece => {
    const slope = seed % 7 === 0 ? upTo(2) : 0;
    return {
      name: `P${n}`,
      size: "2x6",
      length: seed % 2 === 0 ? Math.round((20 + random() * 70) * 8) / 8 : 20 + random() * 70,
      count: 1 + upTo(3),
      lean: [2.75, 5.5][slope]!,
      slant: `slope ${slope}`,
      slants: [slantOf(), slantOf()],
    };
  });
  // Boards so close that a shared cut decides.
  const boards = [96, 97.5, 99, 120, 121.25, 144, 145.5, 192].map((length) => ({ size: "2x6", length }));
  return {
    pieces,
    boards: boards.slice(upTo(4)),
    kerf: [0, 0.125][upTo(2)]!,
    trim: seed % 4 === 0 ? 0.5 : 0,
    crownDown: seed % 2 === 0,
  };
}

function boardOf(feet: number, price: number | undefined, count: number | undefined): StockBoard {
  return {
    size: "2x6",
    length: feet * 12,
    ...(price === undefined ? {} : { price }),
    ...(count === undefined ? {} : { count }),
  };
}

/** A hip roof's rafters in one size: commons, and every jack length four times left and four times right. Invented figures. */
export function hipRoof(seed: number, priced: boolean): Instance {
  const random = chance(seed);
  const slope = Math.atan((4 + Math.floor(random() * 9)) / 12);
  const spacing = [16, 19.2, 24][Math.floor(random() * 3)]!;
  const [depth, thickness, hip] = [5.5, 1.5, 1.5];
  const lean = depth * Math.tan(slope);
  const overhang = 12 + random() * 12;
  // No common may be longer than the longest board.
  const run = Math.min(100 + random() * 60, (239 - lean) * Math.cos(slope) - overhang);
  const slant = { size: "2x6", lean, slant: "main", spread: 1 / (Math.cos(slope) * Math.SQRT1_2) };
  const pieces: StockPiece[] = [
    {
      ...slant,
      name: "common",
      length: (run - 0.75 + overhang) / Math.cos(slope),
      count: 16 + Math.floor(random() * 30),
    },
  ];
  for (let offset = run - spacing, n = 1; offset > 10; offset -= spacing, n++) {
    const length = (offset - hip / (2 * Math.SQRT1_2) + thickness / 2 + overhang) / Math.cos(slope);
    for (const hand of ["left", "right"] as const)
      pieces.push({ ...slant, name: `jack ${n} ${hand}`, length, count: 4, hand, turn: thickness / Math.cos(slope) });
  }
  const boards = FEET.map((feet): StockBoard => ({
    size: "2x6",
    length: feet * 12,
    ...(priced ? { price: Math.round((feet * 0.8 + random() * 1.5) * 100) / 100 } : {}),
  }));
  return { pieces, boards, kerf: 0.125 };
}

/** A hip roof of two pitches in one size: the commons and jacks of a main and an end side, some 100 pieces of 10 to 25 lengths and two slants. Invented figures. */
export function twoPitchRoof(seed: number, priced: boolean): Instance {
  const [main, end] = [hipRoof(2 * seed, priced), hipRoof(2 * seed + 1, priced)];
  const half = (piece: StockPiece): StockPiece => ({ ...piece, count: Math.ceil(piece.count / 2) });
  return {
    ...main,
    pieces: [
      ...main.pieces.map(half),
      ...end.pieces.map((piece) => half({ ...piece, name: `end ${piece.name}`, slant: "end" })),
    ],
  };
}

/** Roofs of one and of two pitches in turn, ordered together: some 10 lengths each. Invented figures. */
export function village(seed: number, priced: boolean, roofs: number): Instance {
  const all = Array.from({ length: roofs }, (_, k) => (k % 2 === 1 ? twoPitchRoof : hipRoof)(seed * 31 + k, priced));
  return {
    ...all[0]!,
    pieces: all.flatMap(({ pieces }, k) =>
      pieces.map((piece) => ({ ...piece, name: `${k} ${piece.name}`, slant: `${k} ${piece.slant}` })),
    ),
  };
}

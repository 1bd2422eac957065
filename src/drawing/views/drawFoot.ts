import type { Point } from "../../geometry/point.ts";
import type { Piece } from "../../roof/frame/piece.ts";
import { drawDimensions, type Dimension } from "../canvas/dimensions.ts";
import { reach } from "./drawSide.ts";
import type { Canvas, TextStyle } from "../canvas/canvas.ts";
import { angleText, isFlipped, type Room, type Shown } from "../canvas/shown.ts";
import { onCanvas, type View } from "../canvas/view.ts";

/**
 * A rafter's foot as it stands on the plate: seat, heel, notch and tail, plumb lines plumb. Gives where the view ends.
 *
 * What has no dimension line is said in words under it. On a brief drawing there are no figures: the card's steps say them. A hip is drawn where it crosses the corner, in the plumb section on its own line.
 */
export function drawFoot(canvas: Canvas, shown: Shown, room: Room): number {
  const { piece, hand, outline } = shown;
  const { words, length, size } = canvas;
  const { polygon, points } = piece.member === "hip" ? outline.middle : outline[outline.longFace];
  const { "seat corner": corner, "over plate": plate, "tail tip": tip, "tail toe": toe } = points;
  const flip = isFlipped(shown);
  const stands = { name: "foot", scale: 1, x: 0, y: 0, slope: piece.slope } as const;
  // Level and plumb places, in the roof's unit; the canvas.s y runs down.
  const place = (point: Point) => onCanvas(stands, point);
  const beyond = piece.seat + piece.section.depth * 1.3;
  const low = Math.max(place(toe ?? corner!).y, place(corner!).y + piece.section.depth / 3);
  const high = place(plate!).y - beyond * piece.slope;
  const from = place(tip!).x;
  const scale = Math.min(
    (room.right - room.left - 2 * size) / (beyond - from),
    (canvas.brief ? 4.5 * size : Math.max(14 * size, 0.42 * (room.right - room.left))) / (low - high),
  );
  const top = room.top + (canvas.brief ? 2 : canvas.lineHeight);
  const flat = (a: number, b: number, name: string, value: number): Dimension => ({
    from: x(a),
    to: x(b),
    name,
    text: length(value),
  });
  const middle = (room.left + room.right) / 2 + (flip ? 1 : -1) * ((beyond + from) / 2) * scale;
  const x = (level: number) => middle + (flip ? -scale : scale) * level;
  const view: View = { ...stands, scale, flip, x: middle, y: top - high * scale };
  const at = (point: Point) => onCanvas(view, point);
  const [left, right] = [x(from), x(beyond)].sort((a, b) => a - b) as [number, number];
  const bottom = view.y + low * scale;
  const face = at(plate!).x;

  canvas.boards(view, [{ polygon, mark: piece.mark, hand }], {
    left: left - 1,
    right: right + 1,
    top,
    bottom: bottom + 1,
  });
  const seatCorner = at(corner!);
  const inward = flip ? -1 : 1;
  canvas.line([{ x: seatCorner.x, y: bottom }, seatCorner, { x: x(beyond), y: seatCorner.y }], "faint", "6 3");
  canvas.line([{ x: face, y: Math.min(top + 4, at(plate!).y) }, at(plate!), seatCorner], "faint", "2 2");
  // Under the line of the plate's top as far in as may be, else over it.
  const ends = [0, 4, 8, 12, 16, 20, 24, 28].map((back) => x(beyond) - inward * (2 + back));
  const plateStyle: TextStyle = { anchor: flip ? "start" : "end", color: "faint" };
  const plateAt = [size + 2, -4]
    .flatMap((y) => ends.map((end) => ({ x: end, y: seatCorner.y + y })))
    .find((place) => canvas.isClear(place, words.plate, plateStyle));
  if (plateAt) canvas.text(plateAt, words.plate, plateStyle);
  if (!canvas.brief) canvas.text({ x: room.left, y: room.top + size }, words.foot, { anchor: "start", color: "faint" });
  if (canvas.brief) return Math.max(bottom, (plateAt?.y ?? 0) + 0.3 * size) + 4;
  const dimensions = [
    flat(0, piece.seat, words.seat, piece.seat),
    ...(piece.overhang > 0 ? [flat(from, 0, words.overhang, piece.overhang)] : []),
  ];
  const done = drawDimensions(canvas, dimensions, { way: "down", at: bottom + 2, object: bottom, ...reach(room) });
  canvas.line([at(plate!), seatCorner], "accent");
  const texts = [
    ...(writeHeel(canvas, shown, at(plate!), seatCorner, room) ? [] : [heelText(canvas, piece)]),
    `${words.notch} ${length(piece.notch)}`,
    `${words.plumbCut} ${angleText(piece.headCut)}`,
  ];
  return canvas.lines(texts, room, done) + 4;
}

const heelText = ({ words, length }: Canvas, { heel }: Piece): string => `${words.heel} ${length(heel)}`;

/** The heel at its line: on the wood beside it where that is clear, else outside over the tail with a leader. Whether it had room. */
function writeHeel(canvas: Canvas, shown: Shown, plate: Point, corner: Point, room: Room): boolean {
  const { size } = canvas;
  const text = heelText(canvas, shown.piece);
  const inward = isFlipped(shown) ? -1 : 1;
  const middle: Point = { x: plate.x, y: (plate.y + corner.y) / 2 };
  const [onWood, outside]: TextStyle[] = [
    { anchor: inward > 0 ? "start" : "end" },
    { anchor: inward > 0 ? "end" : "start" },
  ];
  const fits = (at: Point, style: TextStyle): boolean => {
    const box = canvas.boxOf(at, text, style);
    return box.left >= room.left && box.right <= room.right && canvas.isClear(at, text, style);
  };
  const inside = { x: middle.x + inward * 5, y: middle.y + size * 0.3 };
  if (fits(inside, onWood!)) canvas.text(inside, text, onWood);
  else {
    const place = [4, 8, 12, 16]
      .map((up): Point => ({ x: plate.x - inward * 8, y: plate.y - up }))
      .find((at) => fits(at, outside!));
    if (!place) return false;
    canvas.line(
      [
        { x: place.x + inward * 2, y: place.y - size * 0.3 },
        { x: middle.x, y: middle.y },
      ],
      "ink",
    );
    canvas.shape(
      [
        [0, -2],
        [2, 0],
        [0, 2],
        [-2, 0],
      ].map(([x, y]) => ({ x: middle.x + x!, y: middle.y + y! })),
      "ink",
    );
    canvas.text(place, text, outside);
  }
  return true;
}

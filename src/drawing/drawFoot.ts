import type { Point } from "../geometry/clipped.ts";
import { drawDimensions, type Dimension } from "./dimensions.ts";
import { reach } from "./drawSide.ts";
import type { Sheet } from "./sheet.ts";
import { angleText, isFlipped, type Room, type Shown } from "./shown.ts";
import { onSheet, type View } from "./view.ts";

/**
 * A rafter's foot as it stands on the plate: seat, heel, notch and tail, plumb lines plumb. Gives where the view ends.
 *
 * What has no dimension line is said in words under it, or in a column beside. A hip is drawn where it crosses the corner, in the plumb section on its own line.
 */
export function drawFoot(sheet: Sheet, shown: Shown, room: Room, facts?: Room): number {
  const { piece, hand, outline } = shown;
  const { words, length, size } = sheet;
  const { polygon, points } = piece.member === "hip" ? outline.middle : outline[outline.longFace];
  const { "seat corner": corner, "over plate": plate, "tail tip": tip, "tail toe": toe } = points;
  const flip = isFlipped(shown);
  const stands = { name: "foot", scale: 1, x: 0, y: 0, slope: piece.slope } as const;
  // Level and plumb places, in the roof's unit; the sheet's y runs down.
  const place = (point: Point) => onSheet(stands, point);
  const beyond = piece.seat + piece.section.depth * 1.3;
  const low = Math.max(place(toe ?? corner!).y, place(corner!).y + piece.section.depth / 3);
  const high = place(plate!).y - beyond * piece.slope;
  const from = place(tip!).x;
  const scale = Math.min((room.right - room.left - 2 * size) / (beyond - from), ((sheet.brief ? 8 : 14) * size) / (low - high));
  const top = room.top + (sheet.brief ? 2 : sheet.lineHeight);
  const flat = (a: number, b: number, name: string, value: number): Dimension => ({ from: x(a), to: x(b), text: `${name} ${length(value)}` });
  const middle = (room.left + room.right) / 2 + (flip ? 1 : -1) * ((beyond + from) / 2) * scale;
  const x = (level: number) => middle + (flip ? -scale : scale) * level;
  const view: View = { ...stands, scale, flip, x: middle, y: top - high * scale };
  const at = (point: Point) => onSheet(view, point);
  const [left, right] = [x(from), x(beyond)].sort((a, b) => a - b) as [number, number];
  const bottom = view.y + low * scale;
  const face = at(plate!).x;

  sheet.boards(view, [{ polygon, mark: piece.mark, hand }], { left: left - 1, right: right + 1, top, bottom: bottom + 1 });
  const seatCorner = at(corner!);
  const inward = flip ? -1 : 1;
  sheet.line([{ x: seatCorner.x, y: bottom }, seatCorner, { x: x(beyond), y: seatCorner.y }], "faint", "6 3");
  sheet.line([{ x: face, y: Math.min(top + 4, at(plate!).y) }, at(plate!), seatCorner], "faint", "2 2");
  sheet.text({ x: x(beyond) - inward * 2, y: seatCorner.y + size + 2 }, words.plate, { anchor: flip ? "start" : "end", colour: "faint" });
  if (!sheet.brief) sheet.text({ x: room.left, y: room.top + size }, words.foot, { anchor: "start", colour: "faint" });
  const dimensions = [flat(0, piece.seat, words.seat, piece.seat), ...(piece.overhang > 0 ? [flat(from, 0, words.overhang, piece.overhang)] : [])];
  const done = drawDimensions(sheet, dimensions, { way: "down", at: bottom + 2, object: bottom, ...reach(room) });
  const heel = `${words.heel} ${length(piece.heel)}`;
  const beside = { x: seatCorner.x + inward * 4, y: (at(plate!).y + seatCorner.y) / 2 + size * 0.3 };
  sheet.line([at(plate!), seatCorner], "accent");
  const texts = [...(sheet.label([beside], heel, { anchor: flip ? "end" : "start" }) ? [] : [heel]), `${words.notch} ${length(piece.notch)}`, `${words.plumbCut} ${angleText(piece.headCut)}`];
  return facts ? Math.max(done, sheet.lines(texts, facts, facts.top)) + 4 : sheet.lines(texts, room, done) + 4;
}

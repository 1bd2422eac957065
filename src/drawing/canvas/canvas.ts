import type { Point } from "../../geometry/point.ts";
import { escaped } from "../../measure/escaped.ts";
import type { Hand } from "../../roof/frame/piece.ts";
import { LineIndex } from "./lineIndex.ts";
import { boxAround, holds, segmentIn, sidesOfPolygon, type Box } from "./segment.ts";
import { BOLD, textWidth } from "./textWidth.ts";
import { THEMES, type Theme } from "./theme.ts";
import { onCanvas, type View } from "./view.ts";
import { wrapped } from "./wrapped.ts";
import { WORDS, type Words } from "./words.ts";

/** What a drawing is made for. */
export interface DrawingOptions {
  /** In pixels; the drawing is laid out for it and its height follows. */
  readonly width: number;
  /** How a length is written: the roof's own unit in, text out. */
  readonly length: (value: number) => string;
  readonly theme?: keyof typeof THEMES;
  readonly words?: Words;
  /** Only what tells the most, for the small room of a card that says the rest in words. */
  readonly brief?: boolean;
}

export interface TextStyle {
  readonly anchor?: "start" | "middle" | "end";
  /** Read from below upwards. */
  readonly vertical?: boolean;
  readonly color?: keyof Theme;
  readonly bold?: boolean;
}

/** Part of a text's size that stands over its line, and under it. */
const OVER = 0.8;
const UNDER = 0.24;

/** In pixels: a line this far inside a text's room touches no letter yet. */
const INSIDE = 1;

/** Widths of lines in pixels: what is an object, what tells most of it, and what only helps. */
const WEIGHTS = { object: 1.25, accent: 1.25, lit: 2, help: 0.75 } as const;

/** A text that is written, and what it stands on. */
interface Written {
  readonly at: Point;
  readonly text: string;
  readonly style: TextStyle;
  readonly box: Box;
}

/** A drawing in the making: scaled boards, lines, and texts that keep their room. */
export class Canvas {
  readonly width: number;
  readonly length: DrawingOptions["length"];
  readonly words: Words;
  readonly theme: Theme;
  readonly brief: boolean;
  /** Of all text, in pixels: nothing on a canvas is ever smaller. */
  readonly size: number;
  readonly #boards: string[] = [];
  readonly #lines: string[] = [];
  readonly #texts: Written[] = [];
  /** Edges of boards, and all other lines. */
  readonly #edges = new LineIndex();
  readonly #rules = new LineIndex();
  readonly #grounds: { readonly polygon: readonly Point[]; readonly around: Box; readonly fill: keyof Theme }[] = [];

  constructor({ width, length, theme = "screen", words = WORDS, brief = false }: DrawingOptions) {
    this.width = width;
    this.length = length;
    this.words = words;
    this.brief = brief;
    this.theme = THEMES[theme];
    // On paper nothing is under 8 points.
    this.size = width < 480 && theme === "screen" ? 10 : width < 800 ? 11 : 12;
  }

  /** The height that a line of text takes, with a little air. */
  get lineHeight(): number {
    return Math.ceil(this.size * 1.3);
  }

  /** Draws boards to the scale of a view; with an opening, only what shows in it. */
  boards(view: View, boards: readonly BoardShape[], opening?: Box): void {
    const polygons = boards.map(({ polygon, mark, hand, color = "ink", fill = "wood", shade = 0 }) => {
      const points = polygon.map((point) => onCanvas(view, point));
      for (const side of sidesOfPolygon(points)) {
        const shown = opening ? segmentIn(side, opening) : side;
        if (shown) this.#edges.add(shown);
      }
      if (fill !== "none") this.#grounds.push({ polygon: points, around: boxAround(points), fill });
      return `<polygon data-piece="${mark}" data-hand="${hand}" points="${points.map(pair).join(" ")}" style="fill:${fill === "none" ? "none" : this.#shaded(this.theme[fill], shade)};stroke:${this.theme[color]}"/>`;
    });
    const { left, top, right, bottom } = opening ?? { left: 0, top: 0, right: 0, bottom: 0 };
    const frame = [left, top, right - left, bottom - top].map(short);
    // An inner svg cuts off what leaves its opening, with no name that could clash on a page with many drawings.
    const [open, close] = opening
      ? [
          `<svg x="${frame[0]}" y="${frame[1]}" width="${frame[2]}" height="${frame[3]}" viewBox="${frame.join(" ")}">`,
          "</svg>",
        ]
      : ["", ""];
    this.#boards.push(
      `${open}<g data-view="${view.name}" data-scale="${view.scale}" data-x="${view.x}" data-y="${view.y}" data-flip="${view.flip ?? false}" data-slope="${view.slope ?? 0}"${view.weight === undefined ? "" : ` stroke-width="${view.weight}"`}>${polygons.join("")}</g>${close}`,
    );
  }

  #shaded(fill: string, shade: number): string {
    return shade === 0 ? fill : `color-mix(in srgb,${this.theme.ink} ${shade}%,${fill})`;
  }

  line(points: readonly Point[], color: keyof Theme = "faint", dash = ""): void {
    for (const [i, to] of points.slice(1).entries()) this.#rules.add([points[i]!, to]);
    this.#lines.push(
      `<polyline points="${points.map(pair).join(" ")}" style="stroke:${this.theme[color]}"${color === "accent" || color === "lit" ? ` stroke-width="${WEIGHTS[color]}"` : ""}${dash && ` stroke-dasharray="${dash}"`}/>`,
    );
  }

  /** A filled shape among the lines: an arrow's head, a flag. */
  shape(points: readonly Point[], color: keyof Theme): void {
    for (const side of sidesOfPolygon(points)) this.#rules.add(side);
    this.#lines.push(`<polygon points="${points.map(pair).join(" ")}" style="fill:${this.theme[color]};stroke:none"/>`);
  }

  boxOf(at: Point, text: string, { anchor = "middle", vertical = false, bold = false }: TextStyle = {}): Box {
    const width = textWidth(text, this.#em(bold));
    const start = anchor === "start" ? 0 : anchor === "end" ? -width : -width / 2;
    return vertical
      ? {
          left: at.x - OVER * this.size,
          right: at.x + UNDER * this.size,
          top: at.y - start - width,
          bottom: at.y - start,
        }
      : {
          left: at.x + start,
          right: at.x + start + width,
          top: at.y - OVER * this.size,
          bottom: at.y + UNDER * this.size,
        };
  }

  /** Whether a text would stand clear of all others and on the canvas. */
  isFree(at: Point, text: string, style: TextStyle = {}): boolean {
    const box = this.boxOf(at, text, style);
    return (
      box.left >= 0 &&
      box.right <= this.width &&
      box.top >= 0 &&
      !this.#texts.some(
        ({ box: other }) =>
          box.left < other.right + 1 && other.left < box.right + 1 && box.top < other.bottom && other.top < box.bottom,
      )
    );
  }

  /** Whether it would stand clear of every line drawn so far as well. */
  isClear(at: Point, text: string, style: TextStyle = {}): boolean {
    return this.isFree(at, text, style) && !this.#isStruck(this.boxOf(at, text, style));
  }

  #isStruck({ left, top, right, bottom }: Box, by = [this.#edges, this.#rules]): boolean {
    const inner = { left: left + INSIDE, top: top + INSIDE, right: right - INSIDE, bottom: bottom - INSIDE };
    return by.some((lines) => lines.crosses(inner));
  }

  /** Writes a text; its place must be free, which is for the layout to see to. A line that runs through it is broken off behind it. */
  text(at: Point, text: string, style: TextStyle = {}): void {
    this.#texts.push({ at, text, style, box: this.boxOf(at, text, style) });
  }

  /** Writes a text at the first of some places that is clear, else where it breaks off lines but no board's edge, else, unless told not to, where it is free. Gives the place. */
  label(places: Iterable<Point>, text: string, style: TextStyle = {}, onEdges = true): Point | undefined {
    let free: Point | undefined;
    let offEdges: Point | undefined;
    let clear: Point | undefined;
    for (const at of places) {
      if (!this.isFree(at, text, style)) continue;
      free ??= at;
      const box = this.boxOf(at, text, style);
      if (this.#isStruck(box, [this.#edges])) continue;
      offEdges ??= at;
      if (this.#isStruck(box, [this.#rules])) continue;
      clear = at;
      break;
    }
    const place = clear ?? offEdges ?? (onEdges ? free : undefined);
    if (place) this.text(place, text, style);
    return place;
  }

  /** Writes texts one under another from a line on, each in as many lines as the room asks. Gives the last line. */
  lines(
    texts: readonly string[],
    { left, right }: Pick<Box, "left" | "right">,
    from: number,
    style: TextStyle = {},
  ): number {
    let y = from;
    for (const text of texts.flatMap((one) => wrapped(one, this.#em(style.bold ?? false), right - left)))
      this.text({ x: left, y: (y += this.lineHeight) }, text, { ...style, anchor: "start" });
    return y;
  }

  #em(bold: boolean): number {
    return bold ? this.size * BOLD : this.size;
  }

  /**
   * All texts with what they need to be read: a ground that breaks off the lines behind them, and the ground's color round their letters.
   * On a screen those that look alike are one element, for a browser takes most of a drawing's time for elements of text, and for turned
   * ones above all. What goes on paper or into a workbook is plain: not every program understands that.
   */
  #written(): string {
    const alike = new Map<string, string>();
    let [backings, alone] = ["", ""];
    for (const { at, text, style, box } of this.#texts) {
      const { anchor = "middle", vertical, color = "ink", bold } = style;
      const under = this.#grounds.findLast(
        ({ polygon, around }) =>
          around.left < box.left &&
          around.right > box.right &&
          around.top < box.top &&
          around.bottom > box.bottom &&
          holds(polygon, box),
      );
      const ground = under?.fill ?? "paper";
      if (this.#isStruck(box))
        backings += `<rect data-backing="" x="${short(box.left - 1)}" y="${short(box.top)}" width="${short(box.right - box.left + 2)}" height="${short(box.bottom - box.top)}" style="fill:${this.theme[ground]};stroke:none"/>`;
      const halo = ground === "paper" ? "" : `;stroke:${this.theme[ground]}`;
      // On a filled board letters are cut out of the fill.
      const fill = this.theme[ground === "wood" || ground === "paper" ? color : "paper"];
      const looks = `${anchor === "start" ? "" : ` text-anchor="${anchor}"`}${vertical ? ' transform="rotate(-90)"' : ""}${bold ? ' font-weight="600"' : ""} style="fill:${fill}${halo}">`;
      // Turned by a right angle, a place's x is what was y.
      const [x, y] = vertical ? [-at.y, at.x] : [at.x, at.y];
      const place = ` x="${short(x)}" y="${short(y)}"`;
      if (this.theme === THEMES.screen)
        alike.set(looks, `${alike.get(looks) ?? ""}<tspan${place}>${escaped(text)}</tspan>`);
      else alone += `<text${place}${looks}${escaped(text)}</text>`;
    }
    return backings + alone + [...alike].map(([looks, lines]) => `<text${looks}${lines}</text>`).join("");
  }

  /** The finished drawing. */
  svg(height: number, title: string, description: string): string {
    const size = `${short(this.width)} ${short(height)}`;
    return (
      `<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 ${size}" width="${short(this.width)}" height="${short(height)}" font-family="system-ui,sans-serif" font-size="${this.size}" style="max-width:100%;height:auto"><title>${escaped(title)}</title><desc>${escaped(description)}</desc>` +
      `<g stroke-width="${WEIGHTS.object}" stroke-linejoin="round">${this.#boards.join("")}<g fill="none" stroke-width="${WEIGHTS.help}">${this.#lines.join("")}</g></g><g stroke-width="3" stroke-linejoin="round" paint-order="stroke" style="stroke:${this.theme.paper}">${this.#written()}</g></svg>`
    );
  }
}

export interface BoardShape {
  readonly polygon: readonly Point[];
  readonly mark: string;
  readonly hand: Hand;
  readonly color?: keyof Theme;
  readonly fill?: keyof Theme | "none";
  /** How much of the ink is mixed into the fill, in percent, where a side lies away from the light. */
  readonly shade?: number;
}

const short = (value: number) => String(Math.round(value * 1000) / 1000);
const pair = ({ x, y }: Point) => `${short(x)},${short(y)}`;

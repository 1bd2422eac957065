import { describe, expect, it } from "vitest";
import { escaped } from "../../../src/measure/escaped.ts";
import { redrawn } from "../../../src/pane/controls/redrawn.ts";
import { drawFrame3d } from "../../../src/drawing/views/drawFrame3d.ts";
import { drawPlan } from "../../../src/drawing/views/drawPlan.ts";
import { lengthText } from "../../../src/measure/lengthText.ts";
import { framed, HALL, SHAPES } from "../../roof/outlineSpecs.ts";

/** As much of a browser's element as a drawing needs; `set` counts what was set in all of them. */
class Fake {
  static set = 0;
  readonly attributes = new Map<string, string>();
  children: Fake[] = [];
  #text = "";
  #parent: Fake | null = null;
  readonly name: string;
  constructor(name: string) {
    this.name = name;
  }

  get ownerDocument() {
    return { createElementNS: (_: string, name: string) => new Fake(name) };
  }
  setAttribute(name: string, value: string): void {
    Fake.set++;
    this.attributes.set(name, value);
  }
  removeAttribute(name: string): void {
    Fake.set++;
    this.attributes.delete(name);
  }
  remove(): void {
    Fake.set++;
    this.#parent!.children = this.#parent!.children.filter((one) => one !== this);
  }
  replaceChildren(...children: Fake[]): void {
    this.children = [];
    this.append(...children);
  }
  append(...parts: (Fake | string)[]): void {
    for (const part of parts)
      if (typeof part === "string") this.#text += part;
      else this.insertBefore(part, null);
  }
  insertBefore(one: Fake, next: Fake | null): void {
    Fake.set++;
    one.#parent = this;
    this.children.splice(next ? this.children.indexOf(next) : this.children.length, 0, one);
  }
  set textContent(text: string) {
    Fake.set++;
    this.#text = text;
  }
  set innerHTML(html: string) {
    Fake.set++;
    this.children = [];
    const open: Fake[] = [this];
    const decoded = (text: string) => text.replace(/&#(\d+);/g, (_, code) => String.fromCharCode(code));
    for (const [, end, name, attributes, single, text] of html.matchAll(/<(\/?)(\w+)([^>]*?)(\/?)>([^<]*)/g)) {
      if (end) {
        open.pop();
        continue;
      }
      const one = new Fake(name!);
      one.#parent = open.at(-1)!;
      one.#parent.children.push(one);
      for (const [, key, value] of attributes!.matchAll(/ ([\w:-]+)="([^"]*)"/g))
        one.attributes.set(key!, decoded(value!));
      one.#text = decoded(text!);
      if (!single) open.push(one);
    }
  }
  get innerHTML(): string {
    return this.children.map((one) => one.outerHTML).join("");
  }
  get outerHTML(): string {
    const list = [...this.attributes].map(([key, value]) => ` ${key}="${escaped(value)}"`).sort();
    return `<${this.name}${list.join("")}>${escaped(this.#text)}${this.innerHTML}</${this.name}>`;
  }
}

const inches = (value: number) => lengthText(value, "in");
const fresh = (svg: string) => {
  const place = new Fake("div");
  place.innerHTML = svg;
  return place.innerHTML;
};
const start = () => {
  const place = new Fake("div");
  return { place, draw: redrawn(place as unknown as Element) };
};
const plan = (spec: (typeof SHAPES)[string], width: number, brief = false) => {
  const { frame, pieces } = framed(spec);
  return drawPlan(frame, pieces, { width, length: inches, brief, cautions: new Map([["J2", "head"]]) });
};

describe("redrawn", () => {
  it("makes of any drawing any other", () => {
    const { place, draw } = start();
    const { frame, pieces } = framed(HALL);
    const round = (turn: number) =>
      drawFrame3d(frame, pieces, { width: 500, length: inches }, { turn, down: 30, height: 400 });
    const drawings = [
      ...Object.values(SHAPES).map((spec, i) => plan(spec, i % 2 ? 330 : 900, i % 2 === 1)),
      round(20),
      round(110),
      "",
      plan(HALL, 700),
      plan({ ...HALL, span: 300 }, 700),
      round(-60),
    ];
    for (const svg of [...drawings, ...drawings.reverse()]) {
      draw(svg);
      expect(place.innerHTML).toBe(fresh(svg));
    }
  });

  it("leaves the elements of what is alike, and sets what differs only", () => {
    const { place, draw } = start();
    draw(plan(HALL, 700));
    const before = [...place.children[0]!.children];
    Fake.set = 0;
    draw(plan(HALL, 700));
    expect(Fake.set).toBe(0);
    const longer = plan({ ...HALL, span: 288.5 }, 700);
    draw(longer);
    expect(place.innerHTML).toBe(fresh(longer));
    expect(place.children[0]!.children).toEqual(before);
    const elements = longer.match(/<\w/g)!.length;
    expect(Fake.set).toBeGreaterThan(0);
    // A board's corners, a text's place: hardly more than one of each.
    expect(Fake.set).toBeLessThan(2.5 * elements);
  });

  it("knows pieces and texts again where others come or go before them", () => {
    const { place, draw } = start();
    const polygon = (mark: string, hand = "left") => `<polygon data-piece="${mark}" data-hand="${hand}" points="0,0"/>`;
    const text = (words: string) => `<text x="1">${words}</text>`;
    const one = (parts: string[]) => `<svg><g>${parts.join("")}</g></svg>`;
    const first = [polygon("C", "plain"), polygon("J1"), polygon("J1", "right"), polygon("H"), text("J1"), text("24'")];
    const group = () => place.children[0]!.children[0]!.children;
    draw(one(first));
    const [common, left, right, hip, mark, size] = group();
    draw(one([first[0]!, first[0]!, first[1]!, "<rect/>", first[3]!, "<rect/>", first[4]!, text("25'")]));
    expect(group().filter((element) => [common, left, hip, mark, size].includes(element))).toHaveLength(5);
    expect(group()).not.toContain(right);
    expect(group()[2]).toBe(left);
    expect(group()[4]).toBe(hip);
    draw(one(first));
    expect(place.innerHTML).toBe(fresh(one(first)));
    expect(group()[3]).toBe(hip);
  });

  it("writes a text as it reads", () => {
    const { place, draw } = start();
    const one = (text: string) => `<svg data-a="${escaped(text)}"><g><text x="1">${escaped(text)}</text></g></svg>`;
    draw(one("a"));
    draw(one(`24' 6" < 3 & "4"`));
    expect(place.innerHTML).toBe(fresh(one(`24' 6" < 3 & "4"`)));
  });
});

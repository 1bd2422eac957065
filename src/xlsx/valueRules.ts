import type { CellStyle, Color, ConditionalRule } from "hucre";
import type { Look, ScalePoint, Shows, ValueRule } from "./book.ts";
import { areasOf } from "./carry/inputRules.ts";
import { lookOf } from "./fileLook.ts";
import { typedFormula } from "./storedFormula.ts";

const TEXTS: Readonly<Partial<Record<ConditionalRule["type"], string>>> = {
  containsText: "containsText",
  notContainsText: "notContainsText",
  beginsWith: "beginsWith",
  endsWith: "endsWith",
  containsBlanks: "containsBlanks",
  notContainsBlanks: "notContainsBlanks",
};

// The usual color of a bar, for files that name none.
const BAR = "#638ec6";

/** A sheet's rules that can be shown here, the first that wins first, and whether those are all. */
export function valueRulesOf(
  rules: readonly ConditionalRule[],
  resolve: (color: Color) => string | null,
): { readonly rules: readonly ValueRule[]; readonly all: boolean } {
  const read = [...rules]
    .sort((a, b) => a.priority - b.priority)
    .flatMap((rule): ValueRule[] => {
      const shows = showsOf(rule, resolve);
      const areas = areasOf(rule.range);
      return shows && areas.length > 0 ? [{ areas, shows, ...(rule.stopIfTrue && { last: true }) }] : [];
    });
  return { rules: read, all: read.length === rules.length };
}

function showsOf(rule: ConditionalRule, resolve: (color: Color) => string | null): Shows | null {
  const formulas = rule.formula === undefined ? [] : [rule.formula].flat();
  const look = rule.style ? lookIn(rule.style, resolve) : null;
  const { type, operator = "equal", colorScale, dataBar } = rule;
  if (colorScale) {
    const points = colorScale.cfvo.map(pointOf);
    const colors = colorScale.colors.map(colorOf);
    return points.every((point) => point !== null) && colors.every((color) => color !== null)
      ? { kind: "scale", points: points.map((point, i) => ({ ...point, color: colors[i]! })) }
      : null;
  }
  if (dataBar) {
    const [from, to] = dataBar.cfvo.map(pointOf);
    return from && to ? { kind: "bar", from, to, color: colorOf(dataBar.color) ?? BAR } : null;
  }
  if (!look) return null;
  if (type === "cellIs") {
    const values = formulas.map(Number);
    if (values.length > 0 && values.every(Number.isFinite)) return { kind: "number", operator, values, look };
    return null;
  }
  if (type === "expression" && formulas.length === 1)
    return { kind: "formula", formula: typedFormula(formulas[0]!), look };
  if (type === "duplicateValues") return { kind: "duplicates", look };
  if (type === "uniqueValues") return { kind: "uniques", look };
  const text = TEXTS[type];
  return text ? { kind: "text", operator: text, ...(rule.text !== undefined && { text: rule.text }), look } : null;
}

/** A rule's own look. The color of its fill stands where a cell's has the second one. */
function lookIn(style: CellStyle, resolve: (color: Color) => string | null): Look | null {
  const { fill, ...others } = style;
  const ink = fill?.type === "pattern" ? (fill.bgColor ?? fill.fgColor) : undefined;
  const color = ink && resolve(ink);
  const look = { ...lookOf(others, resolve, new Set()), ...(color && { fill: color }) };
  return Object.keys(look).length > 0 ? look : null;
}

function pointOf({ type, value }: { readonly type: string; readonly value?: string }): ScalePoint | null {
  if (type === "min" || type === "max") return { at: type };
  const number = Number(value);
  if (value === undefined || !Number.isFinite(number)) return null;
  return type === "num" || type === "percent" || type === "percentile" ? { at: type, value: number } : null;
}

function colorOf(color: string): string | null {
  const digits = /([\da-f]{6})$/i.exec(color)?.[1];
  return digits ? `#${digits.toLowerCase()}` : null;
}

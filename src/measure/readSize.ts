import { cleanText } from "./cleanText.ts";
import { dressedSizes } from "./dressedSizes.ts";
import { exact } from "./exact.ts";
import { Failure, type Result } from "./result.ts";
import type { ReadingProblem } from "./readingProblem.ts";
import { sizeName } from "./sizeName.ts";
import { MM_PER_INCH } from "./unit.ts";
import type { Unit } from "./unit.ts";

type SizeProblem = ReadingProblem<"decimal comma" | "not a size" | "size turned round" | "no such nominal size">;

/** A lumber size: actual thickness and depth in `unit`, and the size as it is written on a list. */
export interface ReadSize {
  readonly thickness: number;
  readonly depth: number;
  readonly unit: Unit;
  /** "2x8" for a nominal size, else "1.5 x 7.25 in" or "38 x 184 mm". See {@link sizeName}. */
  readonly name: string;
}

/** From here on a thickness is in millimeters: no rafter is 15 in thick and none 14 mm. */
const THINNEST_MM = 15;

/** Nothing sawn or glued is deeper, in inches: a larger number is a slip. */
const DEEPEST_IN = 100;

/** Nothing thinner is lumber, in inches. */
const THINNEST_IN = 1 / 16;

/**
 * Reads a lumber size, thickness first: nominal (2x8), actual inches (1.5 x 7.25, 1 1/2 x 7 1/4) or actual millimeters (38 x 184).
 *
 * Two whole numbers are a nominal size in inches, unless both are 15 or more or mm is written; with a decimal or a fraction in
 * either number they are actual inches (2.0 x 8.0). An inch mark alone does not make a size actual: 2" x 8" is a 2x8.
 *
 * @example
 * readSize("2 x 8") // => { thickness: 1.5, depth: 7.25, unit: "in", name: "2x8" }
 * readSize("1 1/2 x 7 1/4") // => { thickness: 1.5, depth: 7.25, unit: "in", name: "1.5 x 7.25 in" }
 * readSize("38x184") // => { thickness: 38, depth: 184, unit: "mm", name: "38 x 184 mm" }
 */
export function readSize(text: string): Result<ReadSize, SizeProblem> {
  const clean = cleanText(text);
  if (clean === null) return new Failure({ kind: "not a size" });
  const pair = read(clean);
  if (pair === null) {
    const comma = /\d,\d/.test(clean) && read(clean.replace(/(\d),(?=\d)/g, "$1.")) !== null;
    return new Failure({ kind: comma ? "decimal comma" : "not a size" });
  }
  const { thickness, depth, kind } = pair;
  if (thickness > depth) return new Failure({ kind: "size turned round", instead: sizeName(depth, thickness, kind) });
  const name = sizeName(thickness, depth, kind);
  if (kind !== "nominal") return { thickness, depth, unit: kind, name };
  const dressed = dressedSizes.find((size) => size.nominalThickness === thickness && size.nominalDepth === depth);
  return dressed
    ? { thickness: dressed.thickness, depth: dressed.depth, unit: "in", name }
    : new Failure({ kind: "no such nominal size" });
}

interface Pair {
  readonly thickness: number;
  readonly depth: number;
  readonly kind: "nominal" | Unit;
}

function read(clean: string): Pair | null {
  const parts = /^([^x]+)x([^x]+)$/.exec(clean);
  if (!parts) return null;
  const [first, second] = [parts[1]!.trim(), parts[2]!.trim()];
  const numbers = [first, second].map((part) => part.replace(/ ?(?:mm|inches|inch|in|")\.?$/, ""));
  const [a, b] = numbers.map((number) => exact(number)?.valueOf() ?? 0) as [number, number];
  const millimeters = [first, second].some((part) => /mm\.?$/.test(part));
  const inchMark = [first, second].some((part) => /(?:"|in|inch|inches)\.?$/.test(part));
  if (millimeters && inchMark) return null;
  const metric = millimeters || (!inchMark && Math.min(a, b) >= THINNEST_MM);
  const perInch = metric ? MM_PER_INCH : 1;
  if (Math.min(a, b) < THINNEST_IN * perInch || Math.max(a, b) > DEEPEST_IN * perInch) return null;
  const written = numbers.some((number) => /[./]/.test(number));
  return { thickness: a, depth: b, kind: metric ? "mm" : written ? "in" : "nominal" };
}

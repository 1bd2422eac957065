import type { Unit } from "./unit.ts";

/**
 * A lumber size as it is written on a list: "2x8" for a nominal size, else "1.5 x 7.25 in" or "38 x 184 mm".
 *
 * It reads back to the same size, to a millionth. Two whole numbers of inches would read as a nominal size, so they keep a decimal.
 *
 * @example
 * sizeName(1.5, 7.25, "in") // => "1.5 x 7.25 in"
 * sizeName(2, 8, "in") // => "2.0 x 8.0 in"
 * sizeName(2, 8, "nominal") // => "2x8"
 */
export function sizeName(thickness: number, depth: number, kind: "nominal" | Unit): string {
  const [a, b] = [plain(thickness), plain(depth)];
  if (kind === "nominal") return `${a}x${b}`;
  const whole = kind === "in" && !`${a}${b}`.includes(".");
  return whole ? `${a}.0 x ${b}.0 in` : `${a} x ${b} ${kind}`;
}

function plain(value: number): string {
  return String(Number(value.toFixed(6)));
}

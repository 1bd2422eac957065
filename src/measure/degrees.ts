declare const unit: unique symbol;

/** An angle in degrees; the brand keeps it from radians and from slopes. */
export type Degrees = number & { readonly [unit]: "degrees" };

/**
 * Marks a number as degrees.
 *
 * @example
 * degrees(45) // => 45
 */
export function degrees(value: number): Degrees {
  return value as Degrees;
}

/**
 * What pieces are worth to a pricing of patterns: whole multiples of a very small share of one stick's cost, so
 * that sums and comparisons of worths are exact.
 */

/** Worth of one unit of the objective. */
export const worthUnit = 2 ** 24;

/** Prices of a linear program (they carry its rounding) as whole worths, never below 0. */
export function worthsOf(prices: readonly number[]): number[] {
  return prices.map((price) => Math.max(0, Math.floor(price * worthUnit)));
}

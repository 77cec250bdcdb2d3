/** Sums and extremes of lists too long to spread into a call. */

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
export const minimum = (values: readonly number[]): number =>
  values.reduce((low, value) => Math.min(low, value), Infinity);
export const maximum = (values: readonly number[]): number =>
  values.reduce((high, value) => Math.max(high, value), -Infinity);

/** The least number, of whole numbers above zero, that is a multiple of both. */
export function leastCommonMultiple(first: number, second: number): number {
  let multiple = first;
  while (multiple % second !== 0) multiple += first;
  return multiple;
}

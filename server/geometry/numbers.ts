/** Sums and extremes of lists too long to spread into a call, which takes only as many arguments as its stack holds. */

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Infinity of no values. */
export function minimum(values: Iterable<number>): number {
  let low = Infinity;
  for (const value of values) low = Math.min(low, value);
  return low;
}

/** −Infinity of no values. */
export function maximum(values: Iterable<number>): number {
  let high = -Infinity;
  for (const value of values) high = Math.max(high, value);
  return high;
}

/** Puts `more` at the end of `list`, however many there are. */
export function append<Item>(list: Item[], more: Iterable<Item>): void {
  for (const item of more) list.push(item);
}

/** The least number, of whole numbers above zero, that is a multiple of both. */
export function leastCommonMultiple(first: number, second: number): number {
  let multiple = first;
  while (multiple % second !== 0) multiple += first;
  return multiple;
}

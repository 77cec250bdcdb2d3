/** Sums and extremes of lists too long to spread into a call. */

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
export const minimum = (values: readonly number[]): number =>
  values.reduce((low, value) => Math.min(low, value), Infinity);
export const maximum = (values: readonly number[]): number =>
  values.reduce((high, value) => Math.max(high, value), -Infinity);

/** Numbers with what they measure. Lengths are millimetres, angles degrees, percentages fractions of one. */
import type { QuantityUnit } from '../../grammar/syntax-tree.ts';
import type { LengthUnit } from './design-model.ts';

/** Powers of length and angle; a plain number has none. */
export interface Dimension {
  readonly length: number;
  readonly angle: number;
  readonly percent: boolean;
}

export interface Quantity {
  readonly amount: number;
  readonly dimension: Dimension;
}

export const plainNumber: Dimension = { length: 0, angle: 0, percent: false };
export const lengthDimension: Dimension = { length: 1, angle: 0, percent: false };
export const angleDimension: Dimension = { length: 0, angle: 1, percent: false };
export const percentDimension: Dimension = { length: 0, angle: 0, percent: true };

/** Millimetres in each unit of length; the inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const millimetresIn: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };

/** `amount` of a written unit. */
export function quantityOf(amount: number, unit: QuantityUnit | null): Quantity {
  if (unit === null) return { amount, dimension: plainNumber };
  if (unit === 'deg') return { amount, dimension: angleDimension };
  if (unit === '%') return { amount: amount / 100, dimension: percentDimension };
  return { amount: amount * millimetresIn[unit], dimension: lengthDimension };
}

export const sameDimension = (first: Dimension, second: Dimension): boolean =>
  first.length === second.length && first.angle === second.angle && first.percent === second.percent;

export const isPlain = (dimension: Dimension): boolean => sameDimension(dimension, plainNumber);

/** Dimension of a product; of a quotient with `sign` −1. A percentage of something is that thing. */
export function productDimension(first: Dimension, second: Dimension, sign: 1 | -1): Dimension {
  const length = first.length + sign * second.length;
  const angle = first.angle + sign * second.angle;
  const measured = length !== 0 || angle !== 0;
  const percent = !measured && first.percent !== second.percent && isPlain({ ...first, percent: false });
  return { length, angle, percent };
}

/** What a maker calls it: "a length", "an angle". */
export function dimensionName(dimension: Dimension): string {
  if (dimension.percent) return 'a percentage';
  if (isPlain(dimension)) return 'a plain number';
  if (sameDimension(dimension, lengthDimension)) return 'a length';
  if (sameDimension(dimension, angleDimension)) return 'an angle';
  if (dimension.angle === 0 && dimension.length === 2) return 'an area';
  if (dimension.angle === 0 && dimension.length === 3) return 'a volume';
  return 'a mixed quantity';
}

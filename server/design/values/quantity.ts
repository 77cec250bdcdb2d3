/** Numbers with what they measure. Lengths are mm, angles degrees, masses g, times minutes, percentages fractions of one. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { QuantityUnit } from '../../../grammar/tree/syntax-nodes.ts';
import type { LengthUnit } from '../design-model.ts';

/** Powers of what is measured; a plain number has none. A volume is the third power of a length. */
export interface Dimension {
  readonly length: number;
  readonly angle: number;
  readonly mass: number;
  readonly time: number;
  readonly percent: boolean;
}

export interface Quantity {
  readonly amount: number;
  readonly dimension: Dimension;
  /** Set where another file's number without a unit is part of it: the use of that number. Read as a length it is in doubt. */
  readonly inDoubt?: SourceRange;
}

export const plainNumber: Dimension = { length: 0, angle: 0, mass: 0, time: 0, percent: false };
export const lengthDimension: Dimension = { ...plainNumber, length: 1 };
export const angleDimension: Dimension = { ...plainNumber, angle: 1 };
export const volumeDimension: Dimension = { ...plainNumber, length: 3 };
export const massDimension: Dimension = { ...plainNumber, mass: 1 };
export const timeDimension: Dimension = { ...plainNumber, time: 1 };
export const percentDimension: Dimension = { ...plainNumber, percent: true };

/** Millimetres in each unit of length; the inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const millimetresIn: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };

/** Cubic millimetres in a millilitre. */
export const cubicMillimetresInMillilitre = 1000;

/** What one of each unit comes to. The pound is 453.59237 g exactly (the same agreement), the ounce a sixteenth of it. */
const unitQuantities: Readonly<Record<Exclude<QuantityUnit, '%'>, Quantity>> = {
  mm: { amount: millimetresIn.mm, dimension: lengthDimension },
  cm: { amount: millimetresIn.cm, dimension: lengthDimension },
  m: { amount: millimetresIn.m, dimension: lengthDimension },
  in: { amount: millimetresIn.in, dimension: lengthDimension },
  ft: { amount: millimetresIn.ft, dimension: lengthDimension },
  deg: { amount: 1, dimension: angleDimension },
  g: { amount: 1, dimension: massDimension },
  kg: { amount: 1000, dimension: massDimension },
  oz: { amount: 453.59237 / 16, dimension: massDimension },
  lb: { amount: 453.59237, dimension: massDimension },
  mL: { amount: cubicMillimetresInMillilitre, dimension: volumeDimension },
  L: { amount: 1000 * cubicMillimetresInMillilitre, dimension: volumeDimension },
  min: { amount: 1, dimension: timeDimension },
  h: { amount: 60, dimension: timeDimension },
  day: { amount: 24 * 60, dimension: timeDimension },
  days: { amount: 24 * 60, dimension: timeDimension },
};

/** `amount` of a written unit. */
export function quantityOf(amount: number, unit: QuantityUnit | null): Quantity {
  if (unit === null) return { amount, dimension: plainNumber };
  if (unit === '%') return { amount: amount / 100, dimension: percentDimension };
  const one = unitQuantities[unit];
  return { amount: amount * one.amount, dimension: one.dimension };
}

export const sameDimension = (first: Dimension, second: Dimension): boolean =>
  samePowers(first, second) && first.percent === second.percent;

const samePowers = (first: Dimension, second: Dimension): boolean =>
  powers.every((power) => first[power] === second[power]);

const powers = ['length', 'angle', 'mass', 'time'] as const;

export const isPlain = (dimension: Dimension): boolean => sameDimension(dimension, plainNumber);

/** Dimension of a product; of a quotient with `sign` −1. A percentage of something is that thing. */
export function productDimension(first: Dimension, second: Dimension, sign: 1 | -1): Dimension {
  const product = mapPowers((power) => first[power] + sign * second[power]);
  const percent = isPlain(product) && first.percent !== second.percent && isPlain({ ...first, percent: false });
  return { ...product, percent };
}

/** Dimension of a square root; null where it measures nothing. */
export function rootDimension(dimension: Dimension): Dimension | null {
  const root = mapPowers((power) => dimension[power] / 2);
  return dimension.percent || !powers.every((power) => Number.isInteger(root[power])) ? null : root;
}

const mapPowers = (powerOf: (power: (typeof powers)[number]) => number): Dimension => ({
  length: powerOf('length'),
  angle: powerOf('angle'),
  mass: powerOf('mass'),
  time: powerOf('time'),
  percent: false,
});

/** What a maker calls it: "a length", "an angle". */
export function dimensionName(dimension: Dimension): string {
  if (dimension.percent) return 'a percentage';
  if (isPlain(dimension)) return 'a plain number';
  if (sameDimension(dimension, lengthDimension)) return 'a length';
  if (sameDimension(dimension, angleDimension)) return 'an angle';
  if (sameDimension(dimension, { ...plainNumber, length: 2 })) return 'an area';
  if (sameDimension(dimension, volumeDimension)) return 'a volume';
  if (sameDimension(dimension, massDimension)) return 'a mass';
  if (sameDimension(dimension, timeDimension)) return 'a time';
  return 'a mixed quantity';
}

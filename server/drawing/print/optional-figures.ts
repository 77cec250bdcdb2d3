/** Figures that may not be known: an empty cell says so. */
import { moneyText, fixed, massText } from '../../words/figures.ts';
import type { LengthUnit } from '../../design/design-model.ts';

export const countOrNone = (count: number | null): string => (count === null ? '' : String(count));

export const moneyOrNone = (amount: number | null, currency: string | null): string =>
  amount === null ? '' : moneyText(amount, currency);

/** Amounts of resin, in columns under their unit, mL or g. */
export const amountOrNone = (amount: number | null): string => (amount === null ? '' : fixed(amount, 1));

export const massOrUnknown = (grams: number | null, units: LengthUnit): string =>
  grams === null ? 'not known' : massText(grams, units);

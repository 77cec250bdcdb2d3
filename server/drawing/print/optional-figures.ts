/** Figures that may not be known: an empty cell says so. */
import { moneyText } from '../../words/figures.ts';

export const countOrNone = (count: number | null): string => (count === null ? '' : String(count));

export const moneyOrNone = (amount: number | null, currency: string | null): string =>
  amount === null ? '' : moneyText(amount, currency);

/** Grams, from a kilogram on in kilograms. */
export function massText(grams: number | null): string {
  if (grams === null) return 'not known';
  return grams < 1000 ? `${Math.round(grams)} g` : `${(grams / 1000).toFixed(2)} kg`;
}

/** Amounts of money: one currency at a time, rounded to its smallest coin. Codes of ISO 4217. */
import { coinDecimals } from '../design/values/currency.ts';
import type { Money } from '../design/material-model.ts';
import { rounded } from '../geometry/tolerance.ts';

/** The currency that all of `amounts` are in; null where there are none, or (mixed) more than one. */
export function oneCurrency(amounts: readonly Money[]): { readonly currency: string | null; readonly mixed: boolean } {
  const currencies = new Set(amounts.map(({ currency }) => currency));
  const mixed = currencies.size > 1;
  return { currency: mixed ? null : ([...currencies][0] ?? null), mixed };
}

/** `amount` to the smallest coin of `currency`; half a coin goes up. */
export const toCoins = (amount: number, currency: string | null): number =>
  rounded(amount, coinDecimals(currency ?? ''));

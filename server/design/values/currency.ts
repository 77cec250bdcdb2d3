/** Currencies by their codes of ISO 4217. */

/** Decimals of the smallest coin; a code that the platform does not know has coins of a hundredth. */
export function coinDecimals(currency: string): number {
  if (!/^[A-Za-z]{3}$/.test(currency)) return 2;
  const { maximumFractionDigits = 2 } = new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions();
  return maximumFractionDigits;
}

/** How figures of a change are set. Lengths to 0.01 mm, since versions differ by little. */
export const arrow = '→';

/** With a real minus sign, and always a sign: +2, −1.15. */
export const signed = (value: number, decimals = 0): string =>
  value === 0 ? '0' : `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(decimals)}`;

export const length = (value: number): string => value.toFixed(2);

/** One figure where both are the same, else both. Null is nothing to say. */
export function fromTo(old: string | null, now: string | null): string {
  if (old === null || now === null || old === now) return now ?? old ?? '';
  return `${old} ${arrow} ${now}`;
}

/** How figures of a change are set. */
import { signed } from '../words/figures.ts';

export const arrow = '→';

/** A difference of counts, with a real minus sign, and always a sign: +2, −1. */
export const moreOrLess = (value: number): string => (value === 0 ? '0' : signed(value, 0));

/** One figure where both are the same, else both. Null is nothing to say. */
export function fromTo(old: string | null, now: string | null): string {
  if (old === null || now === null || old === now) return now ?? old ?? '';
  return `${old} ${arrow} ${now}`;
}

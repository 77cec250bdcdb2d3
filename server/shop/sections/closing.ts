/**
 * Does the lattice close? An error of pitch that all strips share only scales the lattice; what must stay inside the
 * fit are differences between strips that cross the same neighbours. Lengths in mm. The formulas are derived beside them.
 */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';

/** What locates each notch: the notch before it, dropped over a pin; or a stop that the strip's end touches. */
export type NotchLocation = 'pin' | 'stop';

export interface NotchingError {
  readonly location: NotchLocation;
  /** Pitches to which the pin, or pairs of stops, were set for strips that cross the same neighbours, mm. */
  readonly settings: readonly number[];
  /** Standard deviation of one notch's place against what locates it, mm; 0 where not known. */
  readonly scatter: number;
}

/**
 * How far the last of `notches` notches lies apart on two strips whose pins were set to pitches that differ by
 * `difference`: (n − 1)·e, since each notch is found from the one before.
 */
export const driftOfSettings = (difference: number, notches: number): number =>
  Math.abs(difference) * Math.max(0, notches - 1);

/**
 * Two standard deviations of the last notch's place, of `notches`, from independent errors of deviation `scatter`.
 * On an indexing pin it is counted from the first notch and the n − 1 steps add up as a random walk: 2σ√(n − 1). From a
 * stop each notch has its own error and nothing grows: 2σ for any n. A strip of one notch takes its place from it: 0.
 */
export function spreadOfScatter(location: NotchLocation, scatter: number, notches: number): number {
  if (notches < 2) return 0;
  return 2 * scatter * (location === 'pin' ? Math.sqrt(notches - 1) : 1);
}

export interface Closing {
  /** From settings that differ: certain, mm. */
  readonly drift: number;
  /** From scatter, two standard deviations: one strip in twenty lies further off, mm. */
  readonly spread: number;
  /** What the fit takes up, mm. */
  readonly allowance: number;
  /** closes: both together stay inside; tight: some strips will want pressing; apart: the drift alone is too much. */
  readonly verdict: 'closes' | 'tight' | 'apart';
}

/**
 * Whether strips of `notches` notches made with `error` close, with notches wider than the strip by `fit`. A fit
 * that presses (negative) squeezes the wood by its size and so takes up as much. Only `apart` is worth an alarm:
 * a drift within the place tolerance of the fit is none, and `tight` is a panel that a mallet closes.
 */
export function closingOf(error: NotchingError, notches: number, fit: number): Closing {
  const difference = error.settings.length > 1 ? maximum(error.settings) - minimum(error.settings) : 0;
  const drift = error.location === 'pin' ? driftOfSettings(difference, notches) : Math.abs(difference);
  const spread = spreadOfScatter(error.location, error.scatter, notches);
  const allowance = Math.abs(fit);
  return { drift, spread, allowance, verdict: verdictOf(drift, spread, allowance + placeTolerance) };
}

function verdictOf(drift: number, spread: number, limit: number): Closing['verdict'] {
  if (drift > limit) return 'apart';
  return drift + spread > limit ? 'tight' : 'closes';
}

/** The most notches of a strip for which settings that differ by `difference` still close inside `fit`; Infinity for none. */
export const mostNotchesThatClose = (difference: number, fit: number): number =>
  difference === 0 ? Infinity : 1 + Math.floor((Math.abs(fit) + placeTolerance) / Math.abs(difference));

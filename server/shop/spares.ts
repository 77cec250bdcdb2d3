/** How many pieces to cut where a known share of them breaks or is rejected. */
import { arithmeticTolerance } from '../geometry/tolerance.ts';

/**
 * The fewest pieces to cut so that with a probability of at least `confidence` no fewer than `make` of them are good,
 * each failing with probability `breakage` whatever becomes of the others. Both are fractions, at least 0 and below 1;
 * else a RangeError. `make` is a whole number from 0.
 *
 * Cut one by one until `make` are good: the number lost on the way is negative binomial, P(lost = i) =
 * C(make − 1 + i, i)·(1 − breakage)^make·breakage^i, and P(lost ≤ s) is the binomial P(at most s of make + s fail).
 */
export function piecesToCut(make: number, breakage: number, confidence: number): number {
  if (!(breakage >= 0 && breakage < 1)) throw new RangeError(`breakage ${breakage} is not at least 0 and below 1`);
  if (!(confidence >= 0 && confidence < 1)) throw new RangeError(`confidence ${confidence} is not within 0 to 1`);
  let lost = 0;
  let logarithm = make * Math.log1p(-breakage);
  let probability = Math.exp(logarithm);
  while (probability < confidence - arithmeticTolerance) {
    const growth = (breakage * (make + lost)) / (lost + 1);
    logarithm += Math.log(growth);
    const more = probability + Math.exp(logarithm);
    if (growth < 1 && more === probability) break;
    probability = more;
    lost++;
  }
  return make + lost;
}

/** How many pieces to cut beyond the need: by a share, by a known breakage, or for the bags of a class. */
import type { Panel, StripStock } from '../../design/design-model.ts';
import type { Kit } from '../../design/work-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';

/** What the spares of a stock depend on. */
export type SpareRule = Pick<StripStock, 'spare' | 'breakage'>;

/**
 * Spares of `make` pieces: what the stated breakage asks for with its confidence; else the stated share, at least one;
 * none where neither is stated.
 */
export function sparesFor(make: number, { spare, breakage }: SpareRule): number {
  if (breakage) return piecesToCut(make, breakage.share, breakage.confidence) - make;
  return spare === null ? 0 : Math.max(1, Math.ceil(make * spare - arithmeticTolerance));
}

/** Spares of one mark for one class, as the kit states them: those in the bags and those in the teacher's box. */
export const sparesOfKit = ({ students, sparesPerBag, sparesWithTeacher }: Kit): number =>
  students * sparesPerBag + sparesWithTeacher;

/**
 * Spares of a kind of which each panel takes so many: for the panels of a class what its kit states, where it states
 * any; for all others what the stock asks for.
 */
export function sparesOf(stock: SpareRule, made: ReadonlyMap<Panel, number>, kits: readonly Kit[]): number {
  const stating = kits.filter((kit) => made.has(kit.panel) && sparesOfKit(kit) > 0);
  const other = [...made].filter(([panel]) => !stating.some((kit) => kit.panel === panel)).map(([, make]) => make);
  return sum(stating.map(sparesOfKit)) + (other.length > 0 ? sparesFor(sum(other), stock) : 0);
}

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

/** Spares of one mark in a class: how sure it is that nobody is short, with spares in every bag and a box for all. */
import { sum } from '../../geometry/numbers.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import { piecesToCut } from './spares.ts';

/** So many pieces of a mark for each of so many students, of which a share breaks. */
export interface ClassNeed {
  readonly each: number;
  readonly students: number;
  readonly breakage: number;
}

/** A box beyond this is no box: where so much breaks, the wood or the tool is wrong. */
const largestBox = 2048;

/** Pieces to cut in all so that with `confidence` no bag is short, each with spares of its own and no box beside. */
export const withoutBox = ({ each, students, breakage }: ClassNeed, confidence: number): number =>
  students * piecesToCut(each, breakage, confidence ** (1 / students));

/** The probability that what the bags lack beyond `perBag` spares each is no more than `box` in all. */
export const boxSuffices = (need: ClassNeed, perBag: number, box: number): number =>
  Math.min(1, sum(drawnByClass(need, perBag, box)));

/** The smallest box with which it is so sure that nobody is short; null where none of a sensible size does. */
export function leastBox(need: ClassNeed, perBag: number, confidence: number): number | null {
  for (let most = 8; most <= largestBox; most *= 2) {
    let sure = 0;
    for (const [box, chance] of drawnByClass(need, perBag, most).entries()) {
      sure += chance;
      if (sure >= confidence - arithmeticTolerance) return box;
    }
  }
  return null;
}

/** Chances that the class draws 0, 1 … `most` pieces from the box: those of one student, as often as there are students. */
function drawnByClass({ each, students, breakage }: ClassNeed, perBag: number, most: number): number[] {
  let power = drawnByOne(each, breakage, perBag, most);
  let drawn = [1];
  for (let left = students; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) drawn = folded(drawn, power, most);
    power = folded(power, power, most);
  }
  return drawn;
}

/**
 * A student cuts until `each` pieces are good, first out of the bag, then out of the box, whose pieces may break too. So
 * the number lost is negative binomial: P(lost = i) = C(each − 1 + i, i)·(1 − breakage)^each·breakage^i.
 */
function drawnByOne(each: number, breakage: number, perBag: number, most: number): number[] {
  let chance = (1 - breakage) ** each;
  const lost = Array.from({ length: perBag + most + 1 }, (_, count) => {
    const own = chance;
    chance *= (breakage * (each + count)) / (count + 1);
    return own;
  });
  return [sum(lost.slice(0, perBag + 1)), ...lost.slice(perBag + 1)];
}

/** Chances of the sum of two numbers, up to `most`. */
const folded = (a: readonly number[], b: readonly number[], most: number): number[] =>
  Array.from({ length: most + 1 }, (_, total) => {
    let chance = 0;
    for (let first = 0; first <= total; first++) chance += (a[first] ?? 0) * (b[total - first] ?? 0);
    return chance;
  });

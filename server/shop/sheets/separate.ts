/**
 * Pieces moved until none overlap: guided local search (C. Voudouris, E. Tsang, 1999) with weights on pairs, which grow
 * while a pair overlaps (J. Egeblad, B. K. Nielsen, A. Odgaard, European Journal of Operational Research 183, 2007).
 */
import { maximum } from '../../geometry/numbers.ts';
import { SpotSearch } from './best-spot.ts';
import type { Layout, Spot } from './layout.ts';
import { type Random, shuffled } from './seeded-random.ts';

/** Steps a search may still take; one step moves one piece. */
export interface StepBudget {
  left: number;
}

/** Passes over all pieces without progress before the weights begin anew, and how often they may. */
const mostIdlePasses = 30;
const mostStrikes = 2;
/** What counts as progress. */
const progressShare = 0.98;
/** Weights of pairs that overlap grow by a share between these, the deepest most; those of others fade. */
const leastGrowth = 1.2;
const mostGrowth = 2;
const fading = 0.95;

/** Moves pieces until they are apart, a pass over them a stage; false, with the least overlap found, when patience or steps end before. */
export function* separate(layout: Layout, budget: StepBudget, random: Random): Generator<void, boolean> {
  const search = new SpotSearch(layout, random);
  let least = overlapAndWeights(layout);
  let kept: Spot[] = layout.spots();
  for (let strike = 0; strike < mostStrikes && budget.left > 0; strike++) {
    layout.putAll(kept);
    layout.weights.fill(1);
    const before = least;
    for (let idle = 0; idle < mostIdlePasses && budget.left > 0; idle++) {
      movePieces(layout, search, budget, random);
      yield;
      const total = overlapAndWeights(layout);
      if (total === 0) return true;
      if (total >= least) continue;
      if (total < progressShare * least) idle = 0;
      [least, kept] = [total, layout.spots()];
    }
    if (least < progressShare * before) strike = -1;
  }
  layout.putAll(kept);
  return least === 0;
}

function movePieces(layout: Layout, search: SpotSearch, budget: StepBudget, random: Random): void {
  const order = shuffled(
    layout.kinds.map((_, piece) => piece),
    random,
  );
  for (const piece of order) {
    if (layout.overlapAt(piece, layout.spot(piece), 1) === 0) continue;
    budget.left -= 1;
    layout.put(piece, search.best(piece).spot);
  }
}

/** The sum of all depths, weights not counted; and the weights made ready for the next pass. */
function overlapAndWeights(layout: Layout): number {
  const { size, weights } = layout;
  const pairs: { first: number; second: number; depth: number }[] = [];
  for (let first = 0; first < size; first++)
    for (let second = first + 1; second < size; second++) {
      const depth = layout.depth(second, first, layout.spot(second));
      if (depth > 0) pairs.push({ first, second, depth });
    }
  const deepest = maximum(pairs.map(({ depth }) => depth));
  weights.forEach((weight, index) => (weights[index] = Math.max(1, weight * fading)));
  for (const { first, second, depth } of pairs) {
    const growth = (leastGrowth + (mostGrowth - leastGrowth) * (depth / deepest)) / fading;
    const weight = (weights[first * size + second] ?? 1) * growth;
    weights[first * size + second] = weight;
    weights[second * size + first] = weight;
  }
  return pairs.reduce((sum, { depth }) => sum + depth, 0);
}

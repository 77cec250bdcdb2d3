/** Cutting plans as the shop plan writes them, their problems in words. */
import { type Words, measure, words } from '../../../grammar/words.ts';
import { sum } from '../../geometry/numbers.ts';
import { planLength } from './plan-rounding.ts';
import type { CutStock } from '../shop-plan.ts';
import type { StockCutting } from '../stock/cut-every-stock.ts';
import type { StockProblem } from '../stock/stock-request.ts';

export const planCutting = (cuttings: readonly StockCutting[]): CutStock[] => cuttings.map(planStockOf);

function planStockOf({ request, plan, currency, problems, interrupted }: StockCutting): CutStock {
  const words = problems.map(wordsOf);
  if (plan && request.kerfMm === 0)
    words.push('No kerf is stated, and the sticks are planned as if the saw took nothing; state the bench’s kerf.');
  if (interrupted === 'cancelled')
    words.push('The search was stopped; this is the best plan found, within the bound shown.');
  if (interrupted === 'time')
    words.push('The time for the search ran out; this is the best plan found, within the bound shown.');
  return {
    stock: request.stock,
    objective: plan?.objective ?? 'sticks',
    needMm: planLength(plan?.needMm ?? needOf(request)),
    kerfMm: planLength(request.kerfMm),
    endTrimMm: planLength(request.endTrimMm),
    breathMm: { cut: planLength(request.breathMm.cut), stick: planLength(request.breathMm.stick) },
    sticks: (plan?.sticks ?? []).map(({ lengthMm, cuts, count, onHand, offcutMm }) => ({
      lengthMm: planLength(lengthMm),
      cuts: cuts.map((cut) => ({ ...cut, lengthMm: planLength(cut.lengthMm) })),
      count,
      onHand,
      offcutMm: planLength(offcutMm),
    })),
    sticksUsed: plan?.sticksUsed ?? 0,
    stickMm: planLength(plan?.stickMm ?? 0),
    value: plan?.value ?? 0,
    bound: plan?.bound ?? 0,
    proven: plan?.proven ?? false,
    length: plan?.length
      ? { ...plan.length, valueMm: planLength(plan.length.valueMm), boundMm: planLength(plan.length.boundMm) }
      : null,
    wastePct: planLength(plan?.wastePct ?? 0),
    cost: plan?.cost ?? null,
    currency,
    leftOut: leftOutOf(problems),
    problems: words,
  };
}

const leftOutOf = (problems: readonly StockProblem[]): string[] => [
  ...new Set(
    problems.flatMap((problem) =>
      problem.kind === 'pieceTooLong' || problem.kind === 'pieceTooWide' ? [problem.mark] : [],
    ),
  ),
];

const needOf = ({ pieces }: StockCutting['request']): number =>
  sum(pieces.map(({ lengthMm, total }) => lengthMm * total));

function wordsOf(problem: StockProblem): Words {
  switch (problem.kind) {
    case 'noLengths':
      return 'No length of stick is given; add the lengths that can be had.';
    case 'impossibleNumber':
      return `The ${problem.of} cannot be ${problem.value}; give a number that can be.`;
    case 'stickUsedUpByTrim':
      return `A stick of ${problem.lengthMm} mm is used up by its end trim; take a longer one.`;
    case 'pieceTooLong':
      return words`${problem.mark}, ${measure.given(problem.lengthMm)} long, is longer than any stick holds (${problem.longestMm} mm) and is left out; add a longer stick.`;
    case 'pieceTooWide':
      return words`${problem.mark}, ${measure.given(problem.widthMm)} wide, is wider than its stick (${measure.given(problem.faceMm)}) and is left out; mill a wider face.`;
    case 'kerfWiderThanPiece':
      return words`The saw takes more than ${problem.mark} is long (${measure.given(problem.lengthMm)}); cut it with a thinner blade.`;
    case 'notEnoughSticks':
      return 'There are not enough sticks for all pieces; add to what is on hand, or lengths that can be bought.';
    case 'mixedCurrencies':
      return 'The lengths are priced in several currencies, so the fewest sticks are planned and not the cheapest; give all prices in one.';
  }
}

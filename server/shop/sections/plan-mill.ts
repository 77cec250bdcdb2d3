/** How each strip stock is brought to its section: how many sticks to mill, and from which boards. Lengths mm. */
import { type Words, measure, words } from '../../../grammar/words.ts';
import type { Bench, StripStock } from '../../design/design-model.ts';
import type { BoardStock } from '../../design/material-model.ts';
import type { Band } from '../../design/work-model.ts';
import { maximum, sum } from '../../geometry/numbers.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import { oneCurrency, toCoins } from '../money.ts';
import { frameStocks } from './plan-frames.ts';
import { sticksToMill } from './plan-buying.ts';
import { planLength } from './plan-rounding.ts';
import type { CutStock } from '../shop-plan.ts';
import { bestFirstFit } from '../stock/first-fit.ts';
import { sticksUsed } from '../stock/cutting-task.ts';
import type { PlanMill } from './work-sections.ts';

/**
 * What to look for in the wood. Common practice; a run-out of 1 in 15 leaves about nine tenths of the bending strength
 * (Wood Handbook, chapter 5, effect of cross grain; from memory).
 */
const grainRules: readonly string[] = [
  'grain along the strip, run-out no more than 1 in 15',
  'no knots, checks or pith',
  'growth rings at one slant through a whole run, so that all strips move alike',
];

/** Every stock that strips, infill, frames or bands are made of, in the order met. */
export function stocksOf(
  { strips, pieces }: MarkedKinds,
  panels: readonly LaidPanel[],
  bands: readonly Band[],
): StripStock[] {
  const met = [
    ...strips.flatMap(({ groups }) => groups.map(({ group }) => group.stock)),
    ...pieces.map(({ shape }) => shape.stock),
    ...frameStocks(panels),
    ...bands.map(({ stock }) => stock),
  ];
  return met.filter((stock, index) => met.findIndex(({ name }) => name === stock.name) === index);
}

/** How each of `stocks` is milled; `cuttings` tell how many sticks of it are needed. */
export const planMill = (
  stocks: readonly StripStock[],
  cuttings: readonly CutStock[],
  bench: Bench | null,
): PlanMill<Words>[] =>
  stocks.map((stock) =>
    millOf(
      stock,
      cuttings.find((plan) => plan.stock === stock.name),
      bench,
    ),
  );

function millOf(stock: StripStock, cutting: CutStock | undefined, bench: Bench | null): PlanMill<Words> {
  const bought = cutting?.sticks.filter(({ onHand }) => !onHand) ?? [];
  const lengths = cutting ? sticksToMill(cutting, stock.rejects) : [];
  const isPlanned = cutting !== undefined && cutting.sticks.length > 0;
  const { boards, problems } = isPlanned ? boardsFor(stock, lengths, bench) : { boards: null, problems: [] };
  return {
    stock: stock.name,
    faceMm: planLength(stock.face),
    depthMm: planLength(stock.depth),
    finishedDepthMm: planLength(stock.depth - 2 * stock.flush),
    sticks: isPlanned ? sum(bought.map(({ count }) => count)) : null,
    rejectsPct: planLength(100 * stock.rejects),
    millSticks: isPlanned ? sum(lengths.map(({ count }) => count)) : null,
    millMm: isPlanned ? planLength(sum(lengths.map(({ count, lengthMm }) => count * lengthMm))) : null,
    boards,
    grain: [...grainRules],
    problems,
  };
}

type Ripped = NonNullable<PlanMill<Words>['boards']>;

const isRipped = (answer: Ripped | Words): answer is Ripped => typeof answer === 'object' && 'boards' in answer;

interface RippedBoards {
  readonly boards: PlanMill<Words>['boards'];
  readonly problems: Words[];
}

/** Of the boards that can be had, those of which the least width × length is taken. */
function boardsFor(
  stock: StripStock,
  lengths: readonly { readonly lengthMm: number; readonly count: number }[],
  bench: Bench | null,
): RippedBoards {
  if (stock.boards.length === 0) return { boards: null, problems: [] };
  const ripKerf = bench?.rippingKerf ?? bench?.kerf ?? null;
  const answers = stock.boards.map((board) => ripped(stock, board, lengths, ripKerf ?? 0));
  const possible = answers.flatMap((answer) => (isRipped(answer) ? [answer] : []));
  const problems = answers.flatMap((answer) => (isRipped(answer) ? [] : [answer]));
  const wood = (ripping: Ripped): number => ripping.boards * ripping.widthMm * ripping.lengthMm;
  const [best = null] = possible.sort((a, b) => wood(a) - wood(b));
  if (best && ripKerf === null)
    problems.push(
      'No ripping kerf is stated, and the boards are counted as if the saw took nothing; state it on the bench.',
    );
  return { boards: best, problems };
}

/**
 * Strips side by side: n·w + (n − 1)·kerf + a·ceil(n / every) ≤ width, the edge dressed before the first rip and after
 * every so many. Lengths end to end: first fit, the saw's cut between. In words what stands against it.
 */
function ripped(
  stock: StripStock,
  board: BoardStock,
  lengths: readonly { readonly lengthMm: number; readonly count: number }[],
  kerf: number,
): Ripped | Words {
  const [fromThickness, fromWidth] =
    board.thicknessGives === 'face' ? [stock.face, stock.depth] : [stock.depth, stock.face];
  if (board.thickness < fromThickness)
    return words`A board ${measure.given(board.thickness)} thick does not give a ${board.thicknessGives} of ${measure.given(fromThickness)}; take a thicker one.`;
  const widthOf = (count: number): number => {
    const { allowance, every } = board.rejoint ?? { allowance: 0, every: 1 };
    return count * fromWidth + (count - 1) * kerf + allowance * Math.ceil(count / every);
  };
  let side = 0;
  while (widthOf(side + 1) <= board.width + arithmeticTolerance) side++;
  if (side === 0) return words`A board ${measure.given(board.width)} wide gives no strip; take a wider one.`;
  const longest = Math.max(0, maximum(lengths.map(({ lengthMm }) => lengthMm)));
  if (longest > board.length)
    return words`A board ${measure.given(board.length)} long gives no stick of ${measure.given(longest)}; take a longer one.`;
  const runs = bestFirstFit({
    sizes: lengths
      .map(({ lengthMm, count }) => ({ weight: lengthMm + kerf, demand: count }))
      .sort((a, b) => b.weight - a.weight),
    sticks: [{ room: board.length + kerf, cost: 1, limit: Infinity, counted: true }],
    mostSticks: Infinity,
  });
  const runCount = sticksUsed(runs ?? []);
  const boards = Math.ceil(runCount / side);
  const inLast = runCount - side * (boards - 1);
  const { currency } = oneCurrency(board.price ? [board.price] : []);
  return {
    thicknessMm: planLength(board.thickness),
    widthMm: planLength(board.width),
    lengthMm: planLength(board.length),
    thicknessGives: board.thicknessGives,
    ripKerfMm: planLength(kerf),
    rejointMm: planLength(board.rejoint?.allowance ?? 0),
    rejointEvery: board.rejoint?.every ?? 1,
    stripsPerBoard: side,
    lengthsPerBoard: longest === 0 ? 0 : Math.floor((board.length + kerf + arithmeticTolerance) / (longest + kerf)),
    boards,
    leftoverWidthMm: planLength(boards === 0 ? 0 : Math.max(0, board.width - widthOf(inLast) - kerf)),
    price: board.price?.amount ?? null,
    cost: board.price ? toCoins(board.price.amount * boards, currency) : null,
    currency,
  };
}

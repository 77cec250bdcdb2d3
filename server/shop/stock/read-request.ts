/** From a request in mm and money to a cutting task in whole numbers, and what is wrong with the request. */
import { maximum } from '../../geometry/numbers.ts';
import { rounded } from '../../geometry/tolerance.ts';
import { commonDivisor, type CuttingTask, type StickType } from './cutting-task.ts';
import type { PieceDemand, StickChoice, StockProblem, StockRequest } from './stock-request.ts';

/** A ten-thousandth of a millimetre and of a unit of money: as fine as the plan is written. */
const unitDecimals = 4;
const unitsPerMm = 10 ** unitDecimals;
const unitsPerMoney = 10 ** unitDecimals;

const unitsOf = (value: number): number => Math.round(value * unitsPerMm);

export interface ReadRequest {
  readonly objective: 'cost' | 'sticks';
  /** The choices that can be used, in the order of the task's sticks. */
  readonly choices: readonly StickChoice[];
  /** The marks of each of the task's sizes. */
  readonly marks: readonly (readonly PieceDemand[])[];
  /** Costs as whole multiples of `costUnit`. */
  readonly task: CuttingTask;
  /** Money, or 1 stick. */
  readonly costUnit: number;
}

/** Null when nothing is left that can be cut. Pieces that no stick can hold are left out. */
export function readRequest(request: StockRequest): { read: ReadRequest | null; problems: StockProblem[] } {
  const numbers = impossibleNumbers(request);
  if (numbers.length > 0) return { read: null, problems: numbers };
  const problems: StockProblem[] = [];
  const cut = unitsOf(request.kerfMm) + unitsOf(request.breathMm.cut);
  const trims = 2 * unitsOf(request.endTrimMm) + unitsOf(request.breathMm.stick);
  const choices = request.sticks.filter(({ lengthMm }) => {
    const usable = unitsOf(lengthMm) > trims;
    if (!usable) problems.push({ kind: 'stickUsedUpByTrim', lengthMm });
    return usable;
  });
  const longestMm = longestPiece(request);
  const roomOf = ({ lengthMm }: StickChoice): number => unitsOf(lengthMm) - trims + cut;
  if (choices.length === 0) return { read: null, problems: [...problems, { kind: 'noLengths' }] };

  const bySize = new Map<number, PieceDemand[]>();
  for (const piece of request.pieces) {
    const weight = unitsOf(piece.lengthMm) + cut;
    const { mark, lengthMm } = piece;
    if (isLonger(lengthMm, longestMm)) {
      problems.push({ kind: 'pieceTooLong', mark, lengthMm, longestMm });
      continue;
    }
    if (request.kerfMm > lengthMm) problems.push({ kind: 'kerfWiderThanPiece', mark, lengthMm });
    if (piece.total > 0) bySize.set(weight, [...(bySize.get(weight) ?? []), piece]);
  }
  const sizes = [...bySize].sort(([a], [b]) => b - a);
  const objective = choices.every(({ price }) => price !== null) && choices.some(isBought) ? 'cost' : 'sticks';
  const prices = choices.map(({ price }) => Math.round((price ?? 0) * unitsPerMoney));
  const commonPrice = commonDivisor(prices) || 1;
  const freeInRack = (choice: StickChoice): boolean => !isBought(choice) && choices.some(isBought);
  const sticks = choices.map((choice, type): StickType => {
    const cost = objective === 'cost' ? (prices[type] ?? 0) / commonPrice : freeInRack(choice) ? 0 : 1;
    return { room: roomOf(choice), cost, limit: choice.onHand ?? Infinity, counted: !freeInRack(choice) };
  });
  const task = {
    sizes: sizes.map(([weight, pieces]) => ({ weight, demand: pieces.reduce((sum, { total }) => sum + total, 0) })),
    sticks,
    mostSticks: Infinity,
  };
  const costUnit = objective === 'cost' ? commonPrice / unitsPerMoney : 1;
  return { read: { objective, choices, marks: sizes.map(([, pieces]) => pieces), task, costUnit }, problems };
}

const isBought = ({ onHand }: StickChoice): boolean => onHand === null;

/** The longest piece that any of a request's sticks holds, mm; 0 where there is none. */
export function longestPiece({ sticks, endTrimMm, breathMm }: Omit<StockRequest, 'pieces'>): number {
  const beside = 2 * unitsOf(endTrimMm) + unitsOf(breathMm.stick);
  const longest = Math.max(0, maximum(sticks.map(({ lengthMm }) => unitsOf(lengthMm) - beside)));
  return rounded(longest / unitsPerMm, unitDecimals);
}

/** Whether a piece is longer than what a stick holds, as finely as the plan is written. */
export const isLonger = (lengthMm: number, heldMm: number): boolean => unitsOf(lengthMm) > unitsOf(heldMm);

/** Numbers that no shop has: they spoil the whole request. */
function impossibleNumbers({ kerfMm, endTrimMm, breathMm, sticks, pieces }: StockRequest): StockProblem[] {
  const problems: StockProblem[] = [];
  const check = (of: string, value: number | null, fine: (value: number) => boolean): void => {
    if (value !== null && !(Number.isFinite(value) && fine(value)))
      problems.push({ kind: 'impossibleNumber', of, value });
  };
  const isCount = (value: number): boolean => Number.isInteger(value) && value >= 0;
  check('kerf', kerfMm, (value) => value >= 0);
  check('end trim', endTrimMm, (value) => value >= 0);
  check('breath at a cut', breathMm.cut, (value) => value >= 0);
  check('breath in a stick', breathMm.stick, (value) => value >= 0);
  for (const { lengthMm, price, onHand } of sticks) {
    check('stick length', lengthMm, (value) => unitsOf(value) > 0);
    check('price', price, (value) => value >= 0);
    check('sticks on hand', onHand, isCount);
  }
  for (const { mark, lengthMm, total } of pieces) {
    check(`length of ${mark}`, lengthMm, (value) => unitsOf(value) > 0);
    check(`number of ${mark}`, total, isCount);
  }
  return problems;
}

/** A task that asks for the least length, and what a unit of its costs is in mm. */
export interface LengthTask {
  readonly task: CuttingTask;
  readonly unitMm: number;
}

/** The same task, to take the least length of no more than `mostSticks` sticks that count; null where their length is given. */
export function shortestTask({ choices, task }: ReadRequest, mostSticks: number): LengthTask | null {
  const lengths = choices.map(({ lengthMm }, type) => (task.sticks[type]?.counted ? unitsOf(lengthMm) : 0));
  if (new Set(lengths.filter((length) => length > 0)).size < 2) return null;
  const common = commonDivisor(lengths);
  const sticks = task.sticks.map((stick, type) => ({ ...stick, cost: (lengths[type] ?? 0) / common }));
  return { task: { ...task, sticks, mostSticks }, unitMm: common / unitsPerMm };
}

/** A cutting plan in marks and mm: pieces to spare taken out, marks of one length shared out, equal sticks as one. */
import { rounded } from '../../geometry/tolerance.ts';
import type { CuttingPlan } from './cutting-task.ts';
import type { ReadRequest } from './read-request.ts';
import type { CutStick, StockPlan, StockRequest } from './stock-request.ts';

const decimals = 4;
const length = (value: number): number => rounded(value, decimals);

/** A plan as it was found; `bound` is in the task's unit of cost. */
interface FoundPlan {
  readonly plan: CuttingPlan;
  readonly bound: number;
  /** What no plan with as few sticks is shorter than; null where there is no choice of lengths. */
  readonly leastMm: number | null;
}

export function writeStockPlan(
  request: StockRequest,
  read: ReadRequest,
  { plan, bound, leastMm }: FoundPlan,
): StockPlan {
  const filled = exactSticks(read, plan);
  const sticks = cutSticks(request, read, filled);
  const total = (of: (stick: CutStick) => number): number =>
    sticks.reduce((sum, stick) => sum + stick.count * of(stick), 0);
  const needMm = total(({ cuts }) => cuts.reduce((sum, { lengthMm, n }) => sum + lengthMm * n, 0));
  const stickMm = total(({ lengthMm }) => lengthMm);
  const used = total(() => 1);
  const counted = filled.reduce((sum, { type }) => sum + (read.task.sticks[type]?.cost ?? 0), 0);
  const price = filled.reduce((sum, { type }) => sum + (read.choices[type]?.price ?? 0), 0);
  const cost = read.objective === 'cost' ? rounded(price, decimals) : null;
  const value = cost ?? counted;
  const least = rounded(bound * read.costUnit, decimals);
  return {
    stock: request.stock,
    objective: read.objective,
    needMm: length(needMm),
    kerfMm: length(request.kerfMm),
    endTrimMm: length(request.endTrimMm),
    breathMm: { cut: length(request.breathMm.cut), stick: length(request.breathMm.stick) },
    sticks,
    sticksUsed: used,
    stickMm: length(stickMm),
    value,
    bound: Math.min(least, value),
    proven: value <= least,
    length: leastMm === null ? null : countedLength(read, filled, leastMm),
    wastePct: rounded(stickMm === 0 ? 0 : (100 * (stickMm - needMm)) / stickMm, 2),
    cost,
  };
}

interface FilledStick {
  readonly type: number;
  readonly counts: number[];
}

function countedLength(
  { task, choices }: ReadRequest,
  filled: readonly FilledStick[],
  leastMm: number,
): NonNullable<StockPlan['length']> {
  const counted = filled.filter(({ type }) => task.sticks[type]?.counted);
  const value = length(counted.reduce((sum, { type }) => sum + (choices[type]?.lengthMm ?? 0), 0));
  const least = length(leastMm);
  return { valueMm: value, boundMm: Math.min(least, value), proven: value <= least };
}

/** Every stick by itself, with exactly the pieces wanted; sticks left empty are not used. */
function exactSticks({ task }: ReadRequest, plan: CuttingPlan): FilledStick[] {
  const sticks = plan.flatMap(({ pattern, count }) =>
    Array.from({ length: count }, (): FilledStick => ({ type: pattern.stick, counts: [...pattern.counts] })),
  );
  task.sizes.forEach(({ demand }, size) => {
    let spare = sticks.reduce((sum, { counts }) => sum + (counts[size] ?? 0), 0) - demand;
    for (let at = sticks.length - 1; at >= 0 && spare > 0; at--) {
      const counts = sticks[at]?.counts ?? [];
      const removed = Math.min(spare, counts[size] ?? 0);
      counts[size] = (counts[size] ?? 0) - removed;
      spare -= removed;
    }
  });
  return sticks.filter(({ counts }) => counts.some((count) => count > 0));
}

function cutSticks(
  { kerfMm, endTrimMm, breathMm }: StockRequest,
  { choices, marks }: ReadRequest,
  filled: readonly FilledStick[],
): CutStick[] {
  const cutMm = length(kerfMm) + length(breathMm.cut);
  const besideMm = 2 * length(endTrimMm) + length(breathMm.stick);
  const left = marks.map((pieces) => pieces.map(({ total }) => total));
  const merged = new Map<string, CutStick>();
  for (const { type, counts } of filled) {
    const cuts = counts.flatMap((count, size) => takeMarks(marks[size] ?? [], left[size] ?? [], count));
    const lengthMm = choices[type]?.lengthMm ?? 0;
    const onHand = (choices[type]?.onHand ?? null) !== null;
    const pieces = cuts.reduce((sum, { n }) => sum + n, 0);
    const used = cuts.reduce((sum, cut) => sum + cut.lengthMm * cut.n, 0) + (pieces - 1) * cutMm;
    const key = JSON.stringify([type, cuts]);
    const before = merged.get(key)?.count ?? 0;
    const offcutMm = length(lengthMm - besideMm - used);
    merged.set(key, { lengthMm, cuts, count: before + 1, onHand, offcutMm });
  }
  return [...merged.values()].sort((a, b) => b.lengthMm - a.lengthMm);
}

/** The next `count` pieces of one length, mark by mark. Lowers `left`. */
function takeMarks(pieces: ReadRequest['marks'][number], left: number[], count: number): CutStick['cuts'] {
  let wanted = count;
  return pieces.flatMap(({ mark, lengthMm }, index) => {
    const n = Math.min(wanted, left[index] ?? 0);
    wanted -= n;
    left[index] = (left[index] ?? 0) - n;
    return n > 0 ? [{ mark, lengthMm: length(lengthMm), n }] : [];
  });
}

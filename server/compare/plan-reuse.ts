/** Which pieces already cut serve in the new version: as many as can be, and of all such plans the one that trims least. */
import { maximum } from '../geometry/numbers.ts';
import { rounded } from '../geometry/tolerance.ts';
import type { StripGroup } from '../lattice/laid-panel.ts';
import type { MarkedKinds, MarkedStrip } from '../shop/marks/marked-kinds.ts';
import { planLength } from '../shop/sections/plan-rounding.ts';
import type { LinearProgram, LinearSolver } from '../shop/stock/linear-solver.ts';
import type { ComparedDesign } from './compared-design.ts';
import { pieceFit, type ReuseFit, stripFit } from './reuse-fit.ts';
import { type MarkCount, reuseNote, type ReusePlan, type ReuseStep } from './reuse-plan.ts';

/** Old pieces of one mark that can become new pieces of another. */
interface Way extends ReuseFit {
  readonly sort: ReuseStep['sort'];
  readonly oldMark: string;
  readonly newMark: string;
}

/** Everything the old version asks for, spares included. */
export const allCut = ({ plan }: ComparedDesign): MarkCount[] =>
  [...plan.pieces, ...plan.strips].map(({ mark, total }) => ({ mark, count: total }));

/**
 * The best use of `cut` pieces of `old` in `now`: a transport problem, whose basic solutions are whole numbers
 * (Hitchcock 1941), given to the solver. Null when the solver gives up. Marks that `old` does not have are of no use.
 */
export async function planReuse(
  old: ComparedDesign,
  now: ComparedDesign,
  cut: readonly MarkCount[],
  solver: LinearSolver,
): Promise<ReusePlan | null> {
  const needs = allCut(now);
  const ways = waysBetween(old.kinds, now.kinds);
  const counts =
    ways.length === 0 ? [] : await solver.withProgram((program) => Promise.resolve(solved(program, ways, cut, needs)));
  if (counts === null) return null;
  const steps = ways.flatMap(({ sort, oldMark, newMark, how, off }, index): ReuseStep[] => {
    const count = counts[index] ?? 0;
    return count > 0 ? [{ sort, oldMark, newMark, count, how, offMm: planLength(off) }] : [];
  });
  const taken = (mark: string, side: 'oldMark' | 'newMark'): number =>
    steps.filter((step) => step[side] === mark).reduce((total, { count }) => total + count, 0);
  const rest = (items: readonly MarkCount[], side: 'oldMark' | 'newMark'): MarkCount[] =>
    items.map(({ mark, count }) => ({ mark, count: count - taken(mark, side) })).filter(({ count }) => count > 0);
  return {
    cut: [...cut],
    steps,
    stillToCut: rest(needs, 'newMark'),
    leftOver: rest(cut, 'oldMark'),
    reused: steps.reduce((total, { count }) => total + count, 0),
    note: reuseNote,
  };
}

function waysBetween(old: MarkedKinds, now: MarkedKinds): Way[] {
  const pieces = old.pieces.flatMap((from) =>
    now.pieces.flatMap((to) => wayBetween('piece', from.mark, to.mark, pieceFit(from.shape, to.shape))),
  );
  const strips = old.strips.flatMap((from) =>
    now.strips.flatMap((to) => {
      const [one, two] = [groupOf(from), groupOf(to)];
      return wayBetween('strip', from.mark, to.mark, one && two ? stripFit(one, two) : null);
    }),
  );
  return [...pieces, ...strips];
}

const groupOf = ({ groups }: MarkedStrip): StripGroup | undefined => groups[0]?.group;

const wayBetween = (sort: Way['sort'], oldMark: string, newMark: string, fit: ReuseFit | null): Way[] =>
  fit ? [{ sort, oldMark, newMark, ...fit }] : [];

/** Pieces to take each way, or null. */
function solved(
  program: LinearProgram,
  ways: readonly Way[],
  cut: readonly MarkCount[],
  needs: readonly MarkCount[],
): number[] | null {
  const rows = new Map<string, number>();
  for (const [side, items] of [
    ['old', cut],
    ['new', needs],
  ] as const) {
    for (const { mark, count } of items) {
      rows.set(`${side} ${mark}`, rows.size);
      program.addRow(-Infinity, count);
    }
  }
  const longest = Math.max(1, maximum(ways.map(({ off }) => off)));
  // one more piece is worth more than all that could be trimmed less by re-arranging the others
  const worth = 2 * (1 + trimCost) * (rows.size + 1);
  for (const { oldMark, newMark, how, off } of ways) {
    const [from, to] = [rows.get(`old ${oldMark}`), rows.get(`new ${newMark}`)];
    const isKnown = from !== undefined && to !== undefined;
    const trouble = how === 'as is' ? 0 : trimCost + off / longest;
    program.addColumn(
      trouble - worth,
      isKnown ? Infinity : 0,
      isKnown
        ? [
            [from, 1],
            [to, 1],
          ]
        : [],
    );
  }
  return program.solve()?.columns.map((count) => rounded(count, 0)) ?? null;
}

/** Setting up to trim a piece at all, against the whole length that may come off. */
const trimCost = 1;

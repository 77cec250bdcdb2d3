import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allCut, planReuse } from '../../server/compare/plan-reuse.ts';
import type { MarkCount, ReusePlan } from '../../server/compare/reuse-plan.ts';
import { loadSolver } from '../../server/machine/load-solver.ts';
import { type TrayWords, trayText, versionOf } from './versions.ts';

const solver = await loadSolver();

async function reuse(old: TrayWords, now: TrayWords, cut?: readonly MarkCount[]): Promise<ReusePlan> {
  const [before, after] = [versionOf(trayText(old)), versionOf(trayText(now))];
  const plan = await planReuse(before, after, cut ?? allCut(before), solver);
  if (!plan) throw new Error('the solver gave up');
  return plan;
}

const countOf = (items: readonly MarkCount[], mark: string): number =>
  items.find((item) => item.mark === mark)?.count ?? 0;

describe('re-use', () => {
  test('of the same version: every piece as it is, nothing to cut, nothing left', async () => {
    const { steps, stillToCut, leftOver } = await reuse({}, {});
    expect(stillToCut).toEqual([]);
    expect(leftOver).toEqual([]);
    expect(
      steps.every(({ how, offMm, oldMark, newMark }) => how === 'as is' && offMm === 0 && oldMark === newMark),
    ).toBe(true);
  });

  test('arms of a wider grid are trimmed at the hub for a narrower one: 2/√3 mm come off', async () => {
    const { steps, stillToCut } = await reuse({}, { side: '38mm' });
    const arms = steps.filter(({ sort }) => sort === 'piece');
    expect(arms).toMatchObject([{ oldMark: 'A', newMark: 'A', how: 'trim' }]);
    expect(arms[0]?.offMm).toBeCloseTo(2 / Math.sqrt(3), 3);
    const [made, needed] = [versionOf(trayText()), versionOf(trayText({ side: '38mm' }))].map(
      ({ plan }) => plan.pieces[0]?.total ?? 0,
    );
    expect(arms[0]?.count).toBe(Math.min(made ?? 0, needed ?? 0));
    expect(countOf(stillToCut, 'A')).toBe(Math.max(0, (needed ?? 0) - (made ?? 0)));
  });

  test('a strip whose notches stand at another pitch is of no use', async () => {
    const { steps } = await reuse({}, { side: '38mm' });
    expect(steps.filter(({ sort }) => sort === 'strip')).toEqual([]);
  });

  test('pieces that are too short are never taken', async () => {
    const { steps, leftOver } = await reuse({ side: '38mm' }, {});
    expect(steps.filter(({ sort }) => sort === 'piece')).toEqual([]);
    expect(countOf(leftOver, 'A')).toBeGreaterThan(0);
  });

  test('only what is cut is there to be used', async () => {
    const { steps, stillToCut, leftOver, reused } = await reuse({}, { side: '38mm' }, [{ mark: 'A', count: 36 }]);
    expect(steps).toMatchObject([{ count: 36 }]);
    expect(reused).toBe(36);
    expect(leftOver).toEqual([]);
    expect(countOf(stillToCut, 'A')).toBeGreaterThan(0);
  });

  test('another wood or section is another piece', async () => {
    const [old, now] = [
      trayText(),
      trayText().replace(
        'strip bass { wood basswood  section face 3mm',
        'strip bass { wood basswood  section face 2.5mm',
      ),
    ];
    const plan = await planReuse(versionOf(old), versionOf(now), allCut(versionOf(old)), solver);
    expect(plan?.steps.filter(({ sort }) => sort === 'piece')).toEqual([]);
  });

  test('of a long and a short kind, the long ones go where only they serve', async () => {
    const two = `grid big { three_way  side 50mm  of ash  fit 0.05mm }
panel wide { grid big  shape round  edge sawn  fill triangle with hemp of bass }
`;
    // old: A1 for side 50 and A2 for side 40; new: both again. Both serve the short kind, only A1 the long one.
    const { steps } = await reuse({ extra: two }, { extra: two });
    expect(steps.filter(({ sort }) => sort === 'piece')).toMatchObject([
      { oldMark: 'A1', newMark: 'A1', how: 'as is' },
      { oldMark: 'A2', newMark: 'A2', how: 'as is' },
    ]);
  });
});

const words = fc.record({
  side: fc.integer({ min: 30, max: 44 }).map((side) => `${side}mm`),
  radius: fc.integer({ min: 40, max: 80 }).map((radius) => `${radius}mm`),
  copies: fc.integer({ min: 1, max: 3 }),
  extra: fc.constantFrom(
    '',
    `grid big { three_way  side 50mm  of ash  fit 0.05mm }
panel wide { grid big  shape 150mm x 120mm  edge framed  fill triangle with hemp of bass }
`,
  ),
});

test('no piece is taken twice or beyond what is cut, none too short, and every new piece is had or still to cut', async () => {
  await fc.assert(
    fc.asyncProperty(words, words, fc.integer({ min: 0, max: 100 }), async (one, two, percent) => {
      const [old, now] = [versionOf(trayText(one)), versionOf(trayText(two))];
      const cut = allCut(old).map(({ mark, count }) => ({ mark, count: Math.floor((count * percent) / 100) }));
      const plan = await planReuse(old, now, cut, solver);
      expect(plan).not.toBeNull();
      const steps = plan?.steps ?? [];
      const lengthOf = (design: typeof old, mark: string): number =>
        [...design.plan.pieces, ...design.plan.strips].find((kind) => kind.mark === mark)?.lengthMm ?? NaN;
      for (const { oldMark, newMark, offMm, count } of steps) {
        expect(Number.isInteger(count)).toBe(true);
        expect(lengthOf(old, oldMark) - lengthOf(now, newMark)).toBeCloseTo(offMm, 2);
        expect(lengthOf(old, oldMark)).toBeGreaterThan(lengthOf(now, newMark) - 0.02);
      }
      const taken = (side: 'oldMark' | 'newMark', mark: string): number =>
        steps.filter((step) => step[side] === mark).reduce((sum, { count }) => sum + count, 0);
      for (const { mark, count } of cut) {
        expect(taken('oldMark', mark)).toBeLessThanOrEqual(count);
        expect(taken('oldMark', mark) + countOf(plan?.leftOver ?? [], mark)).toBe(count);
      }
      for (const { mark, count } of allCut(now)) {
        expect(taken('newMark', mark) + countOf(plan?.stillToCut ?? [], mark)).toBe(count);
      }
    }),
    { numRuns: 12 },
  );
});

/** A plan is searched for in turns with whatever else is to be done, and comes out the same. */
import { expect, test } from 'vitest';
import { analyse } from '../server/analyse.ts';
import { usualEffort } from '../server/machine/search-effort.ts';
import { type Effort, planDesign } from '../server/plan-design.ts';

test('boards are nested with rests between, and lie as they do without', async () => {
  const analysis = analyse(`outline back { start 0, 0  line to 200, 0  line to 0, 200  line to start }
sheet ply { thick 6  size 600 x 450  kerf 2  margin 3  turns 0, 90, 180, 270 }
board coaster { shape back  of ply  copies 9 }`);
  const usual = usualEffort();
  let rests = 0;
  const counting: Effort = {
    ...usual,
    startClock: () => ({ ...usual.startClock(), rest: () => Promise.resolve(void (rests += 1)) }),
  };
  const { plan } = await planDesign(analysis, 'coaster.lap', counting);
  expect(rests).toBeGreaterThan(3);
  expect(plan.sheets.map(({ count }) => count)).toEqual([1]);
  expect(plan).toEqual((await planDesign(analysis, 'coaster.lap', usual)).plan);
});

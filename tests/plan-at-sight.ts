/** Plans without a search, for tests of what needs none: no stick is cut, and boards lie on sheets as they come. */
import type { Words } from '../grammar/words.ts';
import { written } from '../server/words/write-words.ts';
import { buildPlan } from '../server/shop/build-plan.ts';
import type { PlannedDesign } from '../server/shop/planned-design.ts';
import { nestSheets } from '../server/shop/sheets/nest-sheets.ts';
import { lastOf } from '../server/shop/stages.ts';
import type { ShopPlan } from '../server/shop/shop-plan.ts';

export const planAtSight = (planned: PlannedDesign, source: string): ShopPlan =>
  written(saidAtSight(planned, source), planned.design.units);

/** As the stages say it. */
export const saidAtSight = (planned: PlannedDesign, source: string): ShopPlan<Words> =>
  buildPlan(planned, source, { cuttings: [], nested: lastOf(nestSheets(planned.design, 0)) });

/** A design with both, as the doors have it. */
export const plannedAtSight = <Design extends PlannedDesign>(planned: Design, source: string) => ({
  ...planned,
  said: saidAtSight(planned, source),
  plan: planAtSight(planned, source),
});

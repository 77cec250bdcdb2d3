/** Plans of designs built without text, and the cutting plans they need. */
import type { Design, Panel } from '../../server/design/design-model.ts';
import { emptyDesign } from '../../server/design/empty-design.ts';
import { panelQuantity } from '../../server/design/values/panel-quantity.ts';
import { layOutPanel } from '../../server/lattice/lay-out-panel.ts';
import { buildPlan, type PlannedDesign } from '../../server/shop/build-plan.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';
import { nestBlanks, withBlanks } from '../../server/shop/blanks/nest-blanks.ts';
import { notchingBench } from '../../server/shop/sections/plan-settings.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { loadSolver } from '../../server/shop/stock/load-solver.ts';
import { cutEveryStock } from '../../server/shop/stock/cut-every-stock.ts';
import { startWatch } from '../../server/shop/stock/start-watch.ts';
import { cuttingDemands } from '../../server/shop/stock/stock-demands.ts';

/** A design of these panels and whatever else. */
export function plannedOf(panels: readonly Panel[], more: Partial<Design> = {}): PlannedDesign {
  const design: Design = { ...emptyDesign, panels, ...more };
  const { blanks } = nestBlanks(design);
  const alone = panels.flatMap((panel) => layOutPanel(panel, panelQuantity(design, panel)).panel ?? []);
  const laid = withBlanks(alone, blanks);
  const kinds = markKinds([...laid, ...blanks.flatMap((nested) => nested.laid)], design.kits);
  return { revision: '00000000', design, panels: laid, blanks, kinds, incomplete: false };
}

/** With the sticks cut. */
export async function cutPlanOf(panels: readonly Panel[], more: Partial<Design> = {}): Promise<ShopPlan> {
  const planned = plannedOf(panels, more);
  const bench = notchingBench(planned.design.benches);
  const demands = cuttingDemands(planned, bench?.trim ?? 0);
  const watch = () => startWatch({ seconds: 20 });
  return buildPlan(planned, 'built', await cutEveryStock(demands, bench?.kerf ?? null, await loadSolver(), watch));
}

/** Without: no sticks, no milling, no price of wood. */
export const planOf = (panels: readonly Panel[], more: Partial<Design> = {}): ShopPlan =>
  buildPlan(plannedOf(panels, more), 'built');

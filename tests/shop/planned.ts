/** Plans of designs built without text, and the cutting plans they need. */
import type { Panel } from '../../server/design/design-model.ts';
import type { Design } from '../../server/design/design.ts';
import { emptyDesign } from '../../server/design/empty-design.ts';
import { panelQuantity } from '../../server/design/values/panel-quantity.ts';
import { layOutPanel } from '../../server/lattice/lay-out-panel.ts';
import type { PlannedDesign } from '../../server/shop/planned-design.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';
import { nestBlanks, withBlanks } from '../../server/shop/blanks/nest-blanks.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { usualEffort } from '../../server/machine/search-effort.ts';
import { planPacked } from '../../server/plan-design.ts';
import { planAtSight } from '../plan-at-sight.ts';

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
export const cutPlanOf = async (panels: readonly Panel[], more: Partial<Design> = {}): Promise<ShopPlan> =>
  (await planPacked(plannedOf(panels, more), 'built', usualEffort())).plan;

/** Without: no sticks, no milling, no price of wood. */
export const planOf = (panels: readonly Panel[], more: Partial<Design> = {}): ShopPlan =>
  planAtSight(plannedOf(panels, more), 'built');

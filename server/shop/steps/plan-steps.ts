/** The steps of the job that a design needs, in order: gate, caution, tasks and settings of each. */
import type { Words } from '../../../grammar/words.ts';
import type { StepName } from '../../design/names/step-names.ts';
import type { Kit } from '../../design/work-model.ts';
import type { PlannedDesign } from '../planned-design.ts';
import { notchingBench } from '../sections/plan-settings.ts';
import type { PlanStep } from '../sections/work-sections.ts';
import type { ShopPlan } from '../shop-plan.ts';
import type { JobStep } from './job-step.ts';
import { jobSteps, stepOfStock } from './job-steps.ts';
import type { TaskFigures } from './task-words.ts';

/** The steps without their times; settings name the step they belong to. */
export function planSteps(planned: PlannedDesign, plan: TaskFigures): PlanStep<Words>[] {
  const { design } = planned;
  const withSettings = new Set(plan.settings.map(({ step }) => step));
  const needed = jobSteps.filter(({ title, isNeeded }) => withSettings.has(title) || isNeeded?.(planned));
  const bench = notchingBench(design.benches);
  return bagsInPlace(needed, design.kits).map(({ title, sheet, gate, caution, tasks }, index) => {
    const sticks = plan.stock.filter(({ stock }) => stepOfStock(stock, plan) === title);
    return {
      order: index + 1,
      title,
      sheet,
      tasks: tasks({ planned, plan, bench, sticks }),
      settings: plan.settings.filter(({ step }) => step === title).map(({ order }) => order),
      handsOnMin: null,
      waitH: null,
      gate,
      caution,
    };
  });
}

/** The cautions of the steps that a plan has, in their order. */
export const cautionsOf = (steps: readonly PlanStep<Words>[]): ShopPlan<Words>['cautions'] =>
  steps.flatMap(({ title, caution }) => (caution === null ? [] : [{ step: title, text: caution }]));

/** Bags are packed as soon as the shop's part is done; what follows is the class's own work. */
function bagsInPlace(steps: readonly JobStep[], [kit]: readonly Kit[]): readonly JobStep[] {
  const bags = steps.find(({ title }) => title === 'fill the bags');
  if (!kit || !bags) return steps;
  const lastInShop: readonly StepName[] = kit.done.includes('bevelled')
    ? ['cut keys', 'cut infill', 'cut to length']
    : ['cut to length', 'notch strips', 'mill strips'];
  const others = steps.filter((step) => step !== bags);
  const at = others.findIndex(
    ({ title }) => title === lastInShop.find((name) => others.some((step) => step.title === name)),
  );
  return at < 0
    ? steps
    : [...others.slice(0, at + 1), { ...bags, sheet: others[at]?.sheet ?? bags.sheet }, ...others.slice(at + 1)];
}

/** How many of a unit one step of the job has, in the whole edition: its own pieces, strips, mixes and metres only. */
import type { StepName } from '../../design/names/step-names.ts';
import type { LabourRate } from '../../design/work-model.ts';
import { sum } from '../../geometry/numbers.ts';
import type { MarkedKinds } from '../marks/marked-kinds.ts';
import { jobStep, stepOfStock } from '../steps/job-steps.ts';
import { type CountedPlan, sticksRun } from './counted-parts.ts';

const millimetresPerMetre = 1000;

/** Spares are counted where they are made: not where a lattice is put together or filled. */
export function unitsOf(per: LabourRate['per'], step: StepName, plan: CountedPlan, kinds: MarkedKinds): number {
  const settings = plan.settings.filter((setting) => setting.step === step);
  const { counts } = jobStep(step);
  switch (per) {
    case 'work':
      return 1;
    case 'copy':
      return plan.copies;
    case 'setting':
      return settings.length;
    case 'pass':
      return sum(settings.map(({ notching, pieces, flip }) => notching?.passes ?? pieces * (flip ? 2 : 1)));
    case 'metre':
      return (counts.metre?.(plan, kinds) ?? sticksRun(cutIn(step, plan))) / millimetresPerMetre;
    case 'piece':
    case 'strip':
    case 'cell':
    case 'mix':
      return counts[per]?.(plan, kinds) ?? 0;
  }
}

/** The sticks that are cut in the step. */
const cutIn = (step: StepName, plan: CountedPlan): Pick<CountedPlan, 'stock'> => ({
  stock: plan.stock.filter(({ stock }) => stepOfStock(stock, plan) === step),
});

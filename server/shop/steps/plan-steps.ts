/** The steps of the job that a design needs, in order: gate, caution and settings of each. */
import type { Kit } from '../../design/work-model.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import type { PlannedDesign } from '../planned-design.ts';
import { jobSteps, type JobStep } from './job-steps.ts';
import type { ShopPlan } from '../shop-plan.ts';
import { tasksOf } from './step-tasks.ts';
import type { TaskFigures } from './task-words.ts';
import type { PlanStep, SheetName } from '../sections/work-sections.ts';

/** The steps without their times; settings and cautions name the step they belong to. */
export function planSteps(planned: PlannedDesign, figures: TaskFigures & Pick<ShopPlan, 'cautions'>): PlanStep[] {
  const { settings, cautions } = figures;
  const withSettings = new Set(settings.map(({ step }) => step));
  const needed = jobSteps.filter(({ title }) => withSettings.has(title) || isNeeded(title, planned));
  return bagsInPlace(needed, planned.design.kits).map(({ title, sheet, gate }, index) => {
    const texts = cautions.filter(({ step }) => step === title).map(({ text }) => text);
    return {
      order: index + 1,
      title,
      sheet,
      tasks: tasksOf(title, planned, figures),
      settings: settings.filter(({ step }) => step === title).map(({ order }) => order),
      handsOnMin: null,
      waitH: null,
      gate,
      caution: texts.length > 0 ? texts.join(' ') : null,
    };
  });
}

type JobStepFacts = (typeof jobSteps)[number] | { title: JobStep; sheet: SheetName; gate: string | null };

/** Bags are packed as soon as the shop's part is done; what follows is the class's own work. */
function bagsInPlace(steps: readonly JobStepFacts[], [kit]: readonly Kit[]): readonly JobStepFacts[] {
  const bags = steps.find(({ title }) => title === 'fill the bags');
  if (!kit || !bags) return steps;
  const lastInShop: readonly JobStep[] = kit.done.includes('bevelled')
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

/** Whether a step without settings of its own is part of the job. */
function isNeeded(step: JobStep, { design, panels }: PlannedDesign): boolean {
  const { work } = design;
  switch (step) {
    case 'flush':
      return panels.some(({ strips }) => strips.some(({ stock }) => stock.flush > 0));
    case 'frame':
      return panels.some(({ panel, strips }) => panel.edge === 'framed' && strips.length > 0);
    case 'fill the lattice':
      return panels.some(({ pieces }) => pieces.length > 0);
    case 'pour':
    case 'flatten':
      return pouredIntoBlanks(design);
    case 'register templates':
      return panels.some((laid) => isSawn(laid) && laid.panel.shape.kind === 'outline');
    case 'saw outlines':
      return panels.some(isSawn);
    case 'bend bands':
      return design.bands.length > 0;
    case 'cast bodies':
      return design.pours.some(({ mould }) => mould.kind !== 'blank');
    case 'cut boards':
      return design.boards.length > 0;
    case 'fit shapes':
      return (work?.placements.length ?? 0) > 1;
    case 'finish':
      return work?.finish != null && work.finish !== 'none';
    case 'mount':
      return work?.hanging != null;
    case 'fill the bags':
      return design.kits.length > 0;
    case 'pack':
      return work !== null;
    case 'mill strips':
    case 'notch strips':
    case 'cut to length':
    case 'assemble':
    case 'measure':
    case 'cut infill':
    case 'cut keys':
      return false;
  }
}

/** Casts of lattice blanks, by the blank's own word or by a pour of theirs. */
const pouredIntoBlanks = ({ blanks, pours }: PlannedDesign['design']): boolean =>
  blanks.some(({ cast }) => cast !== null) || pours.some(({ mould }) => mould.kind === 'blank');

const isSawn = ({ panel, strips }: LaidPanel): boolean => panel.edge === 'sawn' && strips.length > 0;

/** The steps that put the parts of a work together and let it go. Source of order and gates: common practice of the trade. */
import type { StepName } from '../../design/names/step-names.ts';
import type { Work } from '../../design/work-model.ts';
import { partsPlaced, stripsCut, totalOf } from '../sections/counted-parts.ts';
import { bagTasks, finishTasks, fitTasks, mountTasks, packTasks } from '../work/work-tasks.ts';
import type { StepFacts } from './job-step.ts';

export const workSteps = {
  'fit shapes': {
    sheet: 'after measuring',
    gate: 'dry layout: every joint closes',
    caution: 'Scribing is done with a sharp edge: clamp the part, and keep both hands behind the edge.',
    isNeeded: ({ design: { work } }) => (work?.placements.length ?? 0) > 1,
    tasks: ({ plan }) => fitTasks(plan.work),
    counts: { piece: partsPlaced },
  },
  finish: {
    sheet: 'after measuring',
    gate: 'dry to the touch, joints free of finish',
    caution:
      'Fresh air, gloves, no flame; rags soaked in oil can set themselves alight. The data sheet goes before this plan.',
    isNeeded: ({ design: { work } }) => finishOf(work) !== null,
    tasks: ({ plan }) => finishTasks(plan.finish),
    wait: ({ work }) => {
      const finish = finishOf(work);
      return finish ? (finish.recoat ?? 0) * finish.coats : 0;
    },
    counts: { piece: partsPlaced },
  },
  mount: {
    sheet: 'after measuring',
    gate: 'dry layout right, mock hang holds',
    caution:
      'A work that falls can hurt: the fixing’s data sheet, the wall and local codes decide, and for heavy work a licensed fitter.',
    isNeeded: ({ design: { work } }) => work?.hanging != null,
    tasks: ({ plan }) => mountTasks(plan.hanging),
    counts: { piece: partsPlaced },
  },
  'fill the bags': {
    sheet: 'after measuring',
    gate: 'every bag counted against its label',
    caution: null,
    isNeeded: ({ design }) => design.kits.length > 0,
    tasks: ({ plan }) => bagTasks(plan.kit),
    counts: { piece: ({ pieces }) => totalOf(pieces), strip: stripsCut },
  },
  pack: {
    sheet: 'after measuring',
    gate: null,
    caution: null,
    isNeeded: ({ design: { work } }) => work !== null,
    tasks: ({ plan }) => packTasks(plan),
    counts: { piece: ({ pieces }) => totalOf(pieces), strip: stripsCut },
  },
} as const satisfies Partial<Record<StepName, StepFacts>>;

/** What the work is finished with, null for nothing. */
const finishOf = (work: Work | null) => (work?.finish && work.finish !== 'none' ? work.finish : null);

/** The steps that make parts out of lattices, and beside them. Source of order and gates: common practice of the trade. */
import type { Design } from '../../design/design.ts';
import type { StepName } from '../../design/names/step-names.ts';
import { maximum } from '../../geometry/numbers.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { bandTasks } from '../bands/band-tasks.ts';
import { boardTasks, sheetTask } from '../boards/board-tasks.ts';
import { sawTasks } from '../lines/saw-tasks.ts';
import { flattenTasks, mouldTasks, pourTasks } from '../pours/pour-tasks.ts';
import {
  bandRun,
  boardRun,
  boardsCut,
  bodiesCast,
  bodyMixes,
  laminationsBent,
  latticeMixes,
  latticesPoured,
  panelsSawn,
  sawnRun,
} from '../sections/counted-parts.ts';
import type { StepFacts } from './job-step.ts';
import { stickTasks } from './lattice-tasks.ts';

const resinCaution =
  'Resin sensitises skin and heats in deep pours: gloves, fresh air, and no layer deeper than the data sheet allows.';

export const partSteps = {
  pour: {
    sheet: 'after measuring',
    gate: 'each layer goes on inside the recoat window of the one below',
    caution: resinCaution,
    isNeeded: ({ design }) => arePoured(design),
    tasks: ({ planned, plan }) => [
      ...mouldTasks(planned.design.blanks),
      ...plan.pours.filter(({ kind }) => kind === 'blank').flatMap((pour) => pourTasks(pour)),
    ],
    wait: ({ blanks }) => maximum([0, ...blanks.map(({ cast }) => cast?.resin.cure ?? 0)]),
    counts: { piece: latticesPoured, mix: latticeMixes },
  },
  flatten: {
    sheet: 'after measuring',
    gate: 'the finished depth is met all over',
    caution:
      'Dust of resin sensitises too, and what is not cured through most of all: wait for its cure, extract the dust, wear a mask and gloves.',
    isNeeded: ({ design }) => arePoured(design),
    tasks: ({ plan }) => flattenTasks(plan.pours),
    counts: { piece: latticesPoured },
  },
  'register templates': {
    sheet: 'after measuring',
    gate: 'three marked nodes lie under their numbers',
    caution: null,
    isNeeded: ({ panels }) => panels.some((laid) => isSawn(laid) && laid.panel.shape.kind === 'outline'),
    tasks: () => ['Lay each template on the real lattice by its three numbered nodes.'],
    counts: { piece: panelsSawn },
  },
  'saw outlines': {
    sheet: 'after measuring',
    gate: 'sanded to the line all round',
    caution:
      'Round work can catch and kick back, and off-cuts can jam beside the blade: hold the panel down, stop the saw before clearing.',
    isNeeded: ({ panels }) => panels.some(isSawn),
    tasks: ({ planned }) => sawTasks(planned),
    counts: { piece: panelsSawn, metre: sawnRun },
  },
  'bend bands': {
    sheet: 'after measuring',
    gate: 'the band is flush, hollows first',
    caution: 'Hot pipes and steam burn: gloves and eye protection. Strips can snap; stand aside of the bend.',
    isNeeded: ({ design }) => design.bands.length > 0,
    tasks: ({ plan, sticks }) => [...stickTasks(sticks), ...plan.bands.flatMap((band) => bandTasks(band))],
    cuts: (name, { bands }) => bands.some(({ stock }) => stock === name),
    counts: { piece: laminationsBent, strip: laminationsBent, metre: bandRun },
  },
  'cast bodies': {
    sheet: 'after measuring',
    gate: 'hard to the nail, and at the finished depth',
    caution: resinCaution,
    isNeeded: ({ design }) => design.pours.some(({ mould }) => mould.kind !== 'blank'),
    tasks: ({ plan }) => plan.pours.filter(({ kind }) => kind === 'body').flatMap((pour) => pourTasks(pour)),
    wait: bodiesWait,
    counts: { piece: bodiesCast, mix: bodyMixes },
  },
  'cut boards': {
    sheet: 'after measuring',
    gate: 'edges true to the template',
    caution:
      'A sheet tips and binds as it parts: support both sides of the cut, stand out of the line of the blade, and extract the dust of glued board.',
    isNeeded: ({ design }) => design.boards.length > 0,
    tasks: ({ plan }) => [
      ...plan.sheets.map((sheet) => sheetTask(sheet)),
      ...plan.boards.flatMap((board) => boardTasks(board, plan.sheets)),
    ],
    counts: { piece: boardsCut, metre: boardRun },
  },
} as const satisfies Partial<Record<StepName, StepFacts>>;

/** Lattices are poured where a blank says it itself, or a pour of theirs does. */
const arePoured = ({ blanks, pours }: Design): boolean =>
  blanks.some(({ cast }) => cast !== null) || pours.some(({ mould }) => mould.kind === 'blank');

/** Until the last layer of the slowest body is hard, min. */
function bodiesWait({ pours }: Design): number {
  const bodies = pours.filter(({ mould }) => mould.kind !== 'blank');
  return maximum([
    0,
    ...bodies.map(({ resin, layers }) => (resin.recoat?.earliest ?? 0) * (layers.length - 1) + (resin.cure ?? 0)),
  ]);
}

const isSawn = ({ panel, strips }: LaidPanel): boolean => panel.edge === 'sawn' && strips.length > 0;

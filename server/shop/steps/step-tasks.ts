/** What is done in each step, a line a task, with the figures that the bench asks for next. */
import { counted } from '../../../grammar/words.ts';
import { sum } from '../../geometry/numbers.ts';
import type { PlannedDesign } from '../planned-design.ts';
import { bandTasks } from '../bands/band-tasks.ts';
import { boardTasks, sheetTask } from '../boards/board-tasks.ts';
import { frameTasks } from './frame-tasks.ts';
import type { JobStep } from './job-steps.ts';
import { motifsOfPanels, fittingText } from './fitting-order.ts';
import { sawTasks } from '../lines/saw-tasks.ts';
import { notchingBench } from '../sections/plan-settings.ts';
import {
  assembleTasks,
  infillTasks,
  lengthTasks,
  measureTasks,
  millTasks,
  notchTasks,
  stickTasks,
} from './lattice-tasks.ts';
import { pourTasks } from '../pours/pour-tasks.ts';
import { fitTasks, packTasks } from '../work/work-tasks.ts';
import { type LengthWords, lengthWords, type TaskFigures } from './task-words.ts';

/** The tasks of one step of this design; a step that only has settings may have none. */
export function tasksOf(step: JobStep, planned: PlannedDesign, plan: TaskFigures): string[] {
  const bench = notchingBench(planned.design.benches);
  const words = lengthWords(planned.design.units);
  const poured = (kind: 'blank' | 'body'): string[] =>
    plan.pours.filter((pour) => pour.kind === kind).flatMap((pour) => pourTasks(pour, words));
  switch (step) {
    case 'mill strips':
      return millTasks(plan, words);
    case 'notch strips':
      return notchTasks(plan, bench, words);
    case 'cut to length':
      return lengthTasks(plan, words);
    case 'assemble':
      return assembleTasks(planned);
    case 'flush':
      return plan.mill
        .filter(({ depthMm, finishedDepthMm }) => finishedDepthMm < depthMm)
        .map(
          ({ stock, depthMm, finishedDepthMm }) =>
            `${stock}: take ${words.fine((depthMm - finishedDepthMm) / 2)} off each face, ${words.length(depthMm)} becomes ${words.length(finishedDepthMm)}.`,
        );
    case 'measure':
      return measureTasks(plan, planned, words);
    case 'frame':
      return frameTasks(planned.panels, plan, words);
    case 'cut infill':
      return infillTasks(plan, bench, words);
    case 'cut keys':
      return ['Keys are cut longer, as the caliper says, and shaved one by one until they need a tap.'];
    case 'fill the lattice':
      return motifsOfPanels(planned.panels).map(fittingText);
    case 'pour':
      return [...mouldTasks(planned, words), ...poured('blank')];
    case 'flatten':
      return plan.pours
        .filter(({ kind, pouredMm, finishedMm }) => kind === 'blank' && pouredMm > finishedMm)
        .map(
          ({ name, pouredMm, finishedMm }) =>
            `${name}: flatten both faces, ${words.length(pouredMm)} becomes ${words.length(finishedMm)}.`,
        );
    case 'register templates':
      return ['Lay each template on the real lattice by its three numbered nodes.'];
    case 'saw outlines':
      return sawTasks(planned, words);
    case 'bend bands':
      return [...stickTasks('bend bands', plan, words), ...plan.bands.flatMap((band) => bandTasks(band, words))];
    case 'cast bodies':
      return poured('body');
    case 'cut boards':
      return [
        ...plan.sheets.map((sheet) => sheetTask(sheet, words)),
        ...plan.boards.flatMap((board) => boardTasks(board, plan.sheets, words)),
      ];
    case 'fit shapes':
      return fitTasks(plan.work, words);
    case 'finish':
      return plan.finish
        ? [...plan.finish.order, `About ${plan.finish.volumeMl} mL for ${(plan.finish.areaMm2 / 1e6).toFixed(2)} m².`]
        : [];
    case 'mount':
      return plan.hanging ? mountTasks(plan.hanging, words) : [];
    case 'fill the bags':
      return plan.kit ? bagTasks(plan.kit) : [];
    case 'pack':
      return packTasks(plan, words);
  }
}

/** The lattice is made of whole steps, and stands over the edge of its mould all round. */
const mouldTasks = ({ design }: PlannedDesign, words: LengthWords): string[] =>
  design.blanks
    .filter(({ cast }) => cast !== null)
    .map(
      ({ name, width, height }) =>
        `${name}: trim each lattice to ${words.length(width)} × ${words.length(height)}, equal on all sides, to lie in its mould of that size.`,
    );

function mountTasks(
  { loadG, carriesG, verdict, cleat, spacer, drill, fixings }: NonNullable<TaskFigures['hanging']>,
  words: LengthWords,
): string[] {
  const heightText = (height: number): string => `${words.length(Math.abs(height))} ${height < 0 ? 'below' : 'above'}`;
  const load = loadG === null ? 'mass not known' : `${(loadG / 1000).toFixed(2)} kg`;
  return [
    `${counted(fixings, 'fixing')} carry ${(carriesG / 1000).toFixed(1)} kg with their safety; the work: ${load}; ${verdict}.`,
    ...(cleat
      ? [
          `Cleat ${words.length(cleat.lengthMm)} long, upper edge ${heightText(cleat.heightMm)} the work’s origin, from ${words.length(cleat.fromMm)} to ${words.length(cleat.toMm)} seen from the front.`,
          `Seen from behind, drill at ${drill.map(({ xMm }) => words.length(xMm)).join(', ')} from the cleat’s left end.`,
        ]
      : []),
    ...(spacer
      ? [
          `Spacer as thick as the cleat, upper edge ${heightText(spacer.heightMm)} the origin, up to ${words.length(spacer.lengthMm)} long.`,
        ]
      : []),
  ];
}

function bagTasks({ students, bag, teacherBox, spares, jigs }: NonNullable<TaskFigures['kit']>): string[] {
  const perBag = sum(spares.map((each) => each.perBag));
  const pooled = sum(spares.map((each) => each.pooled));
  const angles = [...new Set(jigs.jigs.map(({ angle }) => angle))].sort((a, b) => a - b);
  return [
    `${counted(students, 'bag')}, each with ${bag.map(({ label }) => label).join('; ')}.`,
    ...(teacherBox.length > 0
      ? [`Teacher’s box: ${teacherBox.map(({ mark, n }) => `${n} of ${mark}`).join(', ')}.`]
      : []),
    `With spares in every bag the class would need ${perBag} pieces, with one box for all ${pooled}.`,
    ...(angles.length > 0
      ? [
          `${counted(jigs.sets, 'set')} of jigs (${angles.map((angle) => `${angle}°`).join(', ')}), ${jigs.studentsPerSet} students to a set: while one cuts, the others fit.`,
        ]
      : []),
  ];
}

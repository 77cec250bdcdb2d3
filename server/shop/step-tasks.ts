/** What is done in each step, a line a task, with the figures that the bench asks for next. */
import { sum } from '../geometry/numbers.ts';
import type { PlannedDesign } from './build-plan.ts';
import { bandTasks } from './bands/band-tasks.ts';
import { boardTasks, sheetTask } from './boards/board-tasks.ts';
import { frameTasks } from './frame-tasks.ts';
import type { JobStep } from './job-steps.ts';
import { motifsOfPanels, fittingText } from './fitting-order.ts';
import { sawTasks } from './lines/saw-tasks.ts';
import { notchingBench } from './plan-settings.ts';
import {
  assembleTasks,
  infillTasks,
  lengthTasks,
  measureTasks,
  millTasks,
  notchTasks,
  stickTasks,
} from './lattice-tasks.ts';
import { pourTasks } from './pours/pour-tasks.ts';
import { fitTasks, packTasks } from './work/work-tasks.ts';
import { counted, type TaskFigures } from './task-words.ts';
import { millimetres } from './text/figures-text.ts';

/** The tasks of one step of this design; a step that only has settings may have none. */
export function tasksOf(step: JobStep, planned: PlannedDesign, plan: TaskFigures): string[] {
  const bench = notchingBench(planned.design.benches);
  switch (step) {
    case 'mill strips':
      return millTasks(plan);
    case 'notch strips':
      return notchTasks(plan, bench);
    case 'cut to length':
      return lengthTasks(plan);
    case 'assemble':
      return assembleTasks(planned);
    case 'flush':
      return plan.mill
        .filter(({ depthMm, finishedDepthMm }) => finishedDepthMm < depthMm)
        .map(
          ({ stock, depthMm, finishedDepthMm }) =>
            `${stock}: take ${((depthMm - finishedDepthMm) / 2).toFixed(2)} mm off each face, ${millimetres(depthMm)} becomes ${millimetres(finishedDepthMm)}.`,
        );
    case 'measure':
      return measureTasks(plan, planned);
    case 'frame':
      return frameTasks(planned.panels, plan);
    case 'cut infill':
      return infillTasks(plan, bench);
    case 'cut keys':
      return ['Keys are cut longer, as the caliper says, and shaved one by one until they need a tap.'];
    case 'fill the lattice':
      return motifsOfPanels(planned.panels).map(fittingText);
    case 'pour':
      return [...mouldTasks(planned), ...plan.pours.filter(({ kind }) => kind === 'blank').flatMap(pourTasks)];
    case 'flatten':
      return plan.pours
        .filter(({ kind }) => kind === 'blank')
        .map(
          ({ name, pouredMm, finishedMm }) =>
            `${name}: flatten both faces, ${millimetres(pouredMm)} becomes ${millimetres(finishedMm)}.`,
        );
    case 'register templates':
      return ['Lay each template on the real lattice by its three numbered nodes.'];
    case 'saw outlines':
      return sawTasks(planned);
    case 'bend bands':
      return [...stickTasks('bend bands', plan), ...plan.bands.flatMap(bandTasks)];
    case 'cast bodies':
      return plan.pours.filter(({ kind }) => kind === 'body').flatMap(pourTasks);
    case 'cut boards':
      return [...plan.sheets.map(sheetTask), ...plan.boards.flatMap((board) => boardTasks(board, plan.sheets))];
    case 'fit shapes':
      return fitTasks(plan.work);
    case 'finish':
      return plan.finish
        ? [...plan.finish.order, `About ${plan.finish.volumeMl} mL for ${(plan.finish.areaMm2 / 1e6).toFixed(2)} m².`]
        : [];
    case 'mount':
      return plan.hanging ? mountTasks(plan.hanging) : [];
    case 'fill the bags':
      return plan.kit ? bagTasks(plan.kit) : [];
    case 'pack':
      return packTasks(plan);
  }
}

/** The lattice is made of whole steps, and stands over the edge of its mould all round. */
const mouldTasks = ({ design }: PlannedDesign): string[] =>
  design.blanks
    .filter(({ cast }) => cast !== null)
    .map(
      ({ name, width, height }) =>
        `${name}: trim each lattice to ${millimetres(width)} × ${millimetres(height)}, equal on all sides, to lie in its mould of that size.`,
    );

function mountTasks({
  loadG,
  carriesG,
  verdict,
  cleat,
  spacer,
  drill,
  fixings,
}: NonNullable<TaskFigures['hanging']>): string[] {
  const load = loadG === null ? 'mass not known' : `${(loadG / 1000).toFixed(2)} kg`;
  return [
    `${counted(fixings, 'fixing')} carry ${(carriesG / 1000).toFixed(1)} kg with their safety; the work: ${load}; ${verdict}.`,
    ...(cleat
      ? [
          `Cleat ${millimetres(cleat.lengthMm)} long, upper edge ${heightText(cleat.heightMm)} the work’s origin, from ${millimetres(cleat.fromMm)} to ${millimetres(cleat.toMm)} seen from the front.`,
          `Seen from behind, drill at ${drill.map(({ xMm }) => millimetres(xMm)).join(', ')} from the cleat’s left end.`,
        ]
      : []),
    ...(spacer
      ? [
          `Spacer as thick as the cleat, upper edge ${heightText(spacer.heightMm)} the origin, up to ${millimetres(spacer.lengthMm)} long.`,
        ]
      : []),
  ];
}

const heightText = (height: number): string => `${millimetres(Math.abs(height))} ${height < 0 ? 'below' : 'above'}`;

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

/** What is done to fit the parts of the work to each other, to finish, hang and bag them, and to pack it. Lengths mm. */
import { type Words, counted, figure, joined, measure, words } from '../../../grammar/words.ts';
import { minimum, sum } from '../../geometry/numbers.ts';
import type { PlanWork } from '../sections/object-sections.ts';
import { type TaskFigures } from '../steps/task-words.ts';

/** Each joint as it is drawn: how it must be scribed. */
export function fitTasks(work: PlanWork | null): Words[] {
  const joints = (work?.joints ?? []).map(({ parts, at, overlapMm, gapMm, contactMm }) => {
    const place = words`${parts.join(' to ')}, about ${figure.length([at.xMm, at.yMm], ', ')}`;
    if (overlapMm > 0)
      return words`${place}: as drawn they overlap by ${figure.length(overlapMm)}; scribe one against the other.`;
    return gapMm > 0 && contactMm === 0
      ? words`${place}: as drawn ${figure.length(gapMm)} stay open.`
      : words`${place}: ${figure.length(contactMm)} of edge to glue.`;
  });
  return [
    'Lay the parts out dry; scribe one against the other with extra left, and take it off in small bites.',
    ...joints,
  ];
}

export const finishTasks = (finish: TaskFigures['finish']): Words[] =>
  finish ? [...finish.order, words`About ${finish.volumeMl} mL for ${measure.surface(finish.areaMm2)}.`] : [];

export function mountTasks(hanging: TaskFigures['hanging']): Words[] {
  if (!hanging) return [];
  const { loadG, carriesG, verdict, cleat, spacer, drill, fixings } = hanging;
  const heightText = (height: number): Words =>
    words`${figure.length(Math.abs(height))} ${height < 0 ? 'below' : 'above'}`;
  const load = loadG === null ? 'mass not known' : measure.mass(loadG);
  return [
    words`${counted(fixings, 'fixing')} carry ${measure.mass(carriesG)} with their safety; the work: ${load}; ${verdict}.`,
    ...(cleat
      ? [
          words`Cleat ${figure.length(cleat.lengthMm)} long, upper edge ${heightText(cleat.heightMm)} the work’s origin, from ${figure.length(cleat.fromMm)} to ${figure.length(cleat.toMm)} seen from the front.`,
          words`Seen from behind, drill at ${figure.length(
            drill.map(({ xMm }) => xMm),
            ', ',
          )} from the cleat’s left end.`,
        ]
      : []),
    ...(spacer
      ? [
          words`Spacer as thick as the cleat, upper edge ${heightText(spacer.heightMm)} the origin, up to ${figure.length(spacer.lengthMm)} long.`,
        ]
      : []),
  ];
}

export function bagTasks(kit: TaskFigures['kit']): Words[] {
  if (!kit) return [];
  const { students, bag, teacherBox, spares, jigs } = kit;
  const perBag = sum(spares.map((each) => each.perBag));
  const pooled = sum(spares.map((each) => each.pooled));
  const sure = spares.flatMap(({ stated }) => stated?.surePct ?? []);
  const angles = [...new Set(jigs.jigs.map(({ angle }) => angle))].sort((a, b) => a - b);
  return [
    words`${counted(students, 'bag')}, each with ${joined(
      bag.map(({ label }) => label),
      '; ',
    )}.`,
    ...(teacherBox.length > 0
      ? [`Teacher’s box: ${teacherBox.map(({ mark, n }) => `${n} of ${mark}`).join(', ')}.`]
      : []),
    ...(sure.length > 0 ? [`With these spares nobody is short of a mark with at least ${minimum(sure)} %.`] : []),
    `With spares in the bags alone the class would need ${perBag} pieces, with one box for all ${pooled}.`,
    ...(angles.length > 0
      ? [
          `${counted(jigs.sets, 'set')} of jigs (${angles.map((angle) => `${angle}°`).join(', ')}), ${jigs.studentsPerSet} students to a set: while one cuts, the others fit.`,
        ]
      : []),
  ];
}

export function packTasks({ copies, work }: TaskFigures): Words[] {
  const box = work ? [words`Box, inside: ${figure.size(work.boxMm)}, padded on every side.`] : [];
  return [
    `Pack ${counted(copies, 'copy', 'copies')}, a dated card with the source and revision of this plan in each.`,
    ...box,
  ];
}

/** What is done to fit the parts of the work to each other, to finish, hang and bag them, and to pack it. Lengths mm. */
import { counted } from '../../../grammar/words.ts';
import { sum } from '../../geometry/numbers.ts';
import type { PlanWork } from '../sections/object-sections.ts';
import { type LengthWords, type TaskFigures } from '../steps/task-words.ts';

/** Each joint as it is drawn: how it must be scribed. */
export function fitTasks(work: PlanWork | null, words: LengthWords): string[] {
  const joints = (work?.joints ?? []).map(({ parts, at, overlapMm, gapMm, contactMm }) => {
    const place = `${parts.join(' to ')}, about ${words.length(at.xMm)}, ${words.length(at.yMm)}`;
    if (overlapMm > 0)
      return `${place}: as drawn they overlap by ${words.length(overlapMm)}; scribe one against the other.`;
    return gapMm > 0 && contactMm === 0
      ? `${place}: as drawn ${words.length(gapMm)} stay open.`
      : `${place}: ${words.length(contactMm)} of edge to glue.`;
  });
  return [
    'Lay the parts out dry; scribe one against the other with extra left, and take it off in small bites.',
    ...joints,
  ];
}

export const finishTasks = (finish: TaskFigures['finish']): string[] =>
  finish ? [...finish.order, `About ${finish.volumeMl} mL for ${(finish.areaMm2 / 1e6).toFixed(2)} m².`] : [];

export function mountTasks(hanging: TaskFigures['hanging'], words: LengthWords): string[] {
  if (!hanging) return [];
  const { loadG, carriesG, verdict, cleat, spacer, drill, fixings } = hanging;
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

export function bagTasks(kit: TaskFigures['kit']): string[] {
  if (!kit) return [];
  const { students, bag, teacherBox, spares, jigs } = kit;
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

export function packTasks({ copies, work }: TaskFigures, words: LengthWords): string[] {
  const box = work ? [`Box, inside: ${work.boxMm.map(words.length).join(' × ')}, padded on every side.`] : [];
  return [
    `Pack ${counted(copies, 'copy', 'copies')}, a dated card with the source and revision of this plan in each.`,
    ...box,
  ];
}

/** What is done to fit the parts of the work to each other, and to pack it. Lengths mm. */
import type { PlanWork } from '../object-sections.ts';
import { counted, type TaskFigures } from '../task-words.ts';
import { millimetres } from '../text/figures-text.ts';

/** Each joint as it is drawn: how it must be scribed. */
export function fitTasks(work: PlanWork | null): string[] {
  const joints = (work?.joints ?? []).map(({ parts, at, overlapMm, gapMm, contactMm }) => {
    const place = `${parts.join(' to ')}, about ${millimetres(at.xMm)}, ${millimetres(at.yMm)}`;
    if (overlapMm > 0)
      return `${place}: as drawn they overlap by ${millimetres(overlapMm)}; scribe one against the other.`;
    return gapMm > 0 && contactMm === 0
      ? `${place}: as drawn ${millimetres(gapMm)} stay open.`
      : `${place}: ${millimetres(contactMm)} of edge to glue.`;
  });
  return [
    'Lay the parts out dry; scribe one against the other with extra left, and take it off in small bites.',
    ...joints,
  ];
}

export function packTasks({ copies, work }: TaskFigures): string[] {
  const box = work ? [`Box, inside: ${work.boxMm.map(millimetres).join(' × ')}, padded on every side.`] : [];
  return [
    `Pack ${counted(copies, 'copy', 'copies')}, a dated card with the source and revision of this plan in each.`,
    ...box,
  ];
}

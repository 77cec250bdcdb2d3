/** What is done to fit the parts of the work to each other, and to pack it. Lengths mm. */
import { counted } from '../../../grammar/words.ts';
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

export function packTasks({ copies, work }: TaskFigures, words: LengthWords): string[] {
  const box = work ? [`Box, inside: ${work.boxMm.map(words.length).join(' × ')}, padded on every side.`] : [];
  return [
    `Pack ${counted(copies, 'copy', 'copies')}, a dated card with the source and revision of this plan in each.`,
    ...box,
  ];
}

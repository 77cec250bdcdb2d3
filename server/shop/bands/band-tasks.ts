/** What is done to bend and fit one band. Lengths mm. */
import { counted } from '../../../grammar/words.ts';
import type { PlanBand } from '../sections/object-sections.ts';
import { type LengthWords } from '../steps/task-words.ts';

export function bandTasks(
  { name, quantity, laminations, runs, caulOutMm, grade, notes }: PlanBand,
  words: LengthWords,
): string[] {
  const inOrder = [...runs].sort((a, b) => a.order - b.order);
  return [
    `${name}: ${quantity} to make, ${counted(laminations.length, 'lamination')} to each of ${counted(runs.length, 'run')}; ${grade}.`,
    `${name}: saw the caul ${words.length(caulOutMm)} outside the finished line, for a pad of that thickness.`,
    ...inOrder.map(
      ({ order, ends, marks, from, to }) =>
        `${name}, ${order}. to fit: ${marks.join(', ')}, from ${from.map(words.length).join(', ')} (${ends[0]}) to ${to.map(words.length).join(', ')} (${ends[1]}).`,
    ),
    ...notes,
  ];
}

/** What is done to bend and fit one band. Lengths mm. */
import { type Words, counted, figure, measure, words } from '../../../grammar/words.ts';
import type { PlanBand } from '../sections/object-sections.ts';

export function bandTasks({ name, quantity, laminations, runs, caulOutMm, grade, notes }: PlanBand<Words>): Words[] {
  const inOrder = [...runs].sort((a, b) => a.order - b.order);
  return [
    words`${measure.name('band', name)}: ${quantity} to make, ${counted(laminations.length, 'lamination')} to each of ${counted(runs.length, 'run')}; ${grade}.`,
    words`${measure.name('band', name)}: saw the caul ${figure.length(caulOutMm)} outside the finished line, for a pad of that thickness.`,
    ...inOrder.map(
      ({ order, ends, marks, from, to }) =>
        words`${measure.name('band', name)}, ${order}. to fit: ${marks.join(', ')}, from ${figure.length(from, ', ')} (${ends[0] ?? ''}) to ${figure.length(to, ', ')} (${ends[1] ?? ''}).`,
    ),
    ...notes,
  ];
}

/** How many of a band are made. */
import type { Design } from '../../design/design.ts';
import type { Band } from '../../design/work-model.ts';
import { panelQuantity } from '../../design/values/panel-quantity.ts';
import { sum } from '../../geometry/numbers.ts';

/** One for each panel it runs round; round an outline one for each board and cast body of that shape, one a copy where there is none. */
export function bandQuantity({ around }: Band, design: Design): number {
  const workCopies = design.work?.copies ?? 1;
  if (!('contours' in around)) return panelQuantity(design, around);
  const boards = design.boards.filter(({ outline }) => outline === around);
  const bodies = design.pours.filter(({ mould }) => mould.kind === 'outline' && mould.outline === around);
  return workCopies * Math.max(1, sum([...boards, ...bodies].map(({ copies }) => copies)));
}

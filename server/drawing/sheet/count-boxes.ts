/** Quantities at the head of a sheet, the last one the number to cut. */
import type { Point } from '../../geometry/point.ts';
import type { PageItem } from '../page/page-model.ts';
import { openLine, textAt } from './sheet-lines.ts';

const boxWidth = 21;

/** Boxes side by side, the right upper corner of the last at `corner`. */
export function countBoxes(corner: Point, counts: readonly (readonly [name: string, count: number])[]): PageItem[] {
  return counts.flatMap(([name, count], index) => {
    const middle = corner.x - boxWidth * (counts.length - index - 0.5);
    const isLast = index === counts.length - 1;
    return [
      textAt(
        String(count),
        { x: middle, y: corner.y + 6.5 },
        { size: 7, anchor: 'middle', look: isLast ? 'strong accent' : '' },
      ),
      textAt(name, { x: middle, y: corner.y + 11 }, { size: 3.1, anchor: 'middle', look: 'quiet' }),
      ...(index === 0
        ? []
        : [
            openLine('rule', [
              { x: middle - boxWidth / 2, y: corner.y + 1 },
              { x: middle - boxWidth / 2, y: corner.y + 11 },
            ]),
          ]),
    ];
  });
}

/** Items of a page that may be seen in a window of it. */
import type { Point } from '../../geometry/point.ts';
import { type Bounds, boundsMeet, boundsOf, grownBounds } from '../../geometry/polygons.ts';
import type { PageItem, PathStep } from './page-model.ts';

/** Wider than any letter, in heights of the letters. */
const widestLetter = 1.2;

/**
 * Items whose upright rectangle meets `window` (bottom is the smaller y, for pages run down). Curves are judged by their
 * controls and texts by a generous estimate, so that nothing seen is ever left out; a group stays with what is seen of it.
 */
export function itemsWithin(items: readonly PageItem[], window: Bounds): PageItem[] {
  return items.flatMap((item): PageItem[] => {
    if (item.kind === 'group') return [{ ...item, items: itemsWithin(item.items, window) }];
    return boundsMeet(item.kind === 'path' ? pathBounds(item.steps) : textBounds(item), window) ? [item] : [];
  });
}

/** Half of the widest line drawn. */
const halfLine = 1;

function pathBounds(steps: readonly PathStep[]): Bounds {
  const points = steps.flatMap(([, ...figures]): Point[] =>
    Array.from({ length: figures.length / 2 }, (_, index) => ({
      x: figures[2 * index] ?? 0,
      y: figures[2 * index + 1] ?? 0,
    })),
  );
  return grownBounds(boundsOf(points), halfLine);
}

const textBounds = ({ at, text, size }: { readonly at: Point; readonly text: string; readonly size: number }): Bounds =>
  grownBounds(boundsOf([at]), (text.length + 1) * size * widestLetter);

/** Items of a page moved across it. */
import type { Point } from '../../geometry/point.ts';
import type { PageItem, PathStep } from './page-model.ts';

/** The items with every place moved by (dx, dy) millimetres. */
export function movedItems(items: readonly PageItem[], dx: number, dy: number): PageItem[] {
  const movedPoint = ({ x, y }: Point): Point => ({ x: x + dx, y: y + dy });
  return items.map((item) => {
    switch (item.kind) {
      case 'text':
        return { ...item, at: movedPoint(item.at) };
      case 'path':
        return { ...item, steps: item.steps.map((step) => movedStep(step, dx, dy)) };
      case 'group':
        return { ...item, items: movedItems(item.items, dx, dy), clip: item.clip?.map(movedPoint) ?? null };
    }
  });
}

function movedStep(step: PathStep, dx: number, dy: number): PathStep {
  switch (step[0]) {
    case 'Z':
      return step;
    case 'C':
      return ['C', step[1] + dx, step[2] + dy, step[3] + dx, step[4] + dy, step[5] + dx, step[6] + dy];
    case 'M':
    case 'L':
      return [step[0], step[1] + dx, step[2] + dy];
  }
}

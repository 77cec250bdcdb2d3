/** Versions that have nothing in common: a design that is begun, or given up. */
import { counted } from '../../grammar/words.ts';
import type { DesignChange } from './design-change.ts';

/** Whether one version has nothing that the other could be compared with: then all of the other is new, or gone. */
export function wholeChange({ panels, pieces, strips, objects, settings, stock }: DesignChange): 'new' | 'gone' | null {
  const kept = pieces.same + strips.same;
  const changes = [panels, pieces.changes, strips.changes, objects, settings, stock].flat();
  const [first] = panels;
  if (!first || first.change === 'changed' || kept > 0) return null;
  return changes.every(({ change }) => change === first.change) ? first.change : null;
}

/** In place of tables in which every row would say the same; the plan of the version that has them tells it all. */
export function wholeSentence(whole: 'new' | 'gone', { settings }: DesignChange): string {
  const which = whole === 'new' ? 'new' : 'old';
  return `Everything is ${whole}: its ${counted(settings.length, 'setting')} and further figures are in the plan of the ${which} version.`;
}

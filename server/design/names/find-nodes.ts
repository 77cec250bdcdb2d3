/** Search through plain data, such as a part of a design. */
import { append } from '../../geometry/numbers.ts';

/** Every object under `root` that `is` picks, in no certain order; nothing is looked for inside what was found. */
export function findNodes<Found extends object>(root: unknown, is: (node: object) => node is Found): Found[] {
  const found: Found[] = [];
  const seen = new Set<unknown>();
  const waiting: unknown[] = [root];
  while (waiting.length > 0) {
    const value = waiting.pop();
    if (typeof value !== 'object' || value === null || seen.has(value)) continue;
    seen.add(value);
    if (is(value)) found.push(value);
    else append(waiting, Object.values(value) as unknown[]);
  }
  return found;
}

/** Figures of two plans against each other, whatever they are of: a new section of the plan is compared without new code. */
import { samePlanArea, samePlanFigure } from '../geometry/tolerance.ts';
import type { FieldChange, Plain } from './design-change.ts';

type PlainObject = Record<string, Plain>;

/** Keys of places in a list, which are no figures: what moves up because something went has not changed. */
export const isPlaceInList = (key: string): boolean => key === 'order';

/** Keys of instructions in words: they retell figures that are compared where they stand. */
const isRetold = (key: string): boolean => key === 'tasks';

/**
 * Every difference between two figures. Items of lists are matched by their first telling text (a name, a mark), so
 * that their order never counts; plain values in a list are compared as a heap. An item that went and one that came
 * and are alike but for that text are one renamed item.
 */
export function compareFigures(old: Plain, now: Plain, path: readonly string[] = []): FieldChange[] {
  if (Array.isArray(old) && Array.isArray(now)) return compareLists(old, now, path);
  if (isObject(old) && isObject(now)) return compareObjects(old, now, path);
  const same = isAreaKey(path.at(-1)) ? sameArea(old, now) : sameFigure(old, now);
  return same ? [] : [{ change: 'changed', path: [...path], old, new: now }];
}

/** Areas are written coarser than other figures. */
const isAreaKey = (key = ''): boolean => key.endsWith('Mm2');
const sameArea = (old: Plain, now: Plain): boolean =>
  typeof old === 'number' && typeof now === 'number' ? samePlanArea(old, now) : old === now;

const isObject = (value: Plain | undefined): value is PlainObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether two figures say the same, but for the rounding of the written plan. */
export function sameFigure(old: Plain, now: Plain): boolean {
  if (typeof old === 'number' && typeof now === 'number') return samePlanFigure(old, now);
  if (Array.isArray(old) && Array.isArray(now))
    return old.length === now.length && old.every((each, index) => sameFigure(each, now[index] ?? null));
  if (isObject(old) && isObject(now)) return compareObjects(old, now, []).length === 0;
  return old === now;
}

function compareObjects(old: PlainObject, now: PlainObject, path: readonly string[]): FieldChange[] {
  const keys = [...new Set([...Object.keys(old), ...Object.keys(now)])].filter(
    (key) => !isPlaceInList(key) && !isRetold(key),
  );
  return keys.flatMap((key): FieldChange[] => {
    const [before, after] = [old[key], now[key]];
    const at = [...path, key];
    if (before === undefined) return [{ change: 'new', path: at, old: null, new: after ?? null }];
    if (after === undefined) return [{ change: 'gone', path: at, old: before, new: null }];
    return compareFigures(before, after, at);
  });
}

function compareLists(old: readonly Plain[], now: readonly Plain[], path: readonly string[]): FieldChange[] {
  const items = [...old, ...now];
  if (items.every(isObject)) return compareItems(old.filter(isObject), now.filter(isObject), path);
  const asHeap = !items.some((item) => Array.isArray(item));
  const same = asHeap ? sameFigure(sorted(old), sorted(now)) : sameFigure([...old], [...now]);
  return same ? [] : [{ change: 'changed', path: [...path], old: [...old], new: [...now] }];
}

const sorted = (values: readonly Plain[]): Plain[] =>
  [...values].sort((a, b) =>
    typeof a === 'number' && typeof b === 'number' ? a - b : JSON.stringify(a) < JSON.stringify(b) ? -1 : 1,
  );

function compareItems(old: PlainObject[], now: PlainObject[], path: readonly string[]): FieldChange[] {
  const key = tellingKey(old, now);
  return key === null ? compareHeaps(old, now, path) : compareNamed(old, now, key, path);
}

/** The first key whose values are texts, each the only one in its list; null where no key tells the items apart. */
function tellingKey(old: readonly PlainObject[], now: readonly PlainObject[]): string | null {
  const isTelling = (items: readonly PlainObject[], key: string): boolean =>
    items.every((item) => typeof item[key] === 'string') &&
    new Set(items.map((item) => item[key])).size === items.length;
  const keys = Object.keys(old[0] ?? now[0] ?? {});
  return keys.find((key) => isTelling(old, key) && isTelling(now, key)) ?? null;
}

function compareNamed(
  old: readonly PlainObject[],
  now: readonly PlainObject[],
  key: string,
  path: readonly string[],
): FieldChange[] {
  const nameOf = ({ [key]: name }: PlainObject): string => (typeof name === 'string' ? name : '');
  const before = new Map(old.map((item) => [nameOf(item), item]));
  const after = new Map(now.map((item) => [nameOf(item), item]));
  const changed = [...before].flatMap(([name, item]) => {
    const other = after.get(name);
    return other ? compareObjects(item, other, [...path, name]) : [];
  });
  const came = new Map([...after].filter(([name]) => !before.has(name)));
  const left = [...before].filter(([name]) => !after.has(name));
  const moved = left.map(([name, item]): FieldChange => {
    const renamed = [...came].find(([, other]) => sameFigure({ ...item, [key]: '' }, { ...other, [key]: '' }));
    if (!renamed) return { change: 'gone', path: [...path, name], old: item, new: null };
    came.delete(renamed[0]);
    return { change: 'renamed', path: [...path], old: name, new: renamed[0] };
  });
  const added = [...came].map(([name, item]): FieldChange => ({
    change: 'new',
    path: [...path, name],
    old: null,
    new: item,
  }));
  return [...changed, ...moved, ...added];
}

/** Items that nothing tells apart: equal ones cancel out, the rest are compared in their order. */
function compareHeaps(
  old: readonly PlainObject[],
  now: readonly PlainObject[],
  path: readonly string[],
): FieldChange[] {
  const after = [...now];
  const before = old.filter((item) => {
    const twin = after.findIndex((other) => sameFigure(item, other));
    if (twin >= 0) after.splice(twin, 1);
    return twin < 0;
  });
  return Array.from({ length: Math.max(before.length, after.length) }, (_, index) => {
    const [one, two] = [before[index], after[index]];
    const at = [...path, String(index + 1)];
    if (one && two) return compareObjects(one, two, at);
    const change: FieldChange = one
      ? { change: 'gone', path: at, old: one, new: null }
      : { change: 'new', path: at, old: null, new: two ?? null };
    return [change];
  }).flat();
}

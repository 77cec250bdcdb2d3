/** What a packing is looked for among: the places of every cut-out, and which go together. */
import { grownRings } from '../../geometry/grow-rings.ts';
import { areaOf } from '../../geometry/polygons.ts';
import { arithmeticTolerance } from '../../geometry/tolerance.ts';
import { candidatePlaces } from './candidate-places.ts';
import { conflictTest, type ConflictTest } from './conflict-table.ts';
import type { BlankRoom, CutOut, FilledBlank, Place } from './cut-out.ts';

/** One set of compatible places, by index. */
export type Pattern = readonly number[];

export interface PackingTask {
  /** Cut-outs that have a place at all. */
  readonly cutOuts: readonly CutOut[];
  readonly homeless: readonly CutOut[];
  readonly places: readonly Place[];
  /** The cut-out of each place, by index. */
  readonly kinds: readonly number[];
  readonly conflict: ConflictTest;
  /** Least distance between two saw lines. */
  readonly gap: number;
  /** No packing uses fewer blanks. */
  readonly areaBound: number;
  /** Whether places were left out for their number: then only the bound by area holds. */
  readonly thinned: boolean;
}

/** Places beyond this are thinned out: every so-manieth is kept. */
const mostPlaces = 700;

/** `clash` tells of two places that cannot share a cell, for whatever reason beyond their distance. */
export function packingTask(
  all: readonly CutOut[],
  room: BlankRoom,
  clash: (first: Place, second: Place) => boolean,
): PackingTask {
  const offered = all.map((cutOut) => ({ cutOut, places: candidatePlaces(cutOut, room) }));
  const housed = offered.filter(({ places }) => places.length > 0);
  const number = housed.reduce((sum, { places }) => sum + places.length, 0);
  const step = Math.ceil(number / mostPlaces);
  const places = housed.flatMap(({ places: own }) => own.filter((_, index) => index % step === 0));
  const cutOuts = housed.map(({ cutOut }) => cutOut);
  return {
    cutOuts,
    homeless: offered.filter((each) => each.places.length === 0).map(({ cutOut }) => cutOut),
    places,
    kinds: places.map(({ cutOut }) => cutOuts.indexOf(cutOut)),
    conflict: conflictTest(places, room.gap, clash),
    gap: room.gap,
    areaBound: boundByArea(cutOuts, room),
    thinned: step > 1,
  };
}

/** Half of the gap is each cut-out's own: together they need no more than the blank inside its margins, grown by as much. */
function boundByArea(cutOuts: readonly CutOut[], { width, height, margin, gap }: BlankRoom): number {
  const half = gap / 2;
  const need = cutOuts.reduce((sum, { sawLine, count }) => {
    const outer = sawLine.filter((ring) => areaOf([ring]) > 0);
    return sum + count * areaOf(grownRings(outer, half, 'round'));
  }, 0);
  const free = (width - 2 * margin + gap) * (height - 2 * margin + gap);
  return Math.ceil(need / free - arithmeticTolerance);
}

/** How many of each cut-out a pattern holds. */
export function countsOf({ cutOuts, kinds }: PackingTask, pattern: Pattern): number[] {
  const counts = cutOuts.map(() => 0);
  for (const place of pattern) {
    const kind = kinds[place] ?? 0;
    counts[kind] = (counts[kind] ?? 0) + 1;
  }
  return counts;
}

/** Takes each place in order that goes with those taken, no more of a cut-out than `left` says. */
export function filledFrom(task: PackingTask, order: Pattern, left: readonly number[]): number[] {
  const rest = [...left];
  const taken: number[] = [];
  for (const place of order) {
    const kind = task.kinds[place] ?? 0;
    if ((rest[kind] ?? 0) <= 0 || taken.some((other) => task.conflict(other, place))) continue;
    rest[kind] = (rest[kind] ?? 0) - 1;
    taken.push(place);
  }
  return taken;
}

/** Orders in which a blank is filled: as the moves come, from the left, from below, from one corner. */
const fillingOrders: readonly ((place: Place) => number)[] = [
  () => 0,
  ({ bounds }) => bounds.left,
  ({ bounds }) => bounds.bottom,
  ({ bounds }) => bounds.left + bounds.bottom,
];

/** For each cut-out, blanks filled with as many of it as go in, then with the others; the fullest first. */
export function firstPatterns(task: PackingTask): Pattern[] {
  const all = task.places.map((_, index) => index);
  const wanted = task.cutOuts.map(({ count }) => count);
  const patterns = fillingOrders.flatMap((order) => {
    const ranks = task.places.map(order);
    const sorted = [...all].sort((a, b) => (ranks[a] ?? 0) - (ranks[b] ?? 0));
    return task.cutOuts.map((_, kind) => {
      const own = sorted.filter((index) => task.kinds[index] === kind);
      const others = sorted.filter((index) => task.kinds[index] !== kind);
      return filledFrom(task, [...own, ...others], wanted);
    });
  });
  return patterns.sort((a, b) => b.length - a.length);
}

/** A packing without search: each pattern as often as it goes into what is wanted, then blanks filled first come, first served. */
export function firstPacking(task: PackingTask, patterns: readonly Pattern[]): FilledBlank[] {
  const left = task.cutOuts.map(({ count }) => count);
  const blanks: FilledBlank[] = [];
  const take = (pattern: Pattern, count: number): void => {
    countsOf(task, pattern).forEach((held, kind) => (left[kind] = (left[kind] ?? 0) - held * count));
    blanks.push({ places: placesOf(task, pattern), count });
  };
  for (const pattern of patterns) {
    const times = countsOf(task, pattern).map((held, kind) =>
      held > 0 ? Math.floor((left[kind] ?? 0) / held) : Infinity,
    );
    const often = Math.min(...times);
    if (often > 0 && often < Infinity) take(pattern, often);
  }
  const order = task.places.map((_, index) => index);
  while (left.some((count) => count > 0)) take(filledFrom(task, order, left), 1);
  return blanks;
}

/** A whole number of each pattern, what is more than wanted left out of the last blanks. */
export function packingOf(task: PackingTask, patterns: readonly Pattern[], times: readonly number[]): FilledBlank[] {
  const left = task.cutOuts.map(({ count }) => count);
  return patterns.flatMap((pattern, index) =>
    Array.from({ length: Math.round(times[index] ?? 0) }, (): FilledBlank => {
      const kept = filledFrom(task, pattern, left);
      countsOf(task, kept).forEach((held, kind) => (left[kind] = (left[kind] ?? 0) - held));
      return { places: placesOf(task, kept), count: 1 };
    }),
  );
}

const placesOf = (task: PackingTask, pattern: Pattern): Place[] => pattern.flatMap((index) => task.places[index] ?? []);

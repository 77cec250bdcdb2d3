/** What a packing is looked for among: the places of every cut-out, and which go together. */
import { grownRings } from '../../geometry/grow-rings.ts';
import { append, minimum, sum } from '../../geometry/numbers.ts';
import { distance } from '../../geometry/point.ts';
import { areaOf, middleOfBounds } from '../../geometry/polygons.ts';
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
  const number = housed.reduce((all, { places }) => all + places.length, 0);
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

/** Places that a blank is begun with, its other cut-outs crowding round: the more, the better the packing at first sight. */
const mostBeginnings = 48;

/** For each cut-out, blanks filled with as many of it as go in, then with the others; the fullest first. */
export function firstPatterns(task: PackingTask): Pattern[] {
  const wanted = task.cutOuts.map(({ count }) => count);
  const orders = [...fillingOrders, ...beginnings(task).map(nearnessTo)];
  const patterns = orders.flatMap((order) => {
    const sorted = inOrder(task, order);
    return task.cutOuts.map((_, kind) => {
      const own = sorted.filter((index) => task.kinds[index] === kind);
      const others = sorted.filter((index) => task.kinds[index] !== kind);
      return filledFrom(task, [...own, ...others], wanted);
    });
  });
  return patterns.sort((a, b) => b.length - a.length);
}

/** Places spread evenly over all there are. */
function beginnings({ places }: PackingTask): Place[] {
  const step = Math.ceil(places.length / mostBeginnings);
  return places.filter((_, index) => index % step === 0);
}

/** How far the middle of a place is from that of another, itself first. */
const nearnessTo =
  (beginning: Place) =>
  (place: Place): number =>
    place === beginning ? -1 : distance(middleOfBounds(place.bounds), middleOfBounds(beginning.bounds));

function inOrder({ places }: PackingTask, order: (place: Place) => number): number[] {
  const ranks = places.map(order);
  return places.map((_, index) => index).sort((a, b) => (ranks[a] ?? 0) - (ranks[b] ?? 0));
}

/** A packing without search: each pattern as often as it goes into what is wanted, then blanks filled first come, first served. */
export function firstPacking(task: PackingTask, patterns: readonly Pattern[]): FilledBlank[] {
  const left = task.cutOuts.map(({ count }) => count);
  const blanks = patterns.flatMap((pattern) => filledWhole(task, pattern, left, Infinity));
  const order = task.places.map((_, index) => index);
  while (left.some((count) => count > 0))
    append(blanks, filledWhole(task, filledFrom(task, order, left), left, Infinity));
  return blanks;
}

/** A whole number of each pattern, what is more than wanted left out of the last blanks. */
export function packingOf(task: PackingTask, patterns: readonly Pattern[], times: readonly number[]): FilledBlank[] {
  const left = task.cutOuts.map(({ count }) => count);
  return patterns.flatMap((pattern, index) => {
    const blanks: FilledBlank[] = [];
    for (let rest = Math.round(times[index] ?? 0); rest > 0;) {
      const filled = filledWhole(task, filledFrom(task, pattern, left), left, rest);
      if (filled.length === 0) break;
      append(blanks, filled);
      rest -= sum(filled.map(({ count }) => count));
    }
    return blanks;
  });
}

/** The pattern as often as what is `left` has all of it, `most` times at most; takes that off. */
function filledWhole(task: PackingTask, pattern: Pattern, left: number[], most: number): FilledBlank[] {
  const held = countsOf(task, pattern);
  const times = held.map((number, kind) => (number > 0 ? Math.floor((left[kind] ?? 0) / number) : Infinity));
  const count = Math.min(most, minimum(times));
  if (count <= 0 || count === Infinity) return [];
  held.forEach((number, kind) => (left[kind] = (left[kind] ?? 0) - number * count));
  return [{ places: placesOf(task, pattern), count }];
}

const placesOf = (task: PackingTask, pattern: Pattern): Place[] => pattern.flatMap((index) => task.places[index] ?? []);

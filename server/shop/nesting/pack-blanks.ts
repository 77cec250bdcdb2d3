/**
 * Cut-outs on the fewest blanks: patterns of compatible places by column generation, priced by an exact search for the
 * worthiest set of places, with a bound that no packing is below (A. A. Farley, Operations Research 38, 1990: the worth
 * of everything wanted over the most that one blank can hold).
 */
import { grownRings } from '../../geometry/grow-rings.ts';
import { sum as sumOf } from '../../geometry/numbers.ts';
import { areaOf } from '../../geometry/polygons.ts';
import { arithmeticTolerance, stepTolerance } from '../../geometry/tolerance.ts';
import type { Entry, LinearProgram, LinearSolver } from '../stock/linear-solver.ts';
import type { Watch } from '../stock/watch.ts';
import { candidatePlaces } from './candidate-places.ts';
import { conflictCliques, type ConflictTable, conflictTable } from './conflict-table.ts';
import type { BlankPacking, BlankRoom, CutOut, FilledBlank, Place } from './cut-out.ts';

/** Branches of one search; the same on every machine. */
const mostNodes = 400;
const mostSeconds = 4;
const mostRounds = 60;

/** Places beyond this are thinned out: every so-manieth is kept, and only the bound by area holds. */
const mostPlaces = 700;

/** `clash` tells of two places that cannot share a cell, for whatever reason beyond their distance. */
export async function packBlanks(
  cutOuts: readonly CutOut[],
  room: BlankRoom,
  clash: (first: Place, second: Place) => boolean,
  solver: LinearSolver,
  watch: Watch,
): Promise<BlankPacking> {
  const offered = cutOuts.map((cutOut) => ({ cutOut, places: candidatePlaces(cutOut, room) }));
  const homeless = offered.filter(({ places }) => places.length === 0).map(({ cutOut }) => cutOut);
  const housed = offered.filter(({ places }) => places.length > 0);
  if (housed.length === 0) return { blanks: [], bound: 0, homeless };
  const all = housed.flatMap(({ places }) => places);
  const step = Math.ceil(all.length / mostPlaces);
  const places = housed.flatMap(({ places: own }) => own.filter((_, index) => index % step === 0));
  const wanted = housed.map(({ cutOut }) => cutOut);
  const packer = new Packer(wanted, places, conflictTable(places, room.gap, clash), watch);
  const areaBound = boundByArea(wanted, room);
  const { blanks, bound } = await packer.pack(solver, areaBound);
  return { blanks, bound: step === 1 ? Math.max(bound, areaBound) : areaBound, homeless };
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

/** One set of compatible places, by index. */
type Pattern = readonly number[];

interface Priced {
  /** The worthiest set found, null when none was. */
  readonly pattern: Pattern | null;
  readonly worth: number;
  /** No set is worth more. */
  readonly most: number;
}

class Packer {
  private readonly cutOuts: readonly CutOut[];
  private readonly places: readonly Place[];
  private readonly conflicts: ConflictTable;
  private readonly cliques: readonly (readonly number[])[];
  private readonly watch: Watch;
  /** The cut-out of each place, by index. */
  private readonly kinds: readonly number[];

  constructor(cutOuts: readonly CutOut[], places: readonly Place[], conflicts: ConflictTable, watch: Watch) {
    this.cutOuts = cutOuts;
    this.places = places;
    this.conflicts = conflicts;
    this.cliques = conflictCliques(conflicts);
    this.watch = watch;
    this.kinds = places.map(({ cutOut }) => cutOuts.indexOf(cutOut));
  }

  async pack(solver: LinearSolver, areaBound: number): Promise<Pick<BlankPacking, 'blanks' | 'bound'>> {
    const patterns = this.firstPatterns();
    let blanks = this.greedyPacking(patterns);
    let bound = areaBound;
    const report = (): void => this.watch.report({ value: sheetsOf(blanks), bound });
    const settled = (): boolean => this.watch.interruption() !== null || sheetsOf(blanks) <= bound;
    report();
    if (settled()) return { blanks, bound };
    await solver.withProgram(async (master) => {
      for (const { count } of this.cutOuts) master.addRow(count, Infinity);
      for (const pattern of patterns) this.addPattern(master, pattern);
      for (let round = 0; round < mostRounds && !settled(); round++) {
        const prices = master.solve()?.rowPrices;
        if (!prices) return;
        const { pattern, worth, most } = await this.worthiest(solver, prices);
        const wanted = sumOf(this.cutOuts.map(({ count }, kind) => count * (prices[kind] ?? 0)));
        bound = Math.max(bound, Math.ceil(wanted / Math.max(1, most) - stepTolerance));
        report();
        if (!pattern || worth <= 1 + stepTolerance) break;
        patterns.push(pattern);
        this.addPattern(master, pattern);
        await this.watch.rest();
      }
      if (settled()) return;
      const limits = { seconds: Math.min(mostSeconds, this.watch.secondsLeft()), nodes: mostNodes };
      const { columns } = master.solveWhole(limits, null);
      const better = columns && this.packingOf(patterns, columns);
      if (better && sheetsOf(better) < sheetsOf(blanks)) blanks = better;
      report();
    });
    return { blanks, bound };
  }

  private addPattern(master: LinearProgram, pattern: Pattern): void {
    const counts = this.countsOf(pattern);
    master.addColumn(
      1,
      Infinity,
      counts.flatMap((count, kind): Entry[] => (count > 0 ? [[kind, count]] : [])),
    );
  }

  /** How many of each cut-out a pattern holds. */
  private countsOf(pattern: Pattern): number[] {
    const counts = this.cutOuts.map(() => 0);
    for (const place of pattern) {
      const kind = this.kinds[place] ?? 0;
      counts[kind] = (counts[kind] ?? 0) + 1;
    }
    return counts;
  }

  /** One pattern a cut-out, filled up with all others in turn, and one alone, so that every cut-out has a home. */
  private firstPatterns(): Pattern[] {
    return this.cutOuts.map((_, kind) => {
      const own = this.places.flatMap((_place, index) => (this.kinds[index] === kind ? [index] : []));
      const others = this.places.flatMap((_place, index) => (this.kinds[index] === kind ? [] : [index]));
      return this.filledFrom([...own, ...others]);
    });
  }

  /** Takes each place in order that goes with those taken, no more of a cut-out than is wanted. */
  private filledFrom(order: readonly number[], left = this.cutOuts.map(({ count }) => count)): number[] {
    const rest = [...left];
    const taken: number[] = [];
    for (const place of order) {
      const kind = this.kinds[place] ?? 0;
      if ((rest[kind] ?? 0) <= 0 || taken.some((other) => this.conflicts[place]?.has(other))) continue;
      rest[kind] = (rest[kind] ?? 0) - 1;
      taken.push(place);
    }
    return taken;
  }

  /** Each pattern as often as it goes into what is still wanted, then blanks filled first come, first served. */
  private greedyPacking(patterns: readonly Pattern[]): FilledBlank[] {
    const left = this.cutOuts.map(({ count }) => count);
    const blanks: FilledBlank[] = [];
    const take = (pattern: Pattern, count: number): void => {
      this.countsOf(pattern).forEach((held, kind) => (left[kind] = (left[kind] ?? 0) - held * count));
      blanks.push({ places: this.placesOf(pattern), count });
    };
    for (const pattern of patterns) {
      const counts = this.countsOf(pattern);
      const times = Math.min(
        ...counts.map((held, kind) => (held > 0 ? Math.floor((left[kind] ?? 0) / held) : Infinity)),
      );
      if (times > 0 && times < Infinity) take(pattern, times);
    }
    const order = this.places.map((_, index) => index);
    while (left.some((count) => count > 0)) take(this.filledFrom(order, left), 1);
    return blanks;
  }

  /** A whole solution of the master, what is more than wanted left out of the last blanks. */
  private packingOf(patterns: readonly Pattern[], columns: readonly number[]): FilledBlank[] {
    const left = this.cutOuts.map(({ count }) => count);
    return patterns.flatMap((pattern, index) =>
      Array.from({ length: Math.round(columns[index] ?? 0) }, (): FilledBlank => {
        const kept = this.filledFrom(pattern, left);
        this.countsOf(kept).forEach((held, kind) => (left[kind] = (left[kind] ?? 0) - held));
        return { places: this.placesOf(kept), count: 1 };
      }),
    );
  }

  private placesOf(pattern: Pattern): Place[] {
    return pattern.flatMap((index) => this.places[index] ?? []);
  }

  /** The compatible places whose cut-outs are worth most together at these prices. */
  private async worthiest(solver: LinearSolver, prices: readonly number[]): Promise<Priced> {
    return solver.withProgram((program) => {
      this.cliques.forEach(() => program.addRow(-Infinity, 1));
      this.cutOuts.forEach(({ count }) => program.addRow(-Infinity, count));
      const rows = this.places.map((): Entry[] => []);
      this.cliques.forEach((clique, row) => clique.forEach((place) => rows[place]?.push([row, 1])));
      rows.forEach((entries, place) => {
        const kind = this.kinds[place] ?? 0;
        program.addColumn(-(prices[kind] ?? 0), 1, [...entries, [this.cliques.length + kind, 1]]);
      });
      const limits = { seconds: Math.min(mostSeconds, this.watch.secondsLeft()), nodes: mostNodes };
      const { columns, bound } = program.solveWhole(limits, null);
      const pattern = columns?.flatMap((used, place) => (used > 0.5 ? [place] : [])) ?? null;
      const worth = sumOf((pattern ?? []).map((place) => prices[this.kinds[place] ?? 0] ?? 0));
      const everything = sumOf(this.cutOuts.map(({ count }, kind) => count * (prices[kind] ?? 0)));
      return Promise.resolve({ pattern, worth, most: bound === -Infinity ? everything : -bound });
    });
  }
}

const sheetsOf = (blanks: readonly FilledBlank[]): number => sumOf(blanks.map(({ count }) => count));

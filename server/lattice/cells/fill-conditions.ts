/** Conditions of fills as questions about the cells of one class, told so that whole rows can be answered at once. */
import type { FillCondition } from '../../design/design-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { leastCommonMultiple } from '../../geometry/numbers.ts';
import { grownRings } from '../../geometry/grow-rings.ts';
import { type Region, regionHolds, regionOf } from '../../geometry/region.ts';
import type { CellLabels } from './cell-labels.ts';
import type { PanelCells } from './panel-cells.ts';
import { type LatticeMember, memberPlace, scanLattice } from '../grid/scan-lattice.ts';

export interface CellTest {
  readonly holds: (member: LatticeMember) => boolean;
  /** Columns of a lattice row where something new begins. */
  readonly cuts: (row: number) => readonly number[];
  /** Between two cuts the answer repeats after so many columns. */
  readonly repeat: number;
}

/** What conditions need to know of the whole panel. */
export interface CellFacts {
  readonly cells: PanelCells;
  /** Whose rows, columns and edge are meant: the cells of the panel itself, or of the one it stands for. */
  readonly ruled: PanelCells;
  readonly rings: CellLabels<number>;
  readonly signs: CellLabels<string>;
}

const noCuts = (): readonly number[] => [];

/** The test of a condition for the cells of one class. */
export function cellTest(condition: FillCondition, classIndex: number, facts: CellFacts): CellTest {
  switch (condition.kind) {
    case 'rows':
      return ofRows(condition, classIndex, facts);
    case 'columns':
      return ofColumns(condition, classIndex, facts);
    case 'share':
      return ofShare(condition, classIndex, facts);
    case 'rings':
      return labelled(facts.rings, classIndex, (ring) => ring >= condition.first && ring <= condition.last);
    case 'not open':
      return notAll(condition.where.map((each) => cellTest(each, classIndex, facts)));
    case 'mapped':
      return labelled(facts.signs, classIndex, (sign) => sign === condition.sign);
    case 'region': {
      const region = regionOf(condition.outline.contours.map(flattenContour));
      return inRegions([region], condition.inside, classIndex, facts);
    }
    case 'margin': {
      const rings = condition.of?.contours.map(flattenContour) ?? facts.ruled.region.rings;
      const sides = [condition.reach, -condition.reach].map((by) => regionOf(grownRings(rings, by, 'round')));
      return inRegions(sides, condition.within, classIndex, facts);
    }
  }
}

type Steps = Extract<FillCondition, { kind: 'rows' | 'columns' }>;

const isOneOf = ({ first, last, every }: Steps, number: number): boolean =>
  number >= first && number <= last && (number - first) % every === 0;

function ofRows(condition: Steps, classIndex: number, { ruled }: CellFacts): CellTest {
  const numbers = ruled.numbers[classIndex];
  return {
    holds: ({ row }) => numbers !== undefined && isOneOf(condition, numbers.rowOf(row)),
    cuts: noCuts,
    repeat: 1,
  };
}

function ofColumns(condition: Steps, classIndex: number, { ruled }: CellFacts): CellTest {
  const numbers = ruled.numbers[classIndex];
  if (!numbers) return never;
  const { columnOf, columnStep } = numbers;
  const around = (number: number, row: number): number[] => {
    const place = (number - columnOf({ row, column: 0 })) / columnStep;
    return [Math.ceil(place), Math.floor(place) + 1];
  };
  return {
    holds: (member) => isOneOf(condition, columnOf(member)),
    cuts: (row) => [condition.first, condition.last].filter(Number.isFinite).flatMap((number) => around(number, row)),
    repeat: repeatOf(condition.every, columnStep),
  };
}

const never: CellTest = { holds: () => false, cuts: noCuts, repeat: 1 };

function ofShare(
  { by, place, of }: Extract<FillCondition, { kind: 'share' }>,
  classIndex: number,
  { ruled }: CellFacts,
): CellTest {
  const numbers = ruled.numbers[classIndex];
  if (!numbers) return never;
  const turnOf = (member: LatticeMember): number =>
    (by === 'column' ? 0 : numbers.rowOf(member.row) - 1) + (by === 'row' ? 0 : numbers.columnOf(member) - 1);
  return {
    holds: (member) => turnOf(member) % of === place,
    cuts: noCuts,
    repeat: by === 'row' ? 1 : repeatOf(of, numbers.columnStep),
  };
}

/** Members after which `every` steps of `columnStep` come round to the same. */
function repeatOf(every: number, columnStep: number): number {
  const [a, b] = [every, Math.abs(columnStep)];
  return every / greatestCommonDivisor(a, b);
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/** Holds where one of the tests does not. */
const notAll = (tests: readonly CellTest[]): CellTest => ({
  holds: (member) => !tests.every((test) => test.holds(member)),
  cuts: (row) => tests.flatMap((test) => test.cuts(row)),
  repeat: tests.reduce((whole, test) => leastCommonMultiple(whole, test.repeat), 1),
});

/** Holds for the cells that have a label, and such a one. */
function labelled<Label>(labels: CellLabels<Label>, classIndex: number, fits: (label: Label) => boolean): CellTest {
  return {
    holds: (member) => {
      const label = labels.of(classIndex, member);
      return label !== undefined && fits(label);
    },
    cuts: (row) => labels.columnsOf(classIndex, row).flatMap((column) => [column, column + 1]),
    repeat: 1,
  };
}

/** In an odd number of `regions`, or (not `wanted`) in an even number: their borders cut the rows. */
function inRegions(
  regions: readonly Region[],
  wanted: boolean,
  classIndex: number,
  { cells: { scans, period } }: CellFacts,
): CellTest {
  const middle = scans[classIndex]?.middle;
  if (!middle) return never;
  const crossed = new Map<number, number[]>();
  for (const region of regions) {
    for (const { row, column } of scanLattice(region, middle, period, 0).boundary) {
      const cuts = crossed.get(row) ?? [];
      crossed.set(row, cuts);
      cuts.push(column, column + 1);
    }
  }
  return {
    holds: (member) => {
      const place = memberPlace(middle, period, member);
      return (regions.filter((region) => regionHolds(region, place)).length % 2 === 1) === wanted;
    },
    cuts: (row) => crossed.get(row) ?? [],
    repeat: 1,
  };
}

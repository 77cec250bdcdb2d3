/** Half laps and three-way laps: which notches each strip carries, as runs of equal steps. */
import type { Grid } from '../../design/design-model.ts';
import { dot, type Point } from '../../geometry/point.ts';
import { arithmeticTolerance, directionTolerance, placeTolerance } from '../../geometry/tolerance.ts';
import { areParallel, type LineFamily } from '../grid/grid-lines.ts';
import { periodOf } from '../grid/grid-period.ts';
import type { NotchRun } from '../laid-panel.ts';
import { familiesThrough, nodesOfPeriod } from '../grid/lattice-nodes.ts';
import { type Cut, lapCut, runsOfCuts } from './notch-runs.ts';
import { crossingsBetween, pointOnLine, type StripPart } from './strip-parts.ts';

/** Strips by family and line, to ask whether one passes a place. */
type StripIndex = ReadonlyMap<LineFamily, ReadonlyMap<number, readonly StripPart[]>>;

function indexStrips(parts: readonly StripPart[]): StripIndex {
  const index = new Map<LineFamily, Map<number, StripPart[]>>();
  for (const part of parts) {
    const lines = index.get(part.lines) ?? new Map<number, StripPart[]>();
    index.set(part.lines, lines);
    lines.set(part.index, [...(lines.get(part.index) ?? []), part]);
  }
  return index;
}

/** What every strip's notches are made from. */
export interface Weave {
  readonly grid: Grid;
  readonly families: readonly LineFamily[];
  readonly strips: StripIndex;
  /** Layers of the families that meet where lines of two families cross. */
  readonly layersAt: (lines: LineFamily, other: LineFamily, node: Point) => readonly number[];
}

export function weaveOf(grid: Grid, families: readonly LineFamily[], parts: readonly StripPart[]): Weave {
  return { grid, families, strips: indexStrips(parts), layersAt: layersAtCrossings(families) };
}

/** Where all crossings of two families are alike, which is found once from one period, no node is asked again. */
function layersAtCrossings(families: readonly LineFamily[]): Weave['layersAt'] {
  const period = periodOf(families);
  const meetings = period ? nodesOfPeriod(families, period).map((node) => familiesThrough(families, node)) : [];
  const alike = new Map<LineFamily, Map<LineFamily, readonly number[]>>();
  for (const lines of families) {
    const others = new Map<LineFamily, readonly number[]>();
    alike.set(lines, others);
    for (const other of families) {
      const here = meetings.filter((each) => each.includes(lines) && each.includes(other));
      if (
        here[0] &&
        new Set(here.map(({ length }) => length)).size === 1 &&
        here.every((each) => each.every((one) => here[0]?.includes(one)))
      )
        others.set(other, layersOf(here[0]));
    }
  }
  return (lines, other, node) => alike.get(lines)?.get(other) ?? layersOf(familiesThrough(families, node));
}

const layersOf = (families: readonly LineFamily[]): number[] => families.map(({ family }) => family.layer);

/**
 * The notches of one strip, measured from its start. The depth follows the grid, not the strips that happen
 * to be there, so that one blade height serves a whole layer.
 */
export const notchesOf = (weave: Weave, part: StripPart): NotchRun[] =>
  weave.families.filter((other) => !areParallel(other, part.lines)).flatMap((other) => notchesFor(weave, part, other));

function notchesFor({ grid, strips, layersAt }: Weave, part: StripPart, other: LineFamily): NotchRun[] {
  const { lines, index, start, end } = part;
  const cuts = crossingsBetween(lines, index, other, start, end).flatMap(({ line, position }): Cut[] => {
    const node = pointOnLine(lines, index, position);
    if (!passes(strips.get(other)?.get(line), dot(other.along, node))) return [];
    const layers = layersAt(lines, other, node);
    const cut = lapCut(lines.family.stock.depth, lines.family.layer, other.family.layer, layers);
    return [{ place: position - start, ...cut }];
  });
  const runs = runsOfCuts(cuts, other.face + grid.fit, crossingAngle(lines, other));
  return grid.bothSlants ? runs.flatMap((run) => bothSides(run, lines.family.stock.depth)) : runs;
}

/** A middle strip's third-deep notch cut on both faces, so that the strip fits either hand; any other notch as it is. */
function bothSides(run: NotchRun, depth: number): NotchRun[] {
  const isThird = Math.abs(run.depth - depth / 3) <= arithmeticTolerance;
  return isThird ? [run, { ...run, from: run.from === 'above' ? 'below' : 'above' }] : [run];
}

/** Whether any of the strips of one line reaches over `position`. */
const passes = (parts: readonly StripPart[] | undefined, position: number): boolean =>
  parts?.some(({ start, end }) => position >= start - placeTolerance && position <= end + placeTolerance) ?? false;

/** Counter-clockwise from the strip's axis to the crossing strip's, in (0°, 180°). */
function crossingAngle(lines: LineFamily, other: LineFamily): number {
  const angle = (other.family.direction - lines.family.direction) % 180;
  return angle <= directionTolerance ? angle + 180 : angle;
}

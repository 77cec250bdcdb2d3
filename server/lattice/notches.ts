/** Half laps and three-way laps: which notches each strip carries, as runs of equal steps. */
import type { Grid } from '../design/design-model.ts';
import { dot, type Point } from '../geometry/point.ts';
import { directionTolerance, kindLengthTolerance, placeTolerance, wholeNumbersBetween } from '../geometry/tolerance.ts';
import { areParallel, type LineFamily } from './grid-lines.ts';
import type { NotchRun } from './laid-panel.ts';
import { familiesThrough } from './lattice-nodes.ts';
import { crossings, pointOnLine, type StripPart } from './strip-parts.ts';

/** Strips by family and line, to ask whether one passes a place. */
export type StripIndex = ReadonlyMap<LineFamily, ReadonlyMap<number, readonly StripPart[]>>;

export function indexStrips(parts: readonly StripPart[]): StripIndex {
  const index = new Map<LineFamily, Map<number, StripPart[]>>();
  for (const part of parts) {
    const lines = index.get(part.lines) ?? new Map<number, StripPart[]>();
    index.set(part.lines, lines);
    lines.set(part.index, [...(lines.get(part.index) ?? []), part]);
  }
  return index;
}

/** The notches of one strip, measured from its start, ordered by layer of the strip each takes and then by place. */
export function notchesOf(grid: Grid, families: readonly LineFamily[], part: StripPart, strips: StripIndex): NotchRun[] {
  return families
    .filter((other) => !areParallel(other, part.lines))
    .flatMap((other) => notchesFor(grid, families, part, other, strips));
}

interface Cut {
  readonly place: number;
  readonly depth: number;
  readonly from: 'above' | 'below';
}

function notchesFor(
  grid: Grid,
  families: readonly LineFamily[],
  part: StripPart,
  other: LineFamily,
  strips: StripIndex,
): NotchRun[] {
  const { first, step } = crossings(part.lines, part.index, other);
  const ends = [(part.start - first) / step, (part.end - first) / step];
  const range = wholeNumbersBetween(Math.min(...ends), Math.max(...ends));
  const cuts: Cut[] = [];
  for (let line = range.first; line <= range.last; line++) {
    const position = first + line * step;
    const node = pointOnLine(part.lines, part.index, position);
    if (!passes(strips, other, line, node)) continue;
    cuts.push({ place: position - part.start, ...cutAt(families, node, part.lines, other) });
  }
  cuts.sort((a, b) => a.place - b.place);
  const angle = crossingAngle(part.lines, other);
  const width = other.face + grid.fit;
  return ['above' as const, 'below' as const].flatMap((from) =>
    runsOf(cuts.filter((cut) => cut.from === from)).map((run) => ({ ...run, width, angle, from })),
  );
}

/** Whether the strips of line `line` reach over `node`. */
function passes(strips: StripIndex, lines: LineFamily, line: number, node: Point): boolean {
  const position = dot(lines.along, node);
  const parts = strips.get(lines)?.get(line) ?? [];
  return parts.some(({ start, end }) => position >= start - placeTolerance && position <= end + placeTolerance);
}

/** Counter-clockwise from the strip's axis to the crossing strip's, in (0°, 180°). */
function crossingAngle(lines: LineFamily, other: LineFamily): number {
  const angle = (other.family.direction - lines.family.direction) % 180;
  return angle <= directionTolerance ? angle + 180 : angle;
}

/**
 * How deep a strip is cut at a node, and from which side. Two strips halve the depth. Where three
 * meet each keeps a third: the lowest is cut two thirds deep from above, the highest two thirds from
 * below, the middle one third for each of the others. The depth follows the grid, not the strips that
 * happen to be there, so that one blade height serves a whole layer.
 */
function cutAt(families: readonly LineFamily[], node: Point, lines: LineFamily, other: LineFamily): Omit<Cut, 'place'> {
  const { layer, stock } = lines.family;
  const from = layer < other.family.layer ? 'above' : 'below';
  const layers = familiesThrough(families, node).map(({ family }) => family.layer);
  if (layers.length < 3) return { depth: stock.depth / 2, from };
  const isMiddle = layers.some((each) => each < layer) && layers.some((each) => each > layer);
  return { depth: (stock.depth * (isMiddle ? 1 : 2)) / 3, from };
}

interface Run {
  readonly first: number;
  readonly step: number;
  readonly count: number;
  readonly depth: number;
}

/** Cuts in order of place, gathered into runs of equal depth and step. */
function runsOf(cuts: readonly Cut[]): Run[] {
  const runs: Run[] = [];
  for (const { place, depth } of cuts) {
    const run = runs.at(-1);
    const step = run ? place - (run.first + run.step * (run.count - 1)) : 0;
    const continues = run && run.depth === depth && (run.count === 1 || Math.abs(step - run.step) <= kindLengthTolerance);
    if (continues) runs[runs.length - 1] = { ...run, step: (place - run.first) / run.count, count: run.count + 1 };
    else runs.push({ first: place, step: 0, count: 1, depth });
  }
  return runs;
}

/** The places of a run, in mm from the strip's end 1. */
export const placesOfRun = ({ first, step, count }: NotchRun): number[] =>
  Array.from({ length: count }, (_, index) => first + index * step);


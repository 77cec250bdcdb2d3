/** Half laps and three-way laps: which notches each strip carries, as runs of equal steps. */
import type { Grid } from '../design/design-model.ts';
import { dot, type Point } from '../geometry/point.ts';
import { directionTolerance, placeTolerance, wholeNumbersBetween } from '../geometry/tolerance.ts';
import { areParallel, type LineFamily } from './grid-lines.ts';
import type { NotchRun } from './laid-panel.ts';
import { familiesThrough } from './lattice-nodes.ts';
import { type Cut, lapCut, runsOfCuts } from './notch-runs.ts';
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

/**
 * The notches of one strip, measured from its start. The depth follows the grid, not the strips that happen
 * to be there, so that one blade height serves a whole layer.
 */
export function notchesOf(
  grid: Grid,
  families: readonly LineFamily[],
  part: StripPart,
  strips: StripIndex,
): NotchRun[] {
  return families
    .filter((other) => !areParallel(other, part.lines))
    .flatMap((other) => notchesFor(grid, families, part, other, strips));
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
    const layers = familiesThrough(families, node).map(({ family }) => family.layer);
    const cut = lapCut(part.lines.family.stock.depth, part.lines.family.layer, other.family.layer, layers);
    cuts.push({ place: position - part.start, ...cut });
  }
  cuts.sort((a, b) => a.place - b.place);
  const angle = crossingAngle(part.lines, other);
  const width = other.face + grid.fit;
  return runsOfCuts(cuts, width, angle);
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

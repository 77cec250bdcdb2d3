/**
 * Rings back into contours with the lines, arcs and curves they came from. The clipping library knows straight edges only;
 * an outline keeps its curves for templates and bands, so edges that follow a known segment become a part of it again.
 */
import { flattenContour } from './flatten-path.ts';
import type { ArcSegment, Contour, PathSegment } from './path.ts';
import { partOf } from './path-parts.ts';
import { angleOf, between, distance, dot, type Point, subtract, turned } from './point.ts';
import { type Bounds, boundsOf } from './polygons.ts';
import { distanceToSegment } from './region.ts';
import { placeTolerance } from './tolerance.ts';

/** A segment that edges may follow, with what is needed to find places on it. */
interface Guide {
  readonly segment: PathSegment;
  readonly bounds: Bounds;
  /** Its chords; empty for lines and circular arcs, which need none. */
  readonly chords: readonly Point[];
}

/** An edge, or several after one another, that follow one guide (null: a straight edge of its own). */
interface Run {
  readonly guide: Guide | null;
  start: number;
  end: number;
  from: Point;
  to: Point;
}

/** The contours of `rings`; whatever follows one of `segments` within the place tolerance is a part of it. */
export function restoredContours(rings: readonly (readonly Point[])[], segments: readonly PathSegment[]): Contour[] {
  const guides = segments.map(guideOf);
  return rings.map((ring) => contourOf(withoutGaps(joinedRound(runsOf(withoutShortEdges(ring), guides)))));
}

/** Corners nearer to the one before than the place tolerance say nothing of which way the line goes. */
function withoutShortEdges(ring: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of ring) {
    const last = kept.at(-1);
    if (!last || distance(last, point) > placeTolerance) kept.push(point);
  }
  const [first, last] = [kept[0], kept.at(-1)];
  return first && last && kept.length > 3 && distance(first, last) <= placeTolerance ? kept.slice(0, -1) : kept;
}

function guideOf(segment: PathSegment): Guide {
  const isPlain = segment.kind === 'line' || (segment.kind === 'arc' && segment.radiusX === segment.radiusY);
  const points = [...flattenContour([segment]), segment.to];
  return { segment, bounds: boundsOf(points), chords: isPlain ? [] : points };
}

function runsOf(ring: readonly Point[], guides: readonly Guide[]): Run[] {
  const runs: Run[] = [];
  let guideAt = 0;
  ring.forEach((from, index) => {
    const to = ring[(index + 1) % ring.length] ?? from;
    const last = runs.at(-1);
    const { edge, at } = edgeFrom(guides, guideAt, from, to);
    guideAt = at;
    if (!edge) runs.push({ guide: null, start: 0, end: 1, from, to });
    else if (last && goesOn(last, edge)) {
      last.end = edge.end;
      last.to = to;
    } else runs.push(edge);
  });
  return runs;
}

/**
 * The edge on the first guide that it follows, looked for from guide number `start` on and round to it again: a ring mostly
 * follows its guides in their order. `at` is the number of the guide found, or where to go on where there is none.
 */
function edgeFrom(
  guides: readonly Guide[],
  start: number,
  from: Point,
  to: Point,
): { readonly edge: Run | null; readonly at: number } {
  for (let step = 0; step < guides.length; step += 1) {
    const at = (start + step) % guides.length;
    const guide = guides[at];
    const edge = guide ? edgeOn(guide, from, to) : null;
    if (edge) return { edge, at };
  }
  return { edge: null, at: start };
}

/** The first and last run may be one. */
function joinedRound(runs: readonly Run[]): readonly Run[] {
  const [first, last] = [runs[0], runs.at(-1)];
  if (!first || !last || first === last || !goesOn(last, first)) return runs;
  return [{ ...last, end: first.end, to: first.to }, ...runs.slice(1, -1)];
}

/**
 * Where one guide leads into the next, a chord may cut the corner between them: it belongs to both and so to neither. Such
 * an edge, within the place tolerance of the corner, is left out, and both runs reach to the corner.
 */
function withoutGaps(runs: readonly Run[]): readonly Run[] {
  const reached = runs.map((run) => ({ ...run }));
  const gaps = new Set<Run>();
  reached.forEach((gap, index) => {
    const before = reached[(index + reached.length - 1) % reached.length];
    const after = reached[(index + 1) % reached.length];
    const corner = gap.guide === null && before && after ? cornerBetween(before, after) : null;
    if (!corner || !before || !after || distanceToSegment(corner, gap.from, gap.to) > placeTolerance) return;
    gaps.add(gap);
    before.end = isForward(before) ? 1 : 0;
    before.to = corner;
    after.start = isForward(after) ? 0 : 1;
    after.from = corner;
  });
  return reached.filter((run) => !gaps.has(run));
}

/** Where the guide of one run ends and that of the next begins, if that is one place. */
function cornerBetween(before: Run, after: Run): Point | null {
  if (!before.guide || !after.guide) return null;
  const end = isForward(before) ? before.guide.segment.to : before.guide.segment.from;
  const start = isForward(after) ? after.guide.segment.from : after.guide.segment.to;
  return distance(end, start) <= placeTolerance ? end : null;
}

const isForward = ({ start, end }: Run): boolean => start < end;

/** Whether a run goes on along the same guide the same way. */
const goesOn = (run: Run, next: Run): boolean =>
  run.guide !== null && run.guide === next.guide && isForward(run) === isForward(next);

/** The edge as a run along a guide; null where it leaves it. */
function edgeOn(guide: Guide, from: Point, to: Point): Run | null {
  const start = fractionOn(guide, from);
  const end = start === null ? null : fractionOn(guide, to);
  const middle = end === null ? null : fractionOn(guide, between(from, to, 0.5));
  if (start === null || middle === null || end === null) return null;
  const isOrdered = (start < middle && middle < end) || (start > middle && middle > end);
  return isOrdered ? { guide, start, end, from, to } : null;
}

/** How far along a guide a point lies that is on it within the place tolerance; null where it is not. */
function fractionOn({ segment, bounds, chords }: Guide, point: Point): number | null {
  if (point.x < bounds.left - placeTolerance || point.x > bounds.right + placeTolerance) return null;
  if (point.y < bounds.bottom - placeTolerance || point.y > bounds.top + placeTolerance) return null;
  if (chords.length > 0) return fractionOnChords(chords, point);
  return segment.kind === 'arc'
    ? fractionOnCircle(segment, point)
    : fractionOnChords([segment.from, segment.to], point);
}

function fractionOnChords(chords: readonly Point[], point: Point): number | null {
  let best: { readonly away: number; readonly fraction: number } | null = null;
  for (let index = 0; index + 1 < chords.length; index++) {
    const [from, to] = [chords[index], chords[index + 1]];
    if (!from || !to || isAside(point, from, to)) continue;
    const along = subtract(to, from);
    const share = Math.min(1, Math.max(0, dot(subtract(point, from), along) / dot(along, along)));
    const away = distance(point, between(from, to, share));
    if (away <= (best?.away ?? placeTolerance)) best = { away, fraction: (index + share) / (chords.length - 1) };
  }
  return best && best.fraction;
}

/** Whether a point lies outside the box round a chord: most do, and that is soon seen. */
const isAside = ({ x, y }: Point, from: Point, to: Point): boolean =>
  (x < from.x - placeTolerance && x < to.x - placeTolerance) ||
  (x > from.x + placeTolerance && x > to.x + placeTolerance) ||
  (y < from.y - placeTolerance && y < to.y - placeTolerance) ||
  (y > from.y + placeTolerance && y > to.y + placeTolerance);

function fractionOnCircle(arc: ArcSegment, point: Point): number | null {
  const from = turned(subtract(point, arc.centre), -arc.tilt);
  if (Math.abs(Math.hypot(from.x, from.y) - arc.radiusX) > placeTolerance) return null;
  const nearEnd = [arc.from, arc.to].findIndex((end) => distance(end, point) <= placeTolerance);
  if (nearEnd >= 0) return nearEnd;
  const way = Math.sign(arc.sweep);
  const swept = ((((angleOf(from) - arc.startAngle) * way) % 360) + 360) % 360;
  return swept <= Math.abs(arc.sweep) ? swept / Math.abs(arc.sweep) : null;
}

/** Runs as segments, each beginning where the one before it ends. */
function contourOf(runs: readonly Run[]): Contour {
  return runs.map(({ guide, start, end, from, to }): PathSegment => {
    if (!guide || guide.segment.kind === 'line') return { kind: 'line', from, to };
    return { ...partOf(guide.segment, settled(start, guide, from), settled(end, guide, to)), from, to };
  });
}

/** A fraction that is an end within the place tolerance is that end. */
function settled(fraction: number, { segment }: Guide, point: Point): number {
  if (distance(point, segment.from) <= placeTolerance) return fraction < 0.5 ? 0 : fraction;
  return distance(point, segment.to) <= placeTolerance && fraction > 0.5 ? 1 : fraction;
}

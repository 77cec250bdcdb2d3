/** Points of the drawing that a measurement takes hold of: where strips cross, and the corners and ends of pieces. */
import type { Drawing, DrawnKind } from '../../../server/drawing/drawing.ts';
import { arithmeticTolerance } from '../../../server/geometry/tolerance.ts';
import type { PagePoint } from './camera.ts';

export interface Snap {
  readonly at: PagePoint;
  readonly what: 'node' | 'end';
}

/** The axis of a placed strip. */
interface Axis {
  readonly from: PagePoint;
  readonly to: PagePoint;
}

/**
 * What lies within `reach` mm of `point`: the nearest node where there is one, else the nearest end or corner, else null.
 * Layers named in `hidden` are left out.
 */
export function snapAt(
  { layers }: Pick<Drawing, 'layers'>,
  hidden: ReadonlySet<string>,
  point: PagePoint,
  reach: number,
): Snap | null {
  const shown = layers.filter(({ name }) => !hidden.has(name));
  const axes = shown
    .filter(({ kind }) => kind === 'strip')
    .flatMap(({ kinds }) => kinds.flatMap((kind) => axesNear(kind, point, reach)));
  const nodes = axes.flatMap((first, index) =>
    axes.slice(index + 1).flatMap((second) => crossingOf(first, second) ?? []),
  );
  const node = nearest(nodes, point, reach);
  if (node) return { at: node, what: 'node' };
  const ends = shown.flatMap(({ kinds }) => kinds.flatMap((kind) => cornersNear(kind, point, reach)));
  const end = nearest(ends, point, reach);
  return end && { at: end, what: 'end' };
}

function nearest(candidates: readonly PagePoint[], point: PagePoint, reach: number): PagePoint | null {
  let [best, least]: [PagePoint | null, number] = [null, reach];
  for (const candidate of candidates) {
    const far = Math.hypot(candidate.x - point.x, candidate.y - point.y);
    if (far <= least) [best, least] = [candidate, far];
  }
  return best;
}

function axesNear(kind: DrawnKind, point: PagePoint, reach: number): Axis[] {
  const xs = kind.rings.flatMap((ring) => ring.filter((_, index) => index % 2 === 0));
  const [start, end] = [Math.min(...xs), Math.max(...xs)];
  return [...placed(kind)]
    .map((move) => ({ from: move(start, 0), to: move(end, 0) }))
    .filter(({ from, to }) => distanceToLine(point, from, to) <= reach);
}

function cornersNear(kind: DrawnKind, point: PagePoint, reach: number): PagePoint[] {
  const corners = kind.rings.flatMap((ring) =>
    Array.from({ length: ring.length / 2 }, (_, index): [number, number] => [
      ring[2 * index] ?? 0,
      ring[2 * index + 1] ?? 0,
    ]),
  );
  const far = corners.reduce((most, [x, y]) => Math.max(most, Math.hypot(x, y)), 0);
  const near: PagePoint[] = [];
  for (const move of placed(kind)) {
    const origin = move(0, 0);
    if (Math.hypot(origin.x - point.x, origin.y - point.y) > far + reach) continue;
    for (const [x, y] of corners) near.push(move(x, y));
  }
  return near;
}

/** From the kind's own frame to the drawing, one a placement. */
function* placed({ placements }: DrawnKind): Generator<(x: number, y: number) => PagePoint> {
  for (let index = 0; index + 2 < placements.length; index += 3) {
    const [left, up] = [placements[index] ?? 0, placements[index + 1] ?? 0];
    const turn = ((placements[index + 2] ?? 0) * Math.PI) / 180;
    const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
    yield (x, y) => ({ x: left + x * cosine - y * sine, y: up + x * sine + y * cosine });
  }
}

function distanceToLine(point: PagePoint, from: PagePoint, to: PagePoint): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = ((point.x - from.x) * dx + (point.y - from.y) * dy) / (dx * dx + dy * dy || 1);
  const held = Math.min(1, Math.max(0, share));
  return Math.hypot(point.x - from.x - held * dx, point.y - from.y - held * dy);
}

/** Where two axes cross within both; null for parallel ones. */
function crossingOf(first: Axis, second: Axis): PagePoint | null {
  const [ax, ay] = [first.to.x - first.from.x, first.to.y - first.from.y];
  const [bx, by] = [second.to.x - second.from.x, second.to.y - second.from.y];
  const turn = ax * by - ay * bx;
  if (Math.abs(turn) <= arithmeticTolerance * Math.hypot(ax, ay) * Math.hypot(bx, by)) return null;
  const [cx, cy] = [second.from.x - first.from.x, second.from.y - first.from.y];
  const along = (cx * by - cy * bx) / turn;
  const across = (cx * ay - cy * ax) / turn;
  const isWithin = [along, across].every((share) => share >= 0 && share <= 1);
  return isWithin ? { x: first.from.x + along * ax, y: first.from.y + along * ay } : null;
}

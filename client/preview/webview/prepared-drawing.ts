/** A drawing made ready for painting: every kind's path is built once, and measured to know when it is out of sight. */
import type { Drawing, DrawingLayer, DrawnKind, Rings } from '../../../server/drawing/drawing.ts';

export interface PreparedKind {
  readonly kind: DrawnKind;
  readonly path: Path2D;
  /** Furthest reach of the shape from its placement's point, mm. */
  readonly reach: number;
}

export interface PreparedLayer {
  readonly layer: DrawingLayer;
  readonly kinds: readonly PreparedKind[];
}

export interface PreparedDrawing {
  readonly drawing: Drawing;
  readonly layers: readonly PreparedLayer[];
}

export function prepared(drawing: Drawing): PreparedDrawing {
  const layers = drawing.layers.map((layer) => ({
    layer,
    kinds: layer.kinds.map((kind) => ({ kind, path: pathOf(kind.rings), reach: reachOf(kind.rings) })),
  }));
  return { drawing, layers };
}

function pathOf(rings: Rings): Path2D {
  const path = new Path2D();
  for (const ring of rings) {
    for (const [x, y, index] of pointsOf(ring)) {
      if (index === 0) path.moveTo(x, y);
      else path.lineTo(x, y);
    }
    path.closePath();
  }
  return path;
}

function reachOf(rings: Rings): number {
  let reach = 0;
  for (const ring of rings) for (const [x, y] of pointsOf(ring)) reach = Math.max(reach, Math.hypot(x, y));
  return reach;
}

function* pointsOf(ring: readonly number[]): Iterable<[x: number, y: number, index: number]> {
  for (let index = 0; index + 1 < ring.length; index += 2) yield [ring[index] ?? 0, ring[index + 1] ?? 0, index];
}

/** Where a kind is placed: the point its shape's origin comes to, and the turn in radians. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly turn: number;
}

export function* placesOf({ placements }: DrawnKind): Iterable<Place> {
  for (let index = 0; index + 2 < placements.length; index += 3) {
    const degrees = placements[index + 2] ?? 0;
    yield { x: placements[index] ?? 0, y: placements[index + 1] ?? 0, turn: (degrees * Math.PI) / 180 };
  }
}

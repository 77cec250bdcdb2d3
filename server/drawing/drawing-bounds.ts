/** The upright rectangle around everything drawn. */
import { origin, type Point } from '../geometry/point.ts';
import { boundsOf } from '../geometry/polygons.ts';
import type { Drawing, DrawingLayer } from './drawing.ts';
import { placedRings } from './placed-rings.ts';

/** Bounds of all layers in millimetres; an empty drawing has its bounds at the origin. */
export function drawingBounds(layers: readonly DrawingLayer[]): Drawing['bounds'] {
  const bounds = boundsOf(pointsOf(layers));
  return bounds.left <= bounds.right ? bounds : boundsOf([origin]);
}

function* pointsOf(layers: readonly DrawingLayer[]): Generator<Point> {
  for (const kind of layers.flatMap((layer) => layer.kinds)) {
    for (const ring of [...placedRings(kind)].flat()) {
      for (let index = 0; index + 1 < ring.length; index += 2) yield { x: ring[index] ?? 0, y: ring[index + 1] ?? 0 };
    }
  }
}

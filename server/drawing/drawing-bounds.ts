/** The upright rectangle around everything drawn. */
import type { Drawing, DrawingLayer } from './drawing.ts';
import { placedRings } from './placed-rings.ts';

/** Bounds of all layers in millimetres; an empty drawing has its bounds at the origin. */
export function boundsOf(layers: readonly DrawingLayer[]): Drawing['bounds'] {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (const kind of layers.flatMap((layer) => layer.kinds)) {
    for (const ring of [...placedRings(kind)].flat()) {
      for (let index = 0; index + 1 < ring.length; index += 2) {
        left = Math.min(left, ring[index] ?? left);
        right = Math.max(right, ring[index] ?? right);
        bottom = Math.min(bottom, ring[index + 1] ?? bottom);
        top = Math.max(top, ring[index + 1] ?? top);
      }
    }
  }
  return left <= right ? { left, bottom, right, top } : { left: 0, bottom: 0, right: 0, top: 0 };
}

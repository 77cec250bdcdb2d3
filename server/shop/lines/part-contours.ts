/** The finished line of a part of the work, exact where its outline is. Lengths mm. */
import type { Outline, Panel } from '../../design/design-model.ts';
import type { Contour } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { panelRegion } from '../../lattice/grid/panel-region.ts';

/** Outer contours counter-clockwise, holes clockwise. */
export function contoursOf(part: Panel | Outline): readonly Contour[] {
  if ('contours' in part) return part.contours;
  return part.shape.kind === 'outline'
    ? part.shape.outline.contours
    : panelRegion(part).region.rings.map(contourOfRing);
}

export const contourOfRing = (ring: readonly Point[]): Contour =>
  ring.map((from, index) => ({ kind: 'line', from, to: ring[(index + 1) % ring.length] ?? from }));

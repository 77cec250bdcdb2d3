/** One infill piece or one strip as DXF, lying along x from 0, seen from the front: its edges as lines, its notches by the side they are cut from. */
import type { Point } from '../../geometry/point.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { contourOfRing } from '../../shop/lines/part-contours.ts';
import { type Member, notchOnFace, singleNotches } from '../member-views.ts';
import type { DxfDrawing } from './dxf-drawing.ts';
import { noteLayer, plainLayer } from './dxf-layers.ts';

/** `notes` stand under the member. */
export function memberDxf(member: Member, notes: readonly string[]): DxfDrawing {
  const notchesFrom = (side: 'above' | 'below'): Point[][] =>
    singleNotches(member.notches)
      .filter(({ from }) => from === side)
      .map((notch) => notchOnFace(notch, member.face));
  return {
    layers: [
      plainLayer('edges', { paths: [contourOfRing(member.outline)] }),
      plainLayer('axis', {
        broken: true,
        paths: [[{ kind: 'line', from: { x: 0, y: 0 }, to: { x: member.length, y: 0 } }]],
      }),
      plainLayer('notches from above', { rings: notchesFrom('above') }),
      plainLayer('notches from below', { broken: true, rings: notchesFrom('below') }),
      noteLayer(boundsOf(member.outline), [...notes, 'seen from the front; one unit is a millimetre']),
    ],
  };
}

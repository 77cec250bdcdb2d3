/** A template turned over: what is laid on the back of the work, such as the holes of a cleat or a cut-out sawn from behind. */
import { boundsOf } from '../../geometry/polygons.ts';
import { scaling, transformed, transformedSegment } from '../../geometry/transform-path.ts';
import type { Template } from './template.ts';

const turnedOver = scaling(-1, 1);

export function fromBack(template: Template): Template {
  const ground = template.ground.map((ring) => ring.map((point) => transformed(point, turnedOver)));
  return {
    ...template,
    seenFrom: 'back',
    lines: template.lines.map(({ kind, contours }) => ({
      kind,
      contours: contours.map((contour) => contour.map((segment) => transformedSegment(segment, turnedOver))),
    })),
    scribe: template.scribe.map((chain) => chain.map((point) => transformed(point, turnedOver))),
    axes: template.axes.map(([from, to]) => [transformed(from, turnedOver), transformed(to, turnedOver)] as const),
    marks: template.marks.map(({ label, at }) => ({ label, at: transformed(at, turnedOver) })),
    spots: template.spots.map(({ at, text }) => ({ at: transformed(at, turnedOver), text })),
    ground,
    bounds: boundsOf(ground.flat()),
  };
}

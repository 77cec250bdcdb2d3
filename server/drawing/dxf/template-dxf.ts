/** A template as DXF: a layer for each line, the strips' middles, the places to register by, and what it rests on. */
import type { PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { lineNames, type Template, type TemplateSpot } from '../template/template.ts';
import type { DxfDrawing, DxfLayer } from './dxf-drawing.ts';
import { axesLayer, curvesNote, noteLayer, plainLayer } from './dxf-layers.ts';
import { crossReach, markRadius, registerLayer, ringAbout } from './register-layer.ts';

export function templateDxf(template: Template): DxfDrawing {
  const { lines, scribe, axes, marks, spots, bounds } = template;
  return {
    layers: [
      ...lines.map(({ kind, contours }) => plainLayer(lineNames[kind], { broken: kind === 'sand', paths: contours })),
      ...(scribe.length > 0 ? [plainLayer('scribe line', { broken: true, paths: scribe.map(edgesAlong) })] : []),
      axesLayer(axes),
      registerLayer(marks),
      ...(spots.length > 0 ? [spotsLayer(spots)] : []),
      noteLayer(bounds, [
        `${template.heading}, seen from the ${template.seenFrom}; one unit is a millimetre`,
        template.origin,
        ...template.assumptions,
        template.check,
        curvesNote,
      ]),
    ],
  };
}

const edgesAlong = (points: readonly Point[]): PathSegment[] =>
  points.slice(1).map((to, index) => ({ kind: 'line', from: points[index] ?? to, to }));

/** Places to take care at: a ring, and what is the matter. */
const spotsLayer = (spots: readonly TemplateSpot[]): DxfLayer =>
  plainLayer('take care', {
    paths: spots.map(({ at }) => [ringAbout(at)]),
    texts: spots.map(({ at, text }) => ({ at: { x: at.x + crossReach, y: at.y }, height: markRadius, turn: 0, text })),
  });

/** A template as DXF: a layer for each line, the strips' middles, the places to register by, and what it rests on. */
import type { PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { lineNames, type Template, type TemplateLineKind, type TemplateSpot } from '../template/template.ts';
import type { DxfDrawing, DxfLayer } from './dxf-drawing.ts';
import { axesLayer, curvesNote, noteLayer, plainLayer } from './dxf-layers.ts';
import { crossReach, markRadius, registerLayer, ringAbout } from './register-layer.ts';

const colours: Readonly<Record<TemplateLineKind, number>> = {
  saw: 1,
  finished: 7,
  sand: 5,
  caul: 1,
  cleat: 7,
  spacer: 7,
};

export function templateDxf(template: Template): DxfDrawing {
  const { lines, scribe, axes, marks, spots, bounds } = template;
  return {
    layers: [
      ...lines.map(({ kind, contours }) =>
        plainLayer(lineNames[kind], colours[kind], { broken: kind === 'sand', paths: contours }),
      ),
      ...(scribe.length > 0 ? [plainLayer('scribe line', 2, { broken: true, paths: scribe.map(edgesAlong) })] : []),
      axesLayer(axes),
      registerLayer(marks),
      ...(spots.length > 0 ? [spotsLayer(spots)] : []),
      noteLayer(bounds, [
        `${template.heading}, seen from the ${template.seenFrom}; millimetres`,
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
  plainLayer('take care', 6, {
    paths: spots.map(({ at }) => [ringAbout(at)]),
    texts: spots.map(({ at, text }) => ({ at: { x: at.x + crossReach, y: at.y }, height: markRadius, turn: 0, text })),
  });

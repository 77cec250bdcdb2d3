/** A template as DXF: a layer for each line, the strips' middles, the places to register by, and what it rests on. */
import { flatteningTolerance } from '../../geometry/tolerance.ts';
import { circularArc } from '../../geometry/flatten-path.ts';
import type { PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import {
  lineNames,
  type RegisterMark,
  type Template,
  type TemplateLineKind,
  type TemplateSpot,
} from '../template/template.ts';
import type { DxfDrawing, DxfLayer } from './dxf-drawing.ts';
import { noteLayer, plainLayer } from './dxf-layers.ts';

const colours: Readonly<Record<TemplateLineKind, number>> = {
  saw: 1,
  finished: 7,
  sand: 5,
  caul: 1,
  cleat: 7,
  spacer: 7,
};
const markRadius = 3;
const crossReach = 5;
const labelHeight = 5;

export function templateDxf(template: Template): DxfDrawing {
  const { lines, scribe, axes, marks, spots, bounds } = template;
  return {
    layers: [
      ...lines.map(({ kind, contours }) =>
        plainLayer(lineNames[kind], colours[kind], { broken: kind === 'sand', paths: contours }),
      ),
      ...(scribe.length > 0 ? [plainLayer('scribe line', 2, { broken: true, paths: scribe.map(edgesAlong) })] : []),
      plainLayer('middles of strips', 8, {
        broken: true,
        paths: axes.map(([from, to]) => [{ kind: 'line', from, to }]),
      }),
      marksLayer(marks),
      ...(spots.length > 0 ? [spotsLayer(spots)] : []),
      noteLayer(bounds, [
        `${template.heading}, seen from the ${template.seenFrom}; millimetres`,
        template.origin,
        ...template.assumptions,
        template.check,
        `Curves that are no circular arcs are chains of lines no further than ${flatteningTolerance} mm from them`,
      ]),
    ],
  };
}

const edgesAlong = (points: readonly Point[]): PathSegment[] =>
  points.slice(1).map((to, index) => ({ kind: 'line', from: points[index] ?? to, to }));

function marksLayer(marks: readonly RegisterMark[]): DxfLayer {
  return plainLayer('register', 3, {
    paths: marks.flatMap(({ at }) => crossPaths(at)),
    texts: marks.map(({ label, at }) => ({
      at: { x: at.x + crossReach, y: at.y + crossReach / 2 },
      height: labelHeight,
      turn: 0,
      text: label,
    })),
  });
}

/** Places to take care at: a ring, and what is the matter. */
const spotsLayer = (spots: readonly TemplateSpot[]): DxfLayer =>
  plainLayer('take care', 6, {
    paths: spots.map(({ at }) => [ringAbout(at)]),
    texts: spots.map(({ at, text }) => ({ at: { x: at.x + crossReach, y: at.y }, height: markRadius, turn: 0, text })),
  });

function ringAbout(at: RegisterMark['at']): PathSegment {
  const east = { x: at.x + markRadius, y: at.y };
  return circularArc(east, east, at, 360);
}

function crossPaths(at: RegisterMark['at']): PathSegment[][] {
  const arm = (dx: number, dy: number): PathSegment[] => [
    { kind: 'line', from: { x: at.x - dx, y: at.y - dy }, to: { x: at.x + dx, y: at.y + dy } },
  ];
  return [[ringAbout(at)], arm(crossReach, 0), arm(0, crossReach)];
}

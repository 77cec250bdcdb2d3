/** Places to lay a drawing by, in DXF: a ring and a cross each, and their numbers. */
import { circularArc } from '../../geometry/flatten-path.ts';
import type { PathSegment } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import type { RegisterMark } from '../template/template.ts';
import type { DxfLayer } from './dxf-drawing.ts';
import { plainLayer } from './dxf-layers.ts';

export const markRadius = 3;
export const crossReach = 5;
const labelHeight = 5;

export function registerLayer(marks: readonly RegisterMark[]): DxfLayer {
  return plainLayer('register', {
    paths: marks.flatMap(({ at }) => crossPaths(at)),
    texts: marks.map(({ label, at }) => ({
      at: { x: at.x + crossReach, y: at.y + crossReach / 2 },
      height: labelHeight,
      turn: 0,
      text: label,
    })),
  });
}

export function ringAbout(at: Point): PathSegment {
  const east = { x: at.x + markRadius, y: at.y };
  return circularArc(east, east, at, 360);
}

function crossPaths(at: Point): PathSegment[][] {
  const arm = (dx: number, dy: number): PathSegment[] => [
    { kind: 'line', from: { x: at.x - dx, y: at.y - dy }, to: { x: at.x + dx, y: at.y + dy } },
  ];
  return [[ringAbout(at)], arm(crossReach, 0), arm(0, crossReach)];
}

/** Layers that every DXF drawing is made of. */
import type { Point } from '../../geometry/point.ts';
import type { Bounds } from '../../geometry/polygons.ts';
import { flatteningTolerance } from '../../geometry/tolerance.ts';
import type { DxfLayer } from './dxf-drawing.ts';

/** A layer with what is given, unbroken lines and nothing else. */
export const plainLayer = (name: string, colour: number, more: Partial<DxfLayer>): DxfLayer => ({
  name,
  colour,
  broken: false,
  paths: [],
  rings: [],
  texts: [],
  ...more,
});

export const axesLayer = (axes: readonly (readonly [from: Point, to: Point])[]): DxfLayer =>
  plainLayer('middles of strips', 8, {
    broken: true,
    paths: axes.map(([from, to]) => [{ kind: 'line', from, to }]),
  });

/** What becomes of curves that the format does not know. */
export const curvesNote = `Curves that are no circular arcs are chains of lines no further than ${flatteningTolerance} mm from them`;

const noteHeight = 3.5;
const leading = 6;

/** Lines of text under the drawing. */
export const noteLayer = ({ left, bottom }: Bounds, lines: readonly string[]): DxfLayer =>
  plainLayer('notes', 9, {
    texts: lines.map((text, index) => ({
      at: { x: left, y: bottom - 10 - (index + 1) * leading },
      height: noteHeight,
      turn: 0,
      text,
    })),
  });

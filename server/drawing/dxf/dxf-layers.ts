/** Layers that every DXF drawing is made of. */
import type { Point } from '../../geometry/point.ts';
import type { Bounds } from '../../geometry/polygons.ts';
import { flatteningTolerance } from '../../geometry/tolerance.ts';
import { lengthText } from '../../words/figures.ts';
import type { DxfLayer } from './dxf-drawing.ts';

/** A layer with what is given, unbroken lines and nothing else. */
export const plainLayer = (name: string, more: Partial<DxfLayer>): DxfLayer => ({
  name,
  broken: false,
  paths: [],
  rings: [],
  texts: [],
  ...more,
});

export const axesLayer = (axes: readonly (readonly [from: Point, to: Point])[]): DxfLayer =>
  plainLayer('middles of strips', {
    broken: true,
    paths: axes.map(([from, to]) => [{ kind: 'line', from, to }]),
  });

/** What becomes of curves that the format does not know. */
export const curvesNote = `Curves that are not circular arcs are chains of lines no farther than ${lengthText(flatteningTolerance, 'mm')} from them`;

const noteHeight = 3.5;
const leading = 6;

/** Lines of text under the drawing. */
export const noteLayer = ({ left, bottom }: Bounds, lines: readonly string[]): DxfLayer =>
  plainLayer('notes', {
    texts: lines.map((text, index) => ({
      at: { x: left, y: bottom - 10 - (index + 1) * leading },
      height: noteHeight,
      turn: 0,
      text,
    })),
  });

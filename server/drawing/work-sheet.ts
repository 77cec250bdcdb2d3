/** The assembled work to print: as it is displayed, with its size over all beside it. */
import { maximum, minimum } from '../geometry/numbers.ts';
import type { Work } from '../design/work-model.ts';
import { type Bounds, boundsOf } from '../geometry/polygons.ts';
import { placedParts } from '../shop/placed-parts.ts';
import { lengthText } from '../words/figures.ts';
import type { WorkParts } from './displays/part-layers.ts';
import { displayWork } from './displays/work-display.ts';
import { drawingBounds } from './drawing-bounds.ts';
import type { Drawing, DrawingLayer, DrawnText } from './drawing.ts';
import { textWidth } from './svg-caption.ts';

/** From the work to the line that measures it, and half of the bar at each end of the line. */
const away = 12;
const bar = 3;
const letterHeight = 7;
/** Letters to the line that they stand at. */
const letterGap = 2.5;
const toMiddle = 0.35;

/** One copy at full size, seen from the front; null where no part could be laid out. */
export function workSheet(work: Work, parts: WorkParts, title: string): Drawing | null {
  const placed = placedParts(work, parts.panels).flatMap(({ rings }) => rings.flat());
  if (placed.length === 0) return null;
  const drawing = displayWork(work, parts, title);
  const bounds = boundsOf(placed);
  const [width, height] = [bounds.right - bounds.left, bounds.top - bounds.bottom].map((length) =>
    lengthText(length, parts.design.units, 'size'),
  );
  const lines = sizeLines(bounds, work);
  const texts = sizeTexts(bounds, width ?? '', height ?? '');
  const [first = '', ...others] = drawing.summary;
  return {
    ...drawing,
    layers: [...drawing.layers, lines],
    bounds: withRoomFor(texts, drawingBounds([lines, ...drawing.layers.filter(({ clip }) => clip === undefined)])),
    texts,
    summary: [first, `${width} wide, ${height} high over all`, ...others],
  };
}

/** One line below and one on the right, a bar at each end. */
function sizeLines({ left, right, bottom, top }: Bounds, { name, range }: Work): DrawingLayer {
  const [y, x] = [bottom - away, right + away];
  const rings = [
    [left, y, right, y],
    ...[left, right].map((end) => [end, y - bar, end, y + bar]),
    [x, bottom, x, top],
    ...[bottom, top].map((end) => [x - bar, end, x + bar, end]),
  ];
  const label = `size over all of ${name}`;
  const shape = { mark: name, label, rings, placements: [0, 0, 0], range };
  return { name: 'size over all', kind: 'note', level: 0, wood: null, kinds: [shape] };
}

function sizeTexts({ left, right, bottom, top }: Bounds, width: string, height: string): DrawnText[] {
  const below = bottom - away - letterGap - letterHeight;
  return [
    { x: (left + right) / 2, y: below, size: letterHeight, anchor: 'middle', text: width },
    {
      x: right + away + letterGap,
      y: (bottom + top) / 2 - toMiddle * letterHeight,
      ...{ size: letterHeight, anchor: 'start', text: height },
    },
  ];
}

/** Widths of letters are estimated as in captions. */
function withRoomFor(texts: readonly DrawnText[], bounds: Bounds): Bounds {
  const rights = texts.map(({ x, size, anchor, text }) => x + (anchor === 'start' ? textWidth(text, size) : 0));
  return {
    ...bounds,
    bottom: Math.min(bounds.bottom, minimum(texts.map(({ y }) => y))),
    right: Math.max(bounds.right, maximum(rights)),
  };
}

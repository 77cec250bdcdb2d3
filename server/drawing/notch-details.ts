/** Every kind of notch of a strip, enlarged: its slant, its width along the strip, its depth and side. */
import { maximum } from '../geometry/numbers.ts';
import { type Point, radians } from '../geometry/point.ts';
import type { StripGroup } from '../lattice/laid-panel.ts';
import { angleText, type LengthFigures } from '../words/figures.ts';
import { notchOnFace } from './member-views.ts';
import { notchSettings } from './notch-text.ts';
import { angleDimension, lengthDimension } from './sheet/dimensions.ts';
import type { PageItem } from './page/page-model.ts';
import { area, openLine, textAt } from './sheet/sheet-lines.ts';

/** Enlargements of ISO 5455, and full size: the largest that leaves wood on both sides of the notch. */
const scales = [5, 2, 1] as const;
const woodBeside = 2;
const cellWidth = 54;
const cellHeight = 36;
const perRow = 2;

/** The details in rows of two, the first one's upper left corner at `corner` (paper millimetres). */
export function notchDetails({ notches, stock }: StripGroup, figures: LengthFigures, corner: Point): PageItem[] {
  return notchSettings(notches).flatMap(([run], index) => {
    const left = corner.x + (index % perRow) * cellWidth;
    const top = corner.y + Math.floor(index / perRow) * cellHeight;
    const middle = { x: left + cellWidth / 2 - 3, y: top + 15 };
    const reach = cellWidth / 2 - 8;
    const corners = notchOnFace({ ...run, place: 0 }, stock.face);
    const farthest = maximum(corners.map(({ x }) => x));
    const scale = scales.find((each) => farthest * each <= reach - woodBeside) ?? 1;
    const half = (stock.face / 2) * scale;
    const notch = corners.map(({ x, y }) => ({
      x: middle.x + x * scale,
      y: middle.y - y * scale,
    }));
    const [start, end] = notch;
    const runLength = run.width / Math.sin(radians(run.angle));
    const level = (y: number): Point[] => [
      { x: middle.x - reach, y },
      { x: middle.x + reach, y },
    ];
    return [
      area('bare', [...level(middle.y - half), ...level(middle.y + half).reverse()]),
      ...[-half, half].map((offset) => openLine('edge', level(middle.y + offset))),
      area(run.from === 'above' ? 'cut' : 'hidden', notch),
      openLine('axis', level(middle.y)),
      ...angleDimension(middle, 0, run.angle, half + 4, angleText(run.angle)),
      ...(start && end ? lengthDimension(start, end, middle.y + half + 7, figures.fine(runLength)) : []),
      textAt(
        `${scale}:1, from ${run.from}, ${figures.fine(run.depth)} deep`,
        { x: middle.x, y: middle.y + half + 12.5 },
        { size: 3.3, anchor: 'middle', look: 'strong' },
      ),
    ];
  });
}

/** The cells of a placement chart as seen from one side, with row and column numbers and tick boxes. */
import { maximum } from '../geometry/numbers.ts';
import { add, dot, type Point, scale } from '../geometry/point.ts';
import { coarserRing } from '../geometry/coarser-ring.ts';
import { boundsOf } from '../geometry/polygons.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { type ChartCell, type ChartPlan, type ChartRow, isUpright } from './chart-plan.ts';
import type { PageItem } from './page/page-model.ts';
import { area, disc, openLine, rectangle, textAt } from './sheet/sheet-lines.ts';

/** From the panel to the page: paper millimetres a panel millimetre, and the view's left upper corner. */
export interface ChartFrame {
  readonly side: 'front' | 'back';
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

/** Paper millimetres around the panel that the numbers need. */
export const labelRoom = { across: 15, up: 9 };

const labelSize = 3;
const largestLetters = 4.2;

/** Everything that a chart shows: the region and whatever cells stand out of it. */
export const chartBounds = (laid: LaidPanel, { rows }: ChartPlan) =>
  boundsOf([...laid.region.flat(), ...rows.flatMap(({ cells }) => cells.flatMap(({ cell }) => cell.opening))]);

export function chartView(laid: LaidPanel, plan: ChartPlan, frame: ChartFrame): PageItem[] {
  const bounds = chartBounds(laid, plan);
  const place = ({ x, y }: Point): Point => ({
    x: frame.left + (frame.side === 'front' ? x - bounds.left : bounds.right - x) * frame.scale,
    y: frame.top + (bounds.top - y) * frame.scale,
  });
  const letterSize = lettersFor(plan, frame);
  const cells = plan.rows.flatMap((row) => row.cells);
  const items = [
    ...columnNumbers(plan, frame, bounds.top, place),
    ...cells.map((cell) => cellOpening(cell, place)),
    ...laid.region.map((ring) => area('outline', coarserRing(ring).map(place))),
    ...cells.flatMap((cell) => cellText(cell, letterSize, place)),
    ...(isUpright(plan) ? [] : cells.map((cell) => columnInCell(cell, plan, frame, place))),
    ...plan.rows.flatMap((row) => rowNumbers(row, plan, frame, place)),
  ];
  return [{ kind: 'group', name: 'chart', facts: { side: frame.side }, items, clip: null }];
}

/** As large as the longest letters with their tick box allow in the narrowest cell. */
function lettersFor({ rows, inradius }: ChartPlan, frame: ChartFrame): number {
  const longest = maximum(rows.flatMap(({ cells }) => cells.map(({ letters }) => Array.from(letters).length)));
  return Math.min(largestLetters, (1.5 * inradius * frame.scale) / (0.7 * longest + 0.95));
}

function cellOpening({ cell, motif }: ChartCell, place: (point: Point) => Point): PageItem {
  const facts = { row: cell.row, column: cell.column, motif };
  return area(cell.inside ? 'wood' : 'cutCell', cell.opening.map(place), facts);
}

/** Letters and tick box in the middle, a dot where the motif's corner 1 lies. */
function cellText({ middle, letters, corner }: ChartCell, size: number, place: (point: Point) => Point): PageItem[] {
  const at = place(middle);
  const box = size * 0.75;
  const width = size * 0.7 * Array.from(letters).length;
  const left = at.x - (width + 0.2 * size + box) / 2;
  const dot = place(add(scale(middle, 0.24), scale(corner, 0.76)));
  return [
    disc('arrow', dot, size * 0.16),
    textAt(letters, { x: left + width / 2, y: at.y + size * 0.36 }, { size, anchor: 'middle', look: 'strong' }),
    area('box', rectangle(left + width + 0.2 * size, at.y - box / 2, box, box)),
  ];
}

/** The row's number before its first cell, how many it has after its last. */
function rowNumbers(
  { number: row, cells }: ChartRow,
  { along }: ChartPlan,
  frame: ChartFrame,
  place: (point: Point) => Point,
): PageItem[] {
  const [first, last] = [cells[0], cells.at(-1)];
  if (!first || !last) return [];
  const beside = (cell: ChartCell, side: 1 | -1): Point =>
    place(add(cell.middle, scale(along, side * (reachOf(cell, scale(along, side)) + 4 / frame.scale))));
  const [start, end] = [beside(first, -1), beside(last, 1)];
  return [label(String(row), start, 'accent strong'), label(`= ${cells.length}`, end, 'quiet')];
}

const label = (text: string, { x, y }: Point, look: string): PageItem =>
  textAt(text, { x, y: y + labelSize * 0.36 }, { size: labelSize, anchor: 'middle', look: `${look} halo` });

/** How far a cell reaches from its middle along a unit vector. */
const reachOf = ({ cell, middle }: ChartCell, along: Point): number =>
  maximum(cell.opening.map((corner) => dot(along, corner) - dot(along, middle)));

/** Columns that stand upright are numbered on one line over the panel, each with a thin line down to its uppermost cell. */
function columnNumbers(
  plan: ChartPlan,
  frame: ChartFrame,
  panelTop: number,
  place: (point: Point) => Point,
): PageItem[] {
  const { columns, up } = plan;
  if (!isUpright(plan)) return [];
  const every = columnStep(columns.map(({ top }) => place(top.middle)));
  return columns
    .filter(({ number: column }) => (column - 1) % every === 0)
    .flatMap(({ number: column, top }) => {
      const reached = add(top.middle, scale(up, reachOf(top, up)));
      const over = { x: top.middle.x, y: panelTop + 3.5 / frame.scale };
      const figure = place({ x: over.x, y: over.y + 2.6 / frame.scale });
      return [openLine('guide', [place(over), place(reached)]), label(String(column), figure, 'accent strong')];
    });
}

/** Columns that lean are numbered in every cell, over its letters. */
function columnInCell(
  { cell, middle }: ChartCell,
  { inradius }: ChartPlan,
  frame: ChartFrame,
  place: (point: Point) => Point,
): PageItem {
  const { x, y } = place(middle);
  const size = 0.42 * inradius * frame.scale;
  return textAt(
    String(cell.column),
    { x, y: y - 0.45 * inradius * frame.scale },
    { size, anchor: 'middle', look: 'quiet' },
  );
}

/** Every column is numbered where there is room for its figures, else every second, fifth or tenth. */
function columnStep(places: readonly Point[]): number {
  const [first, second] = places;
  const apart = first && second ? Math.abs(second.x - first.x) : Infinity;
  return [1, 2, 5].find((step) => step * apart >= labelSize * 1.6) ?? 10;
}

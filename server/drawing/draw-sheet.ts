/** A sheet with the boards that are sawn from it, seen from its upper face: its margin, every outline with its holes, names. */
import { measure, words } from '../../grammar/words.ts';
import { minimum } from '../geometry/numbers.ts';
import type { LengthUnit } from '../design/design-model.ts';
import { flattenContour } from '../geometry/flatten-path.ts';
import { add, type Point, turned } from '../geometry/point.ts';
import { boundsOf, ringOfBounds } from '../geometry/polygons.ts';
import { distanceToSegment } from '../geometry/region.ts';
import { type NestedSheet, unitsPerMm } from '../shop/sheets/nest-sheets.ts';
import { boardsOn, planSheets } from '../shop/sheets/plan-sheets.ts';
import { sheetsStanding } from '../shop/writers/text/object-text.ts';
import { fineAngleText, fixed } from '../words/figures.ts';
import { writeWords } from '../words/write-words.ts';
import { ringOf } from './draw-panel.ts';
import type { Drawing, DrawingLayer, DrawnText, Rings } from './drawing.ts';

/** Height of the letters, mm. */
const letterHeight = 12;

/** One drawing for each way in which sheets of the stock are cut, named as in the plan. */
export function drawSheet(nested: NestedSheet, units: LengthUnit, title: string | null): Drawing[] {
  return planSheets([nested]).map((figures, index): Drawing => {
    const { layout, widthMm, heightMm, marginMm, count, pieces, usedPct } = figures;
    const sheet = { left: 0, bottom: 0, right: widthMm, top: heightMm };
    const free = { left: marginMm, bottom: marginMm, right: widthMm - marginMm, top: heightMm - marginMm };
    return {
      title: title ?? layout,
      name: layout,
      heading: `sheet ${layout}`,
      units,
      bounds: sheet,
      layers: [
        lineLayer('sheet', layout, [ringOfBounds(sheet), ringOfBounds(free)].map(ringOf), nested),
        boardLayer(nested, index),
      ],
      texts: boardNames(nested, index),
      summary: [
        writeWords(words`Sheet ${layout}, ${measure.size([widthMm, heightMm])}, ${count} to cut like this`, units),
        `Each gives ${pieces.map(({ what, n }) => `${n} × ${what}`).join(', ')}; ${fixed(usedPct, 1)} % of it is used`,
        `All sheets of ${nested.sheet.name}: ${sheetsStanding(figures)}`,
      ],
    };
  });
}

const lineLayer = (name: string, mark: string, rings: Rings, { sheet }: NestedSheet): DrawingLayer => ({
  name,
  kind: 'note',
  level: 0,
  wood: null,
  kinds: [{ mark, label: `sheet ${mark} and its margin`, rings, placements: [0, 0, 0], range: sheet.range }],
});

/** Each board drawn once, placed as often as it lies on the sheet. */
function boardLayer(nested: NestedSheet, index: number): DrawingLayer {
  const filled = nested.packing.sheets[index];
  const boards = filled ? boardsOn(filled, nested) : [];
  const kinds = [...new Set(boards)].map(({ name, outline, range }) => ({
    mark: name,
    label: `board ${name}`,
    rings: outline.contours.map((contour) => [...ringOf(flattenContour(contour))]),
    placements: (filled?.places ?? []).flatMap(({ x, y, turn }, place) =>
      boards[place]?.name === name ? [x / unitsPerMm, y / unitsPerMm, turn] : [],
    ),
    range,
  }));
  return { name: 'boards', kind: 'board', level: 0, wood: null, kinds };
}

function boardNames(nested: NestedSheet, index: number): DrawnText[] {
  const filled = nested.packing.sheets[index];
  const boards = filled ? boardsOn(filled, nested) : [];
  return (filled?.places ?? []).flatMap(({ x, y, turn }, place) => {
    const board = boards[place];
    if (!board) return [];
    const points = flattenContour(board.outline.contours[0] ?? []).map((point) =>
      add(turned(point, turn), { x: x / unitsPerMm, y: y / unitsPerMm }),
    );
    const turnWords = turn === 0 ? '' : ` ${fineAngleText(turn)}`;
    return [{ ...roomiestPlace(points), size: letterHeight, anchor: 'middle', text: `${board.name}${turnWords}` }];
  });
}

/** Heights at which a name is tried. */
const rows = 12;

/** Of the middles of level lines inside a ring, the one furthest from its edge. */
function roomiestPlace(ring: readonly Point[]): Point {
  const { left, right, bottom, top } = boundsOf(ring);
  const edges = ring.map((from, index) => ({ from, to: ring[(index + 1) % ring.length] ?? from }));
  const room = (point: Point): number => minimum(edges.map(({ from, to }) => distanceToSegment(point, from, to)));
  const middles = Array.from({ length: rows }, (_, row) => {
    const y = bottom + ((row + 0.5) / rows) * (top - bottom);
    const crossings = edges
      .filter(({ from, to }) => from.y > y !== to.y > y)
      .map(({ from, to }) => from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x))
      .sort((one, other) => one - other);
    return crossings.flatMap((from, index) =>
      index % 2 === 0 ? [{ x: (from + (crossings[index + 1] ?? from)) / 2, y }] : [],
    );
  }).flat();
  const centre = { x: (left + right) / 2, y: (bottom + top) / 2 };
  const { x, y } = middles.reduce((best, each) => (room(each) > room(best) ? each : best), middles[0] ?? centre);
  return { x, y: y - letterHeight / 2 };
}

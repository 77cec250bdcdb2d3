/** A laid-out panel as a drawing: region, strips from the back to the front, infill, and the outline over all. */
import { figure, words } from '../../grammar/words.ts';
import type { LengthUnit } from '../design/design-model.ts';
import { coarserRing } from '../geometry/coarser-ring.ts';
import type { LaidPanel, PieceFate, PieceGroup, Placement, Polygon, StripGroup } from '../lattice/laid-panel.ts';
import { writeWords } from '../words/write-words.ts';
import { barRing } from './bar-ring.ts';
import type { DrawingLayer, Drawing, DrawnKind, LayerKind, Rings } from './drawing.ts';
import { drawingBounds } from './drawing-bounds.ts';
import { type MarkedDesign, type MarkedStrips, marksOf, stripsByMark } from './kind-marks.ts';
import { summarise } from './panel-summary.ts';

/** The drawing of one copy of `laid`, seen from the front; `design` gives each piece and strip its mark. */
export function drawPanel(laid: LaidPanel, design: MarkedDesign, title: string | null): Drawing {
  const { units } = design.design;
  const pieceMarks = marksOf(laid, design.kinds.pieces);
  const layers = [
    regionLayer(laid, 'region', 'region'),
    ...stripLayers(laid, stripsByMark(laid, design), units),
    ...pieceLayers(laid, pieceMarks, 'whole', units),
    ...pieceLayers(laid, pieceMarks, 'trimmed', units),
    regionLayer(laid, 'outline', 'outline'),
  ];
  return {
    title: title ?? laid.panel.name,
    name: laid.panel.name,
    heading: `panel ${laid.panel.name}`,
    units,
    bounds: drawingBounds(layers),
    layers,
    texts: [],
    summary: summarise(laid, units),
  };
}

function regionLayer(laid: LaidPanel, name: string, kind: LayerKind): DrawingLayer {
  const { name: panelName, range } = laid.panel;
  const shape: DrawnKind = {
    mark: panelName,
    label: `panel ${panelName}`,
    rings: laid.region.map(ringOf),
    placements: [0, 0, 0],
    range,
  };
  return { name, kind, level: 0, wood: null, kinds: [shape] };
}

/** One layer a level and stock, the lowest level first, so that the upper strip of every lap is painted over the lower. */
function stripLayers(laid: LaidPanel, marked: ReturnType<typeof stripsByMark>, units: LengthUnit): DrawingLayer[] {
  const groups = grouped(laid.strips, (group) => JSON.stringify([group.layer, group.stock.name]));
  return groups
    .sort(([first], [second]) => first.layer - second.layer)
    .map(([sample, ...others]) => ({
      name: `strips ${sample.layer + 1} ${sample.stock.name}`,
      kind: 'strip',
      level: sample.layer,
      wood: sample.stock.wood,
      kinds: [sample, ...others].flatMap((group) => marked(group).map((strips) => drawnStrip(group, strips, units))),
    }));
}

function drawnStrip(group: StripGroup, { mark, placements, isSawn }: MarkedStrips, units: LengthUnit): DrawnKind {
  const length = figure.length(group.length);
  return {
    mark,
    label: writeWords(
      words`${isSawn ? 'out of strip' : 'strip'} ${mark}, ${length} long, ${placements.length} in this panel`,
      units,
    ),
    rings: [barRing(group.length, group.stock.face)],
    placements: placementNumbers(placements),
    range: group.range,
  };
}

function pieceLayers(
  laid: LaidPanel,
  marks: Map<PieceGroup, string>,
  fate: PieceFate,
  units: LengthUnit,
): DrawingLayer[] {
  const groups = grouped(
    laid.pieces.filter((group) => group.fate === fate),
    (group) => group.shape.stock.name,
  );
  const counts = countsByMark(laid.pieces, marks);
  return groups.map(([sample, ...others]) => ({
    name: `${fate} ${sample.shape.stock.name}`,
    kind: fate === 'whole' ? 'piece' : 'trimmed',
    level: 0,
    wood: sample.shape.stock.wood,
    kinds: [sample, ...others].map((group) => drawnPiece(group, marks.get(group) ?? '', counts, units)),
  }));
}

function drawnPiece(group: PieceGroup, mark: string, counts: Map<string, number>, units: LengthUnit): DrawnKind {
  const length = figure.length(group.shape.length);
  return {
    mark,
    label: writeWords(words`${group.role} ${mark}, ${length} long, ${counts.get(mark) ?? 0} in this panel`, units),
    rings: [ringOf(group.outline)],
    placements: placementNumbers(group.placements()),
    range: group.range,
  };
}

/** How many pieces of each mark the panel has, whole and trimmed together. */
function countsByMark(groups: readonly PieceGroup[], marks: Map<PieceGroup, string>): Map<string, number> {
  const counts = new Map<string, number>();
  for (const group of groups) {
    const mark = marks.get(group) ?? '';
    counts.set(mark, (counts.get(mark) ?? 0) + group.count);
  }
  return counts;
}

function placementNumbers(placements: Iterable<Placement>): number[] {
  return [...placements].flatMap(({ at, turn }) => [at.x, at.y, turn]);
}

export const ringOf = (polygon: Polygon): Rings[number] => coarserRing(polygon).flatMap(({ x, y }) => [x, y]);

/** Items with equal keys together, in the order in which the keys are met; no group is empty. */
function grouped<Item>(items: readonly Item[], keyOf: (item: Item) => string): [Item, ...Item[]][] {
  const groups = new Map<string, [Item, ...Item[]]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group) group.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return [...groups.values()];
}

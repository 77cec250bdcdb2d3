/** The assembled work: its parts where they are placed, the furthest back first, panels sawn to their outlines. */
import { direction } from '../../geometry/point.ts';
import type { Placement, Work } from '../../design/work-model.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { ringsOf } from '../../shop/placed-parts.ts';
import { partName } from '../../shop/work/plan-work.ts';
import type { Drawing, DrawingLayer, DrawnKind, Rings } from '../drawing.ts';
import { drawingBounds } from '../drawing-bounds.ts';
import { drawPanel, ringOf } from '../draw-panel.ts';
import type { MarkedDesign } from '../kind-marks.ts';
import { copiesText } from '../shared-words.ts';

/** What the assembled work is put together from. */
export interface WorkParts extends MarkedDesign {
  readonly panels: readonly LaidPanel[];
}

/** One copy of the work, seen from the front. A part that could not be laid out is left out, and the summary says so. */
export function displayWork(work: Work, parts: WorkParts, title: string): Drawing {
  const fromTheWall = [...work.placements].sort((a, b) => a.layer - b.layer);
  const placed = fromTheWall.map((placement) => ({ placement, layers: partLayers(placement, parts) }));
  const layers = placed.flatMap(({ placement, layers: own }) => own.map((layer) => movedLayer(layer, placement)));
  const missing = placed.filter(({ layers: own }) => own.length === 0).map(({ placement }) => partName(placement.part));
  return {
    title,
    name: work.name,
    heading: `work ${work.name}`,
    bounds: drawingBounds(layers),
    layers,
    texts: [],
    summary: [
      `Work ${work.name}, ${copiesText(work.copies)}`,
      `${placed.length} ${placed.length === 1 ? 'part' : 'parts'} placed, seen from the front`,
      ...(missing.length > 0 ? [`Not drawn, because of errors: ${missing.join(', ')}`] : []),
    ],
  };
}

/** The layers of a part in its own frame; none where it could not be laid out. */
function partLayers({ part }: Placement, parts: WorkParts): DrawingLayer[] {
  const rings = ringsOf(part, parts.panels).map(ringOf);
  switch (part.kind) {
    case 'panel':
      return panelLayers(part.panel.name, rings, parts);
    case 'board':
      return [areaLayer('board', part.board.name, part.board.sheet.name, rings, part.board.range)];
    case 'pour':
      return [areaLayer('resin', part.pour.name, null, rings, part.pour.range)];
  }
}

function panelLayers(name: string, region: Rings, parts: WorkParts): DrawingLayer[] {
  const laid = parts.panels.find(({ panel }) => panel.name === name);
  if (!laid) return [];
  const isCast = parts.blanks.some(
    ({ blank: { cast, takes } }) => cast !== null && takes.some(({ panel }) => panel.name === name),
  );
  const own = drawPanel(laid, parts, null).layers.filter(({ kind }) => kind !== 'region' && kind !== 'outline');
  // in the finished work a trimmed piece looks like any other
  const finished = own.map((layer): DrawingLayer => (layer.kind === 'trimmed' ? { ...layer, kind: 'piece' } : layer));
  const sawn = laid.panel.edge === 'sawn' ? finished.map((layer) => ({ ...layer, clip: region })) : finished;
  return [
    ...(isCast ? [areaLayer('resin', name, null, region, laid.panel.range)] : []),
    ...sawn,
    areaLayer('note', name, null, region, laid.panel.range),
  ].map((layer) => ({ ...layer, name: `${name}: ${layer.name}` }));
}

/** One area as a layer; `wood` tells its look. */
function areaLayer(
  kind: 'board' | 'resin' | 'note',
  name: string,
  wood: string | null,
  rings: Rings,
  range: DrawnKind['range'],
): DrawingLayer {
  const words = { board: 'board', resin: 'resin', note: 'outline' }[kind];
  const shape: DrawnKind = { mark: name, label: `${words} ${name}`, rings, placements: [0, 0, 0], range };
  return { name: words, kind, level: 0, wood, kinds: [shape] };
}

/** p ↦ R(turn)·M·p + at, M: y ↦ −y where mirrored: a mirrored shape is its rings mirrored, and turns the other way. */
function movedLayer(layer: DrawingLayer, placement: Placement): DrawingLayer {
  const { at, turn, mirrored } = placement;
  const along = direction(turn);
  const moved = (x: number, y: number): [number, number] => {
    const up = mirrored ? -y : y;
    return [at.x + x * along.x - up * along.y, at.y + x * along.y + up * along.x];
  };
  const kinds = layer.kinds.map((kind): DrawnKind => ({
    ...kind,
    rings: mirrored ? kind.rings.map((ring) => eachPoint(ring, (x, y) => [x, -y])) : kind.rings,
    placements: triples(kind.placements).flatMap(([x, y, own]) => [...moved(x, y), turn + (mirrored ? -own : own)]),
  }));
  return layer.clip === undefined
    ? { ...layer, kinds }
    : { ...layer, kinds, clip: layer.clip.map((ring) => eachPoint(ring, moved)) };
}

function eachPoint(ring: readonly number[], move: (x: number, y: number) => [number, number]): number[] {
  const moved: number[] = [];
  for (let index = 0; index + 1 < ring.length; index += 2) moved.push(...move(ring[index] ?? 0, ring[index + 1] ?? 0));
  return moved;
}

const triples = (numbers: readonly number[]): [number, number, number][] =>
  Array.from({ length: Math.floor(numbers.length / 3) }, (_, index) => [
    numbers[3 * index] ?? 0,
    numbers[3 * index + 1] ?? 0,
    numbers[3 * index + 2] ?? 0,
  ]);

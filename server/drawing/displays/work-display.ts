/** The assembled work: its parts where they are placed, the furthest back first. */
import { append } from '../../geometry/numbers.ts';
import { direction } from '../../geometry/point.ts';
import type { Placement, Work } from '../../design/work-model.ts';
import { partName } from '../../shop/work/plan-work.ts';
import type { Drawing, DrawingLayer, DrawnKind, Rings } from '../drawing.ts';
import { drawingBounds } from '../drawing-bounds.ts';
import { copiesText } from '../shared-words.ts';
import { partLayers, type WorkParts } from './part-layers.ts';

/** One copy of the work, seen from the front. A part that could not be laid out is left out, and the summary says so. */
export function displayWork(work: Work, parts: WorkParts, title: string): Drawing {
  const fromTheWall = [...work.placements].sort((a, b) => a.layer - b.layer);
  const placed = fromTheWall.map((placement) => ({ placement, layers: partLayers(placement.part, parts) }));
  const layers = placed.flatMap(({ placement, layers: own }) => movedLayers(own, placement));
  const missing = placed.filter(({ layers: own }) => own.length === 0).map(({ placement }) => partName(placement.part));
  return {
    title,
    name: work.name,
    heading: `work ${work.name}`,
    units: parts.design.units,
    // what is cut down to an outline reaches no further than that, which is drawn too
    bounds: drawingBounds(layers.filter(({ clip }) => clip === undefined)),
    layers,
    texts: [],
    summary: [
      `Work ${work.name}, ${copiesText(work.copies)}`,
      `${placed.length} ${placed.length === 1 ? 'part' : 'parts'} placed, seen from the front`,
      ...(placed.length > 1 ? [`From the wall: ${eachOnce(fromTheWall).join(', ')}`] : []),
      ...(missing.length > 0 ? [`Not drawn, because of errors: ${missing.join(', ')}`] : []),
    ],
  };
}

/** "back", "3 × stem": each part once. */
function eachOnce(placements: readonly Placement[]): string[] {
  const names = placements.map(({ part }) => partName(part));
  return [...new Set(names)].map((name) => {
    const count = names.filter((each) => each === name).length;
    return count === 1 ? name : `${count} × ${name}`;
  });
}

/**
 * p ↦ R(turn)·M·p + at, M: y ↦ −y where mirrored: a mirrored shape is its rings mirrored, and turns the other way. Layers
 * with one clip have one clip afterwards.
 */
function movedLayers(layers: readonly DrawingLayer[], { at, turn, mirrored }: Placement): DrawingLayer[] {
  const along = direction(turn);
  const moved = (x: number, y: number): [number, number] => {
    const up = mirrored ? -y : y;
    return [at.x + x * along.x - up * along.y, at.y + x * along.y + up * along.x];
  };
  const movedKind = (kind: DrawnKind): DrawnKind => ({
    ...kind,
    rings: mirrored ? kind.rings.map((ring) => eachPoint(ring, (x, y) => [x, -y])) : kind.rings,
    placements: triples(kind.placements).flatMap(([x, y, own]) => [...moved(x, y), turn + (mirrored ? -own : own)]),
  });
  const clips = new Map<Rings, Rings>();
  for (const { clip } of layers) {
    if (clip && !clips.has(clip))
      clips.set(
        clip,
        clip.map((ring) => eachPoint(ring, moved)),
      );
  }
  return layers.map((layer) => {
    const clip = layer.clip && clips.get(layer.clip);
    return { ...layer, kinds: layer.kinds.map(movedKind), ...(clip && { clip }) };
  });
}

function eachPoint(ring: readonly number[], move: (x: number, y: number) => [number, number]): number[] {
  const moved: number[] = [];
  for (let index = 0; index + 1 < ring.length; index += 2) append(moved, move(ring[index] ?? 0, ring[index + 1] ?? 0));
  return moved;
}

const triples = (numbers: readonly number[]): [number, number, number][] =>
  Array.from({ length: Math.floor(numbers.length / 3) }, (_, index) => [
    numbers[3 * index] ?? 0,
    numbers[3 * index + 1] ?? 0,
    numbers[3 * index + 2] ?? 0,
  ]);

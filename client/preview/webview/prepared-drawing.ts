/** A drawing made ready for painting: every kind's paths are built once, and measured to know when they are out of sight. */
import type { Drawing, DrawingLayer, DrawnKind, Rings } from '../../../server/drawing/drawing.ts';
import { slantedLines, woodLines } from './wood-lines.ts';

export interface PreparedKind {
  readonly kind: DrawnKind;
  readonly path: Path2D;
  /** Lines by which a wood or a fate is told without colour; null for none. */
  readonly lines: Path2D | null;
  /** Furthest reach of the shape from its placement's point, mm. */
  readonly reach: number;
  /** Extent across the shape's axis, mm. */
  readonly thickness: number;
  /** Middle of the shape along its axis, and its extent there, mm. */
  readonly middle: number;
  readonly length: number;
  /** x, y, cosine and sine of the turn, four numbers a placement. */
  readonly places: Float64Array;
}

export interface PreparedLayer {
  readonly layer: DrawingLayer;
  readonly kinds: readonly PreparedKind[];
  readonly clip: Path2D | null;
}

export interface PreparedDrawing {
  readonly drawing: Drawing;
  readonly layers: readonly PreparedLayer[];
}

export function prepared(drawing: Drawing): PreparedDrawing {
  const layers = drawing.layers.map((layer) => ({
    layer,
    kinds: layer.kinds.map((kind) => preparedKind(kind, layer)),
    clip: layer.clip === undefined ? null : pathOf(layer.clip),
  }));
  return { drawing, layers };
}

/** Kinds of layers that are things one can point at. */
export const isThing = ({ kind }: DrawingLayer): boolean => kind !== 'region' && kind !== 'outline' && kind !== 'note';

function preparedKind(kind: DrawnKind, layer: DrawingLayer): PreparedKind {
  const xs = kind.rings.flatMap((ring) => ring.filter((_, index) => index % 2 === 0));
  const ys = kind.rings.flatMap((ring) => ring.filter((_, index) => index % 2 === 1));
  const [left, right] = [least(xs), greatest(xs)];
  return {
    kind,
    path: pathOf(kind.rings),
    lines: linesOf(kind.rings, layer),
    reach: xs.reduce((reach, x, index) => Math.max(reach, Math.hypot(x, ys[index] ?? 0)), 0),
    thickness: greatest(ys) - least(ys),
    middle: (left + right) / 2,
    length: right - left,
    places: placesOf(kind),
  };
}

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Infinity);
const greatest = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), -Infinity);

function linesOf(rings: Rings, { kind, wood }: DrawingLayer): Path2D | null {
  switch (kind) {
    case 'trimmed':
    case 'offcut':
      return slantedLines(rings);
    case 'strip':
    case 'piece':
    case 'board':
      return woodLines(rings, wood, kind === 'board');
    case 'region':
    case 'outline':
    case 'note':
    case 'resin':
      return null;
  }
}

function pathOf(rings: Rings): Path2D {
  const path = new Path2D();
  for (const ring of rings) {
    for (let index = 0; index + 1 < ring.length; index += 2) {
      if (index === 0) path.moveTo(ring[0] ?? 0, ring[1] ?? 0);
      else path.lineTo(ring[index] ?? 0, ring[index + 1] ?? 0);
    }
    path.closePath();
  }
  return path;
}

function placesOf({ placements }: DrawnKind): Float64Array {
  const places = new Float64Array(Math.floor(placements.length / 3) * 4);
  for (let from = 0, to = 0; to < places.length; from += 3, to += 4) {
    const turn = ((placements[from + 2] ?? 0) * Math.PI) / 180;
    places[to] = placements[from] ?? 0;
    places[to + 1] = placements[from + 1] ?? 0;
    places[to + 2] = Math.cos(turn);
    places[to + 3] = Math.sin(turn);
  }
  return places;
}

/** One placement, read out of the packed numbers. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly cosine: number;
  readonly sine: number;
}

/** How many placements a kind has. */
export const placeCount = ({ places }: PreparedKind): number => places.length / 4;

export function placeAt({ places }: PreparedKind, index: number): Place {
  const at = 4 * index;
  return { x: places[at] ?? 0, y: places[at + 1] ?? 0, cosine: places[at + 2] ?? 1, sine: places[at + 3] ?? 0 };
}

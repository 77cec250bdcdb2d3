/** Small random panels of every kind of grid, for laws that must hold on all of them. */
import fc from 'fast-check';
import type { Grid, GridFamily, Panel } from '../../server/design/design-model.ts';
import { type Point, turned } from '../../server/geometry/point.ts';
import {
  atCorner,
  basketGrid,
  diamondGrid,
  fillOf,
  gridOf,
  hemp,
  middle,
  motifOf,
  outlineShape,
  panelOf,
  pieceFrom,
  polygonContour,
  squareHemp,
  stripStock,
  tipOf45,
} from '../design-builder.ts';

export const ash = stripStock('ash', 3);
export const bass = stripStock('bass', 2.5);

/** Spokes from every corner of a cell to its centroid. */
const spokes = (shape: 'rhombus' | 'hexagon' | 'polygon 4' | 'polygon 5', corners: number) =>
  motifOf(`spokes ${corners}`, shape, {
    pieces: Array.from({ length: corners }, (_, index) => pieceFrom('spoke', atCorner(index + 1), middle)),
  });

export const fills = [
  fillOf('triangle', hemp, bass),
  fillOf('square', squareHemp([tipOf45]), bass),
  fillOf('rhombus', spokes('rhombus', 4), bass),
  fillOf('hexagon', spokes('hexagon', 6), bass),
  fillOf('polygon 4', spokes('polygon 4', 4), bass),
  fillOf('polygon 5', spokes('polygon 5', 5), bass),
];

const family = (direction: number, spacing: number, layer: number, positions: number[] | null = null): GridFamily => ({
  direction,
  spacing: positions ? 0 : spacing,
  offset: 0,
  positions,
  stock: ash,
  layer,
  range: { start: 0, end: 0 },
});

type Kind = 'square' | 'three_way' | 'diamond' | 'basket' | 'free spaced' | 'free single';

/** A free grid of two families: spaced unlike, or with single lines across a spaced family. */
export function gridOfKind(kind: Kind, side: number, turn: number, angle: number): Grid {
  if (kind === 'diamond') return diamondGrid(side, angle, ash, turn);
  if (kind === 'basket') return basketGrid(side, ash, turn);
  if (kind === 'square' || kind === 'three_way') return gridOf(kind, side, ash, { turn });
  const places = [-1.7, -0.4, 0.5, 1.9].map((place) => place * side);
  const second = kind === 'free single' ? family(turn + angle, 0, 1, places) : family(turn + angle, side * 1.3, 1);
  return gridOf('square', side, ash, { kind: 'free', turn, families: [family(turn, side, 0), second] });
}

/** A star-shaped polygon about the origin, its corners so far from it: convex or concave, never crossing itself. */
export const starPolygons = (nearest: number, farthest: number) =>
  fc
    .array(fc.integer({ min: nearest, max: farthest }), { minLength: 3, maxLength: 9 })
    .map((radii) => radii.map((radius, index) => turned({ x: radius, y: 0 }, (index * 360) / radii.length + 7)));

export const randomGrids = fc
  .record({
    kind: fc.constantFrom<Kind>('square', 'three_way', 'diamond', 'basket', 'free spaced', 'free single'),
    side: fc.integer({ min: 22, max: 50 }),
    angle: fc.constantFrom(45, 60, 75, 90),
    turn: fc.constantFrom(0, 0, 11, 45, 90),
  })
  .map(({ kind, side, angle, turn }) => gridOfKind(kind, side, turn, angle));

/** The panel of that outline, every opening filled. */
export function panelInOutline(grid: Grid, polygon: readonly Point[], edge: Panel['edge']): Panel {
  const phase = { kind: 'nodeAt', at: { x: 3.7, y: -5.3 } } as const;
  return panelOf(grid, outlineShape(polygonContour(polygon)), { edge, phase, fills });
}

export interface RandomPanel {
  readonly polygon: readonly Point[];
  readonly panel: Panel;
}

/** Panels a few cells wide; a node of the grid lies at a fixed odd place. */
export const randomPanels = fc
  .record({
    polygon: starPolygons(25, 75),
    grid: randomGrids,
    edge: fc.constantFrom('sawn' as const, 'framed' as const),
  })
  .map(({ polygon, grid, edge }): RandomPanel => ({ polygon, panel: panelInOutline(grid, polygon, edge) }));

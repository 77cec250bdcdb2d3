/** Bare lattices of every kind under random outlines, with where their grid's origin must lie by the words of the phase. */
import fc from 'fast-check';
import type { Grid, Panel } from '../../server/design/design-model.ts';
import { type Point, turned } from '../../server/geometry/point.ts';
import { outlineShape, panelOf, polygonContour } from '../design-builder.ts';
import { gridOfKind, starPolygons } from './random-panels.ts';

const phases = fc.oneof(
  fc.record({
    on: fc.constant('place' as const),
    x: fc.integer({ min: -90, max: 90 }),
    y: fc.integer({ min: -90, max: 90 }),
  }),
  fc.record({
    on: fc.constantFrom('node' as const, 'edge' as const, 'cell' as const),
    x: fc.constant(0),
    y: fc.constant(0),
  }),
);

export interface Design {
  readonly panel: Panel;
  readonly ring: readonly Point[];
  /** Where the grid's own origin, a node, lies under the panel. */
  readonly origin: Point;
}

/** From a node to the feature that a phase may centre. */
function featureOf(grid: Grid, name: string, angle: number, on: 'node' | 'edge' | 'cell'): Point {
  const [side, turn] = [grid.side, grid.families[0]?.direction ?? 0];
  if (on === 'node') return { x: 0, y: 0 };
  if (on === 'edge') return turned({ x: side / 2, y: 0 }, turn);
  if (name === 'square') return turned({ x: side / 2, y: side / 2 }, turn);
  if (name === 'three_way') return turned({ x: side / 2, y: side / (2 * Math.sqrt(3)) }, turn);
  return turned({ x: side * Math.cos((angle * Math.PI) / 360), y: 0 }, turn + angle / 2);
}

const lattices = fc.record({
  name: fc.constantFrom(
    'square' as const,
    'three_way' as const,
    'diamond' as const,
    'basket' as const,
    'free spaced' as const,
  ),
  side: fc.integer({ min: 14, max: 60 }),
  angle: fc.constantFrom(38, 50, 60, 75, 90),
  turn: fc.constantFrom(0, 0, 11, 30, 45, 90, 163),
  layers: fc.shuffledSubarray([0, 1, 2], { minLength: 3, maxLength: 3 }),
  fit: fc.constantFrom(0, 0.05),
  bothSlants: fc.boolean(),
});

export const randomDesigns = fc
  .record({
    lattice: lattices,
    ring: starPolygons(15, 110),
    phase: phases,
    edge: fc.constantFrom('sawn' as const, 'framed' as const),
    stub: fc.constantFrom(0, 4.3),
    tail: fc.constantFrom(0, 3.1, 6, 11.7),
  })
  .map(({ lattice: { name, side, angle, turn, layers, fit, bothSlants }, ring, phase, edge, stub, tail }): Design => {
    const plain = gridOfKind(name, side, turn, angle);
    const families = plain.families.map((family, index) => ({ ...family, layer: layers[index] ?? index }));
    const grid = { ...plain, families, fit, bothSlants };
    const at = { x: phase.x / 7, y: phase.y / 7 };
    const shape = outlineShape(polygonContour(ring));
    const more = { edge, stub, tail } as const;
    if (phase.on === 'place')
      return { panel: panelOf(grid, shape, { ...more, phase: { kind: 'nodeAt', at } }), ring, origin: at };
    const on = name === 'basket' || name === 'free spaced' ? 'node' : phase.on;
    const feature = featureOf(grid, name, angle, on);
    const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
    const middle = { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
    const origin = { x: middle.x - feature.x, y: middle.y - feature.y };
    return { panel: panelOf(grid, shape, { ...more, phase: { kind: 'centred', on } }), ring, origin };
  });

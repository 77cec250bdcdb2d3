/** Wood and openings make up the region; pieces share no wood but in laps. Unions by flatten-js, which the engine does not use. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Motif } from '../../server/design/design-model.ts';
import { radians } from '../../server/geometry/point.ts';
import { signedArea } from '../../server/geometry/polygons.ts';
import { cellClasses } from '../../server/lattice/cells/cell-classes.ts';
import { fillOpening } from '../../server/lattice/motif/fill-opening.ts';
import { lineFamilies } from '../../server/lattice/grid/grid-lines.ts';
import { periodOf } from '../../server/lattice/grid/grid-period.ts';
import type { Polygon } from '../../server/lattice/laid-panel.ts';
import { layOutPanel } from '../../server/lattice/lay-out-panel.ts';
import {
  basketGrid,
  cellsShape,
  diamondGrid,
  gridOf,
  hemp,
  panelOf,
  squareHemp,
  stripStock,
  tipOf45,
} from '../design-builder.ts';
import { unionArea } from '../independent-polygons.ts';

describe('a framed panel in cells', () => {
  it('is its openings and its strips, less one lap t²/sin θ at every node', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 2, max: 9 }),
        fc.double({ min: 14, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 5, noNaN: true }),
        fc.constantFrom(90, 75, 60, 45),
        (across, up, side, face, angle) => {
          const stock = stripStock('ash', face);
          const grid = angle === 90 ? gridOf('square', side, stock) : diamondGrid(side, angle, stock);
          const { panel } = layOutPanel(panelOf(grid, cellsShape(across, up), { edge: 'framed' }));
          if (!panel) throw new Error('the panel was refused');
          const families = lineFamilies(grid, { x: 0, y: 0 });
          const period = periodOf(families);
          const opening = period ? (cellClasses(families, period, 0).classes[0]?.opening ?? []) : [];
          const lap = face ** 2 / Math.sin(radians(angle));
          // between slanted ends a strip's wood is its axis length inside the region times its face
          const slant = face / Math.tan(radians(angle));
          const strips = panel.strips.reduce(
            (sum, { length, placements }) => sum + placements.length * (length - slant) * face,
            0,
          );
          const laps = (across - 1) * (up - 1) * lap;
          const total = across * up * signedArea(opening) + strips - laps;
          expect(Math.abs(total - panel.areaMm2)).toBeLessThan(1e-6 * panel.areaMm2 + 1e-3);
        },
      ),
    );
  });
});

describe('infill', () => {
  const stock = stripStock('bass', 2.5);
  const ring = (name: string): Polygon => {
    const grid = name === 'square' ? gridOf('square', 40, stock) : basketGrid(40, stock);
    const families = lineFamilies(grid, { x: 0, y: 0 });
    const period = periodOf(families);
    const classes = period ? cellClasses(families, period, 0).classes : [];
    return classes.find(({ shape }) => shape === name)?.frame ?? [];
  };

  it.each<[string, Motif]>([
    ['triangle', hemp],
    ['square', squareHemp([tipOf45])],
    ['square', squareHemp([])],
  ])('of a %s shares no wood: the union of its pieces has the sum of their areas', (shape, motif) => {
    const { pieces } = fillOpening(ring(shape), motif, stock, []);
    const sum = pieces.reduce((total, { ground }) => total + signedArea(ground), 0);
    expect(unionArea(pieces.map(({ ground }) => ground))).toBeCloseTo(sum, 4);
    expect(sum).toBeLessThan(signedArea(ring(shape)));
  });
});

/** Volumes and masses by hand, by other geometry, and by what must add up. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { direction } from '../../../server/geometry/point.ts';
import { areaOf, intersectionOf } from '../../../server/geometry/polygons.ts';
import type { NotchRun, Polygon } from '../../../server/lattice/laid-panel.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { bar, massOfPanel } from '../../../server/shop/mass/mass.ts';
import { notchedVolume } from '../../../server/shop/mass/notched-volume.ts';
import { densityAt } from '../../../server/shop/wood/density.ts';
import { builtInWoods } from '../../../server/shop/wood/wood-table.ts';
import { cellsShape, gridOf, hexagonShape, panelOf, stripStock } from '../../design-builder.ts';
import { handMadePanel } from '../../hand-made-panel.ts';

const notch = (more: Partial<NotchRun>): NotchRun => ({
  first: 50,
  step: 0,
  count: 1,
  width: 3,
  angle: 90,
  depth: 5,
  from: 'above',
  ...more,
});
const left = (notches: NotchRun[], flush = 0): number =>
  notchedVolume({ outline: bar(100, 3), depth: 10, notches, flush });

describe('what notches leave of a bar 100 × 3 × 10', () => {
  test('square notches take width × face × depth each', () => {
    expect(left([])).toBeCloseTo(3000, 9);
    expect(left([notch({ first: 10, step: 20, count: 5 })])).toBeCloseTo(3000 - 5 * 45, 9);
  });

  test('a slanting one takes its run: 3 / sin 60° × 3 × 5', () => {
    expect(left([notch({ angle: 60 })])).toBeCloseTo(3000 - (45 * 2) / Math.sqrt(3), 9);
  });

  /**
   * Bands 3 wide at 60° and 120° share the rhombus 9 / sin 60° = 10.392, whose tips at y = ±3 the faces at ±1.5 cut
   * off: two triangles 1.5 high and 2·1.5·tan 30° wide, 1.299 each. So 7.794 is shared.
   */
  test('two slants of one node from one face share wood', () => {
    const both = [notch({ angle: 60 }), notch({ angle: 120 })];
    const shared = 18 / Math.sqrt(3) - 2 * 1.5 * 1.5 * Math.tan(Math.PI / 6);
    expect(left(both)).toBeCloseTo(3000 - (90 * 2) / Math.sqrt(3) + 5 * shared, 9);
    const opposite = [notch({ angle: 60, depth: 3 }), notch({ angle: 120, depth: 3, from: 'below' })];
    expect(left(opposite)).toBeCloseTo(3000 - (54 * 2) / Math.sqrt(3), 9);
  });

  test('planing flush takes a layer of each face, and the notches’ air with it', () => {
    expect(left([], 0.5)).toBeCloseTo(2700, 9);
    expect(left([notch({})], 0.5)).toBeCloseTo(2700 - 9 * 4.5, 9);
    expect(left([notch({ depth: 0.4 })], 0.5)).toBeCloseTo(2700, 9);
  });

  test('agrees with general clipping of the two bands', () => {
    const band = (place: number, angle: number, width: number): Polygon => {
      const along = direction(angle);
      const at = (s: number, t: number) => ({ x: place + s * along.x + t * along.y, y: s * along.y - t * along.x });
      return [at(-99, width / 2), at(99, width / 2), at(99, -width / 2), at(-99, -width / 2)].reverse();
    };
    const angle = fc.integer({ min: 25, max: 155 });
    const place = fc.integer({ min: 40, max: 60 });
    fc.assert(
      fc.property(angle, angle, place, place, fc.integer({ min: 1, max: 5 }), (one, two, at, other, width) => {
        const bands = [band(at, one, width), band(other, two, width)];
        const [first, second] = bands.map((each) => Math.abs(areaOf(intersectionOf([bar(100, 3)], [each]))));
        const common = intersectionOf(intersectionOf([bar(100, 3)], [bands[0] ?? []]), [bands[1] ?? []]);
        const volume = left([
          notch({ first: at, angle: one, width }),
          notch({ first: other, angle: two, width, depth: 3 }),
        ]);
        const expected = 3000 - 5 * (first ?? 0) - 3 * (second ?? 0) + 3 * Math.abs(areaOf(common));
        expect(Math.abs(volume - expected)).toBeLessThan(0.05);
      }),
    );
  });
});

describe('the mass of a panel', () => {
  const woodOf = (name: string | null) => builtInWoods.get(name ?? '');
  const densityOf = ({ wood }: { wood: string | null }): number | null => {
    const found = woodOf(wood);
    return found ? densityAt(found, 12) : null;
  };

  /** Strips 72 and 52 long, 3 × 10, a notch of 3.05 × 3 × 5 each; two pieces of 57.75 mm² × 10. Ash 672, basswood 414.4 kg/m³. */
  test('by hand', () => {
    const { parts, perCopy } = massOfPanel(handMadePanel, densityOf);
    expect(parts.map(({ stock, part }) => [stock.name, part])).toEqual([
      ['ash', 'strips'],
      ['bass', 'infill'],
    ]);
    expect(parts[0]?.volume).toBeCloseTo(124 * 30 - 2 * 45.75, 9);
    expect(parts[1]?.volume).toBeCloseTo(2 * 577.5, 9);
    expect(perCopy).toBeCloseTo((3628.5 * 672 + 1155 * 414.4) / 1e6, 9);
  });

  test('is not known where a wood is not', () => {
    const { parts, perCopy } = massOfPanel(handMadePanel, (stock) => (stock.name === 'ash' ? 700 : null));
    expect(parts.map(({ mass }) => mass === null)).toEqual([false, true]);
    expect(perCopy).toBeNull();
  });

  test('square grid of no fit: the halves removed at each crossing are one strip’s body there', () => {
    const { panel } = layOutPanel(panelOf(gridOf('square', 40, stripStock('ash', 3)), cellsShape(5, 4)));
    if (!panel) throw new Error('no panel');
    const bodies = panel.strips.reduce((sum, { length, placements }) => sum + length * 30 * placements.length, 0);
    expect(panel.nodes).toBe(30);
    expect(massOfPanel(panel, () => 1e6).perCopy).toBeCloseTo(bodies - 30 * 90, 6);
  });

  /** The lowest strip of a three-way grid loses both slants, 2/3 deep: 2·rhombus − the middle they share, worked out above. */
  test('three-way grid of no fit: the lowest strip', () => {
    const { panel } = layOutPanel(panelOf(gridOf('three_way', 40, stripStock('ash', 3)), hexagonShape(2)));
    const lowest = panel?.strips.find(({ layer }) => layer === 0);
    if (!panel || !lowest) throw new Error('no lowest strip');
    const nodes = lowest.notches.filter(({ angle }) => angle < 90).reduce((sum, { count }) => sum + count, 0);
    const rhombus = 18 / Math.sqrt(3);
    const middle = rhombus - 2 * 1.5 * 1.5 * Math.tan(Math.PI / 6);
    const only = { ...panel, strips: [{ ...lowest, placements: lowest.placements.slice(0, 1) }] };
    expect(nodes).toBeGreaterThan(1);
    expect(massOfPanel(only, () => 1e6).perCopy).toBeCloseTo(
      lowest.length * 30 - (nodes * (2 * rhombus - middle) * 20) / 3,
      6,
    );
  });

  test('turning a panel’s grid leaves its mass', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 89 }), (turn) => {
        const masses = [0, turn].map((each) => {
          const grid = gridOf('three_way', 40, stripStock('ash', 3), { turn: each });
          const { panel } = layOutPanel(panelOf(grid, hexagonShape(2)));
          return panel ? massOfPanel(panel, () => 700).perCopy : null;
        });
        expect(masses[1]).toBeCloseTo(masses[0] ?? 0, 6);
      }),
      { numRuns: 10 },
    );
  });
});

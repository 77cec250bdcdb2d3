/** Grids of every family arrangement through the one mechanism: counts by closed formulas. */
import { describe, expect, it } from 'vitest';
import { signedArea } from '../../../server/geometry/polygons.ts';
import { cellClasses } from '../../../server/lattice/cells/cell-classes.ts';
import { lineFamilies } from '../../../server/lattice/grid/grid-lines.ts';
import { periodOf } from '../../../server/lattice/grid/grid-period.ts';
import { nodesOfPeriod } from '../../../server/lattice/grid/lattice-nodes.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import {
  basketGrid,
  circleContour,
  diamondGrid,
  gridOf,
  outlineShape,
  panelOf,
  stripStock,
} from '../../design-builder.ts';

const stock = stripStock('ash', 3);
const here = { x: 0, y: 0 };

function periodPartsOf(grid: ReturnType<typeof gridOf>) {
  const families = lineFamilies(grid, here);
  const period = periodOf(families);
  if (!period) throw new Error('the grid has no period');
  const { classes, closed } = cellClasses(families, period, grid.turn);
  const area = Math.abs(period.first.x * period.second.y - period.first.y * period.second.x);
  return { classes, closed, area, nodes: nodesOfPeriod(families, period).length };
}

describe('one period', () => {
  it.each([0, 15, 90, 123])('of a basket weave turned %i°: two triangles and a hexagon for three nodes', (turn) => {
    const { classes, closed, area, nodes } = periodPartsOf(basketGrid(40, stock, turn));
    const share = Math.round(area / (40 * 40 * 2 * Math.sqrt(3)));
    expect(closed).toBe(0);
    expect(classes.map(({ shape }) => shape).sort()).toEqual([
      ...Array<string>(share).fill('hexagon'),
      ...Array<string>(2 * share).fill('triangle'),
    ]);
    expect(nodes).toBe(3 * share);
  });

  it.each([30, 60, 90, 120])('of a diamond grid of %i°: one rhombus (a square at 90°)', (angle) => {
    const { classes, nodes } = periodPartsOf(diamondGrid(40, angle, stock));
    expect(classes.map(({ shape }) => shape)).toEqual([angle === 90 ? 'square' : 'rhombus']);
    expect(nodes).toBe(1);
  });

  it('of a basket weave leaves openings inset by half a strip from every side', () => {
    const { classes } = periodPartsOf(basketGrid(40, stock));
    const triangle = classes.find(({ shape }) => shape === 'triangle');
    const hexagon = classes.find(({ shape }) => shape === 'hexagon');
    // an equilateral triangle of side s inset by t/2 has side s − t√3; a hexagon, side s − t/√3
    const triangleSide = 40 - 3 * Math.sqrt(3);
    const hexagonSide = 40 - 3 / Math.sqrt(3);
    expect(signedArea(triangle?.opening ?? [])).toBeCloseTo((Math.sqrt(3) / 4) * triangleSide ** 2, 6);
    expect(signedArea(hexagon?.opening ?? [])).toBeCloseTo(((3 * Math.sqrt(3)) / 2) * hexagonSide ** 2, 6);
  });
});

describe('a basket weave in a circle about a node', () => {
  it('counts the nodes that a brute force over its lines counts', () => {
    const { panel } = layOutPanel(panelOf(basketGrid(40, stock), outlineShape(circleContour(200))));
    const root3 = Math.sqrt(3);
    const nodes = new Set<string>();
    for (let i = -20; i <= 20; i++) {
      for (let j = -20; j <= 20; j++) {
        // lines y = 40√3·i; −√3/2 x + y/2 = 40√3·j; −√3/2 x − y/2 = 40√3(j + ½), solved pair by pair
        const [low, middle, high] = [40 * root3 * i, 40 * root3 * j, 40 * root3 * (j + 0.5)];
        const pairs = [
          { x: (low / 2 - middle) / (root3 / 2), y: low },
          { x: (-low / 2 - high) / (root3 / 2), y: low },
        ];
        const slanted = [40 * root3 * i, high];
        pairs.push({ x: -((slanted[0] ?? 0) + (slanted[1] ?? 0)) / root3, y: (slanted[0] ?? 0) - (slanted[1] ?? 0) });
        for (const { x, y } of pairs) nodes.add(`${x.toFixed(4)} ${y.toFixed(4)}`.replaceAll('-0.0000', '0.0000'));
      }
    }
    const within = [...nodes]
      .map((text) => text.split(' ').map(Number))
      .filter(([x, y]) => Math.hypot(x ?? 0, y ?? 0) <= 200.001);
    expect(panel?.nodes).toBe(within.length);
  });
});

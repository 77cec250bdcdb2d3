/** Check values of the lattice. Sources: closed formulas as written beside each; OEIS A000328; bevels of hemp leaf by common practice. */
import { describe, expect, it } from 'vitest';
import type { LaidPanel } from '../../server/lattice/laid-panel.ts';
import type { Grid } from '../../server/design/design-model.ts';
import { distance, type Point } from '../../server/geometry/point.ts';
import { distanceToSegment } from '../../server/geometry/region.ts';
import { cellClasses } from '../../server/lattice/cells/cell-classes.ts';
import { dividedParts } from '../../server/lattice/motif/divided-parts.ts';
import { lineFamilies } from '../../server/lattice/grid/grid-lines.ts';
import { periodOf } from '../../server/lattice/grid/grid-period.ts';
import { placeNode } from '../../server/design/node-place.ts';
import {
  circleContour,
  cellsShape,
  fillOf,
  gridOf,
  hemp,
  hexagonShape,
  outlineShape,
  panelOf,
  squareHemp,
  stripStock,
  tipOf45,
} from '../design-builder.ts';
import { laidOut } from '../laid-out.ts';
import { markKinds } from '../../server/shop/marks/mark-kinds.ts';

const ash = stripStock('ash', 3);
const bass = stripStock('bass', 3);
const threeWay = gridOf('three_way', 40, ash);
const square = gridOf('square', 40, ash);

const countOf = (panel: LaidPanel, fate: 'whole' | 'trimmed'): number =>
  panel.pieces.filter((group) => group.fate === fate).reduce((sum, { count }) => sum + count, 0);

const stripCount = (panel: LaidPanel): number =>
  panel.strips.reduce((sum, { placements }) => sum + placements.length, 0);

describe('hemp leaf in a three-way grid of side 40, faces 3', () => {
  const panel = laidOut(panelOf(threeWay, hexagonShape(2), { fills: [fillOf('triangle', hemp, bass)] }));
  const { pieces } = markKinds([panel]);

  it('is one kind of arm: length s/√3 − t_g, long edges shorter by (t/2)(cot 30° + cot 60°)', () => {
    expect(pieces).toHaveLength(1);
    const arm = pieces[0]?.shape;
    expect(arm?.length).toBeCloseTo(40 / Math.sqrt(3) - 3, 9);
    expect(arm?.length).toBeCloseTo(20.094, 4);
    expect(arm?.edges[0]).toBeCloseTo(16.6299, 4);
    expect(arm?.edges[1]).toBeCloseTo(16.6299, 4);
  });

  it('has 60°/60° at the hub and 30°/30° at the corner (common practice)', () => {
    const bevels = pieces[0]?.shape.ends.map((end) => end.bevels?.map((angle) => Math.round(angle * 1000) / 1000));
    expect(bevels).toEqual([
      [60, 60],
      [30, 30],
    ]);
  });

  it('has a plan area of 55.0859 mm²', () => {
    const outline = pieces[0]?.shape.outline ?? [];
    const area = outline.reduce((sum, p, i) => {
      const q = outline[(i + 1) % outline.length] ?? p;
      return sum + (p.x * q.y - q.x * p.y) / 2;
    }, 0);
    expect(area).toBeCloseTo(55.0859, 4);
  });
});

describe('hemp leaf in a square grid of pitch 40, faces 3', () => {
  const lengthsOf = (tips: Parameters<typeof squareHemp>[0]) => {
    const panel = laidOut(
      panelOf(square, cellsShape(2, 2), { edge: 'framed', fills: [fillOf('square', squareHemp(tips), bass)] }),
    );
    return markKinds([panel]).pieces.map(({ mark, shape, make }) => ({
      mark,
      make,
      length: Number(shape.length.toFixed(4)),
      bevels: shape.ends.map(({ bevels }) => bevels?.map((angle) => Number(angle.toFixed(3)))),
    }));
  };

  it('with the 45° tip: diagonal 37√2, short arm 14.4472, long arms 26.6950 with 22.5 and 67.5 (common practice)', () => {
    expect(lengthsOf([tipOf45])).toEqual([
      {
        mark: 'A1',
        make: 16,
        length: 26.695,
        bevels: [
          [67.5, 67.5],
          [22.5, 22.5],
        ],
      },
      {
        mark: 'A2',
        make: 8,
        length: 14.4472,
        bevels: [
          [45, 45],
          [45, 45],
        ],
      },
      {
        mark: 'D',
        make: 4,
        length: 52.3259,
        bevels: [
          [45, 45],
          [45, 45],
        ],
      },
    ]);
  });

  it('without a declared tip: hub bevels 67.5/56.25 and 56.25/56.25', () => {
    const arms = lengthsOf([]).filter(({ mark }) => mark.startsWith('A'));
    expect(arms.map(({ bevels }) => bevels[0])).toEqual([
      [67.5, 56.25],
      [56.25, 56.25],
    ]);
  });
});

describe('openings', () => {
  const openingOf = (grid: Grid) => {
    const families = lineFamilies(grid, { x: 0, y: 0 });
    const period = periodOf(families);
    if (!period) throw new Error('the grid has no period');
    return cellClasses(families, period, grid.turn).classes[0]?.frame ?? [];
  };
  const sidesOf = (ring: readonly Point[]) =>
    ring.map((corner, index) => distance(corner, ring[(index + 1) % ring.length] ?? corner));

  it('of the three-way grid have sides s − t√3 = 34.8038', () => {
    for (const side of sidesOf(openingOf(threeWay))) expect(side).toBeCloseTo(34.8038, 4);
  });

  it('of the square grid halved by a 3 mm diagonal have legs 37 − 1.5√2 = 34.8787 and an incentre 10.2157 from each side', () => {
    const [one] = openingOf(square);
    const three = openingOf(square)[2];
    if (!one || !three) throw new Error('the opening has no corners');
    const { parts: halves } = dividedParts(openingOf(square), [{ from: one, to: three, face: 3 }]);
    expect(halves).toHaveLength(2);
    for (const half of halves) {
      const [leg, otherLeg] = sidesOf(half).sort((a, b) => a - b);
      expect(leg).toBeCloseTo(34.8787, 4);
      expect(otherLeg).toBeCloseTo(34.8787, 4);
      const centre = placeNode({ kind: 'incentre' }, half);
      if (!centre) throw new Error('the half has no incentre');
      half.forEach((corner, index) => {
        const next = half[(index + 1) % half.length] ?? corner;
        expect(distanceToSegment(centre, corner, next)).toBeCloseTo(10.2157, 4);
      });
    }
  });
});

describe('regions in cells', () => {
  it('framed 5 × 4 cells of pitch 40: 4 strips of 157 … as clear lengths 197 and 157, 20 openings', () => {
    const panel = laidOut(panelOf(square, cellsShape(5, 4), { edge: 'framed' }));
    const lengths = panel.strips.map(({ length, placements }) => [Number(length.toFixed(4)), placements.length]);
    expect(lengths.sort()).toEqual([
      [157, 4],
      [197, 3],
    ]);
    expect(panel.cells).toEqual([{ shape: 'square', met: 20, needed: 0 }]);
    expect(panel.areaMm2).toBeCloseTo(197 * 157, 6);
  });

  it('sawn 5 × 4 cells: the outer lines are strips, 203 × 163', () => {
    const panel = laidOut(panelOf(square, cellsShape(5, 4)));
    expect(stripCount(panel)).toBe(11);
    expect(panel.areaMm2).toBeCloseTo(203 * 163, 6);
  });

  it.each([1, 2, 3, 5, 8])(
    'hexagon of %i cells a side: 6n² triangles, 18n² arms, strips 3(3n²+n) sides in 2(n+1) kinds',
    (n) => {
      const panel = laidOut(panelOf(threeWay, hexagonShape(n), { fills: [fillOf('triangle', hemp, bass)] }));
      expect(panel.cells).toEqual([{ shape: 'triangle', met: 6 * n * n, needed: 6 * n * n }]);
      expect(countOf(panel, 'whole')).toBe(18 * n * n);
      const sides = panel.strips.reduce(
        (sum, { length, placements }) => sum + ((length - 12) / 40) * placements.length,
        0,
      );
      expect(sides).toBeCloseTo(3 * (3 * n * n + n), 6);
      expect(markKinds([panel]).strips).toHaveLength(2 * (n + 1));
    },
  );

  it.each([2, 3, 6])('the same hexagon framed: strip length (9n² − 3n) sides before the frame faces', (n) => {
    const panel = laidOut(panelOf(threeWay, hexagonShape(n), { edge: 'framed' }));
    // each strip stops at the frame's faces, which lie less than half a side from its last node
    const sides = panel.strips.reduce(
      (sum, { length, placements }) => sum + Math.round(length / 40) * placements.length,
      0,
    );
    expect(sides).toBe(9 * n * n - 3 * n);
  });

  it.each([
    [3, 2],
    [5, 7],
  ])('parallelogram %i × %i of a three-way grid: 2mn triangles', (m, n) => {
    const panel = laidOut(panelOf(threeWay, cellsShape(m, n)));
    expect(panel.cells).toEqual([{ shape: 'triangle', met: 2 * m * n, needed: 0 }]);
  });
});

describe('nodes in a circle about a node', () => {
  it.each([
    [1, 5],
    [2, 13],
    [3, 29],
    [4, 49],
    [5, 81],
    [10, 317],
  ])('square grid, radius %i pitches: %i (OEIS A000328)', (n, count) => {
    expect(laidOut(panelOf(square, outlineShape(circleContour(40 * n)))).nodes).toBe(count);
  });

  it.each([
    [1, 7],
    [2, 19],
    [3, 37],
    [4, 61],
    [5, 91],
    [10, 367],
  ])('three-way grid, radius %i sides: %i (Loeschian counts)', (n, count) => {
    expect(laidOut(panelOf(threeWay, outlineShape(circleContour(40 * n)))).nodes).toBe(count);
  });
});

describe('a sawn circle of radius 150 about a node, hemp in every triangle', () => {
  const panel = laidOut(
    panelOf(threeWay, outlineShape(circleContour(150)), { fills: [fillOf('triangle', hemp, bass)] }),
  );

  it('meets 138 openings and makes 276 whole and 66 trimmed arms (brute force)', () => {
    expect(panel.cells[0]?.met).toBe(138);
    expect([countOf(panel, 'whole'), countOf(panel, 'trimmed')]).toEqual([276, 66]);
  });

  it('has the area of the circle', () => {
    expect(panel.areaMm2).toBeCloseTo(Math.PI * 150 ** 2, 6);
  });
});

describe('strips of a three-way grid (common practice)', () => {
  const panel = laidOut(panelOf(threeWay, hexagonShape(3)));
  const { strips } = markKinds([panel]);

  it('has two kinds of full strip: the lowest turned over is the highest, the middle is handed', () => {
    const full = strips.filter(
      ({ groups }) => Math.round((((groups[0]?.group.length ?? 0) - 12) / 40) * 1000) / 1000 === 6,
    );
    expect(full).toHaveLength(2);
    expect(full.map(({ groups }) => new Set(groups.map(({ group }) => group.family)).size).sort()).toEqual([1, 2]);
    expect(full.map(({ groups }) => groups[0]?.group.hand === null).sort()).toEqual([false, true]);
  });

  it('gives the middle strip no hand where both slants are cut on both sides', () => {
    const both = laidOut(panelOf(gridOf('three_way', 40, ash, { bothSlants: true }), hexagonShape(3)));
    expect(panel.strips.filter(({ hand }) => hand !== null).length).toBeGreaterThan(0);
    expect(both.strips.filter(({ hand }) => hand !== null)).toEqual([]);
    const middle = both.strips.filter(({ family }) => family === 2);
    for (const { notches } of middle)
      expect(new Set(notches.map(({ from, angle }) => `${from} ${angle}`)).size).toBe(4);
  });

  it('cuts two thirds from one side on the outer layers and a third from each on the middle', () => {
    for (const { family, notches } of panel.strips) {
      const depths = new Set(notches.map(({ depth }) => Number(depth.toFixed(4))));
      const sides = new Set(notches.map(({ from }) => from));
      expect([...depths]).toEqual([family === 2 ? 3.3333 : 6.6667]);
      expect(sides.size).toBe(family === 2 ? 2 : 1);
    }
  });
});

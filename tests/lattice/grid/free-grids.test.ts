/** Free grids: the same strips and cells as kinds with a name, every point accounted for, and what can't be lapped. */
import { describe, expect, it } from 'vitest';
import { told } from '../../told.ts';
import { analyse } from '../../../server/analyse.ts';
import type { Grid, GridFamily } from '../../../server/design/design-model.ts';
import { cross, direction, distance, dot, subtract } from '../../../server/geometry/point.ts';
import { cellClasses } from '../../../server/lattice/cells/cell-classes.ts';
import { periodOf } from '../../../server/lattice/grid/grid-period.ts';
import type { LaidPanel } from '../../../server/lattice/laid-panel.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { panelRegion } from '../../../server/lattice/grid/panel-region.ts';
import { markKinds } from '../../../server/shop/marks/mark-kinds.ts';
import {
  basketGrid,
  circleContour,
  fillOf,
  gridOf,
  hemp,
  outlineShape,
  panelOf,
  squareHemp,
  stripStock,
  tipOf45,
} from '../../design-builder.ts';
import { designOf, only } from '../../design/design-of.ts';
import { laidOut } from '../../laid-out.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const ash = stripStock('ash', 3);
const bass = stripStock('bass', 2.5);

/** The same lines, each written out: nothing of it is known to repeat. */
function writtenOut(grid: Grid): Grid {
  const steps = Array.from({ length: 41 }, (_, index) => index - 20);
  const families = grid.families.map((family): GridFamily => {
    const positions = steps.map((step) => family.offset + step * family.spacing);
    return { ...family, positions, spacing: 0, offset: 0 };
  });
  return { ...grid, kind: 'free', families };
}

/** Everything that is counted or made. */
function listOf(panel: LaidPanel) {
  const { pieces, strips } = markKinds([panel]);
  return {
    nodes: panel.nodes,
    cells: panel.cells.map(({ shape, met, needed }) => [shape, met, needed]).sort(),
    pieces: pieces.map(({ mark, whole, trimmed, shape }) => [mark, whole, trimmed, shape.length.toFixed(3)]),
    strips: strips.map(({ mark, make, groups }) => [mark, make, groups[0]?.group.length.toFixed(3)]),
  };
}

describe('a grid written out line by line', () => {
  it.each([
    ['square', gridOf('square', 40, ash, { turn: 20 })],
    ['three-way', gridOf('three_way', 40, ash)],
    ['basket weave', basketGrid(30, ash, 10)],
  ])('is the %s grid it was written from: the same nodes, cells, pieces and strips', (_, grid) => {
    const fills = [fillOf('triangle', hemp, bass), fillOf('square', squareHemp([tipOf45]), bass)];
    const shape = outlineShape(circleContour(130, { x: 7, y: -4 }));
    const phase = { kind: 'nodeAt', at: { x: 3, y: 5 } } as const;
    for (const edge of ['sawn', 'framed'] as const) {
      const panel = panelOf(grid, shape, { edge, fills, phase });
      expect(listOf(laidOut({ ...panel, grid: writtenOut(grid) }))).toEqual(listOf(laidOut(panel)));
    }
  });
});

describe('a grid without a period', () => {
  const grid = only(
    designOf(
      'strip ash { section face 3 depth 10 }\nstrip bass { section face 2 depth 10 }\n' +
        'grid own { free  family 0deg of ash spacing 41  family 73deg of bass spacing 57  family 121deg at 0, 90, 210  of ash }',
    ).grids,
  );

  it('has every point of its region in one opening or in a strip, never in both (brute force over points)', () => {
    const panel = panelOf(grid, outlineShape(circleContour(140)), { edge: 'framed' });
    const { families, region } = panelRegion(panel);
    expect(periodOf(families)).toBeNull();
    const { classes } = cellClasses(families, region.bounds, 0);
    const bodies = laidOut(panel).strips.flatMap(({ length, stock, placements }) =>
      placements.map(({ at, turn }) => ({ at, along: direction(turn), length, half: stock.face / 2 })),
    );
    for (let x = -139; x <= 139; x += 2.03) {
      for (let y = -139; y <= 139; y += 2.01) {
        if (Math.hypot(x, y) > 139.9) continue;
        const inStrip = bodies.some(({ at, along, length, half }) => {
          const offset = subtract({ x, y }, at);
          const reach = dot(offset, along);
          return Math.abs(cross(along, offset)) <= half && reach >= 0 && reach <= length;
        });
        const inOpening = classes.some(({ opening }) =>
          opening.every((corner, index) => {
            const next = opening[(index + 1) % opening.length] ?? corner;
            return cross(subtract(next, corner), subtract({ x, y }, corner)) >= 0;
          }),
        );
        expect(inStrip).not.toBe(inOpening);
      }
    }
  });

  it('has its strips of their own faces and woods, two kinds of notch in each', () => {
    const panel = laidOut(panelOf(grid, outlineShape(circleContour(140)), { edge: 'framed' }));
    const lowest = panel.strips.filter(({ family }) => family === 1);
    const widths = new Set(lowest.flatMap(({ notches }) => notches.map(({ width }) => width)));
    expect(lowest.every(({ stock }) => stock.name === 'ash')).toBe(true);
    expect([...widths].sort()).toEqual([2, 3]);
  });
});

describe('a cell beyond the last line of a family', () => {
  // y = 0, the line at 60° through 0, 0 and the one at 120° through 100, 0: a triangle of side 100
  const lines = `family 0deg at 0 family 60deg at 0 family 120deg at ${-50 * Math.sqrt(3)}`;
  const cellsIn = (circle: string) => {
    const { panels, problems } = analyse(
      `strip ash { section face 3 depth 10 }\ngrid own { free ${lines} of ash }\nmotif hemp for triangle { node hub at incentre piece arm from corner to hub, every corner }\n` +
        `outline o { ${circle} }\npanel p { grid own node at 0, 0 shape o fill triangle with hemp of ash }`,
    );
    return { panel: only(panels), problems };
  };

  it('is filled where lines of the others close it, wherever they do', () => {
    const { panel, problems } = cellsIn('circle at 50, 30 radius 20');
    expect(problems.map(({ code }) => code)).toEqual(['LAP0409', 'LAP0409', 'LAP0409']);
    expect(panel.cells).toEqual([{ shape: 'triangle', met: 1, needed: 1 }]);
    const [cell] = panel.filledCells();
    const [one = { x: 0, y: 0 }, two = one] = cell?.opening ?? [];
    expect(distance(one, two)).toBeCloseTo(100 - 3 * Math.sqrt(3), 6);
  });

  it('stays open where nothing closes it', () => {
    expect(cellsIn('circle at 50, -30 radius 20').panel.cells).toEqual([{ shape: 'other', met: 1, needed: 0 }]);
  });
});

describe('strips that can’t be lapped', () => {
  const problemsOf = (families: string) => {
    const design = designOf(
      `strip ash { section face 3 depth 10 }\ngrid own { free  of ash  ${families} }\npanel p { grid own  shape 300 x 300 }`,
    );
    return layOutPanel(only(design.panels)).problems;
  };
  const root3 = Math.sqrt(3);

  it('four through one point are an error at the last of them', () => {
    const families = 'family 0deg spacing 40 family 90deg spacing 40 family 45deg spacing 40 family 135deg spacing 40';
    const [problem] = problemsOf(families);
    expect(problem?.code).toBe('LAP0404');
    expect(told(problem)).toContain('4 strips (0°, 90°, 45°, 135°)');
  });

  it('three that share wood without a common point are an error, until they lie apart by more than their faces', () => {
    // an equilateral triangle with centre lines of inradius r: the bodies share its middle while r < face/2
    const families = (offset: number) =>
      `family 0deg spacing 80  family 60deg spacing 80  family 120deg spacing 80 offset ${offset}`;
    expect(problemsOf(families(3 * 1.4)).map(({ code }) => code)).toEqual(['LAP0405']);
    expect(problemsOf(families(3 * 1.6))).toEqual([]);
    expect(problemsOf(families(0))).toEqual([]);
  });

  it('two side by side closer than their faces are an error with both figures', () => {
    const [problem] = problemsOf(
      'family 0deg spacing 40  family 0deg spacing 40 offset 2  family 90deg spacing 40 layer 3',
    );
    expect(told(problem)).toContain('lie 2 mm from centre to centre, and their faces need 3 mm');
  });

  it('a three-way grid written as free families is none of these', () => {
    const spacing = 20 * root3;
    const families = [0, 60, 120].map((direction) => `family ${direction}deg spacing ${spacing}`).join('\n');
    expect(problemsOf(families)).toEqual([]);
  });
});

describe('what is checked after assembly', () => {
  const planOfGrid = (families: string) => {
    const analysis = analyse(
      `strip ash { section face 3 depth 10 }\ngrid own { free  of ash  ${families} }\npanel p { grid own  shape 300 x 200 }`,
    );
    return planAtSight(analysis, 'p.lap').grids[0]?.check;
  };

  it('is ten sides along a strip where lines are equally far apart, 40/sin 60° on the first family’s strips', () => {
    const check = planOfGrid('family 0deg spacing 40  family 60deg spacing 40');
    expect(check?.what).toBe('ten sides along a strip');
    expect(check?.mm).toBeCloseTo(400 / Math.sin(Math.PI / 3), 3);
  });

  it('is the span of a family at places of its own', () => {
    const check = planOfGrid('family 0deg spacing 40  family 90deg at -95, -30, 0, 60, 110');
    expect(check?.what).toContain('family 2, first to last strip');
    expect(check?.mm).toBe(205);
  });
});

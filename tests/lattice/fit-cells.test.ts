/** So many cells in a given size: pitches and frame widths against closed forms worked out by hand. */
import { describe, expect, it } from 'vitest';
import { told } from '../told.ts';
import { analyse } from '../../server/analyse.ts';
import { fitByFrame, fitByPitch, resizedGrid } from '../../server/design/builders/fit-cells.ts';
import { boundsOf } from '../../server/geometry/polygons.ts';
import { cellsShape, gridOf, panelOf, stripStock } from '../design-builder.ts';
import { laidOut } from '../laid-out.ts';
import { planAtSight } from '../plan-at-sight.ts';

const ash = stripStock('ash', 3);
const root3 = Math.sqrt(3);

describe('a fit by pitch', () => {
  it('of a square grid is (width + t)/m framed and (width − t)/m sawn', () => {
    const grid = gridOf('square', 40, ash);
    // 21 pitches less a face are 900: 903/21 = 43; and 8 · 43 − 3 = 341
    const framed = fitByPitch(grid, { across: 21, up: 8, width: 900, height: 341, edge: 'framed' });
    expect(framed?.sides.across).toBeCloseTo(43, 9);
    expect(framed?.sides.up).toBeCloseTo(43, 9);
    const sawn = fitByPitch(grid, { across: 21, up: 8, width: 906, height: 347, edge: 'sawn' });
    expect(sawn?.sides.across).toBeCloseTo(43, 9);
  });

  it('of a three-way grid is width/m across, from upright edge to edge through nodes, and (height + t)·2/(n√3) up', () => {
    const grid = gridOf('three_way', 40, ash);
    const fit = fitByPitch(grid, { across: 12, up: 5, width: 500, height: 200, edge: 'framed' });
    expect(fit?.sides.across).toBeCloseTo(500 / 12, 9);
    expect(fit?.sides.up).toBeCloseTo((203 * 2) / (5 * root3), 9);
    expect(fit?.side).toBe(Math.min(fit?.sides.across ?? 0, fit?.sides.up ?? 0));
    expect(fit?.leftOver.across).toBeCloseTo(0, 9);
    expect(fit?.leftOver.up).toBeCloseTo(200 - ((5 * root3) / 2) * (fit?.side ?? 0) + 3, 9);
  });

  it('lays the square panel out in the size that was asked for', () => {
    const grid = gridOf('square', 40, ash);
    const fit = fitByPitch(grid, { across: 7, up: 4, width: 333, height: 222, edge: 'framed' });
    const panel = panelOf(resizedGrid(grid, fit?.side ?? 0), cellsShape(7, 4), { edge: 'framed' });
    const { left, right, bottom, top } = boundsOf(laidOut(panel).region.flat());
    expect(right - left).toBeCloseTo(333 - (fit?.leftOver.across ?? 0), 6);
    expect(top - bottom).toBeCloseTo(222 - (fit?.leftOver.up ?? 0), 6);
  });
});

describe('a three-way panel that is fitted', () => {
  const fileOf = (edge: string): string =>
    `strip ash { section face 3 depth 10 }\ngrid net { three_way  side 40  of ash }\npanel p { grid net  shape fit 9 x 6 cells in 360 x 200 by pitch  edge ${edge} }\n`;
  /** Up: (200 ± 3)·2/(6√3) is less than 360/9, so that is the side, and some of the width is left over. */
  it.each([
    ['framed', 203],
    ['sawn', 197],
  ] as const)('is a rectangle, %s', (edge, rows) => {
    const { panels } = analyse(fileOf(edge));
    const [laid] = panels;
    const side = (rows * 2) / (6 * root3);
    expect(laid?.panel.grid.side).toBeCloseTo(side, 9);
    const { left, right, bottom, top } = boundsOf(laid?.region.flat() ?? []);
    expect([right - left, top - bottom]).toEqual([expect.closeTo(9 * side, 6), expect.closeTo(200, 6)]);
    // Level strips: those between the six rows, and sawn the two outer ones too, which the size is measured over.
    const level = (laid?.strips ?? []).filter(({ family }) => family === 1).flatMap(({ placements }) => placements);
    expect(level).toHaveLength(edge === 'sawn' ? 7 : 5);
    // Upright edges through nodes cut 2 triangles of each row at each side in half: 9 sides hold 18 − 1 whole ones and 2 halves.
    expect(laid?.cells.map(({ met }) => met)).toEqual([6 * (17 + 2)]);
  });
});

describe('a fit by frame', () => {
  it('of a square grid leaves half of what the cells leave to each side', () => {
    const fit = fitByFrame(gridOf('square', 40, ash), { across: 21, up: 8, width: 900, height: 380, edge: 'framed' });
    // 21 · 40 − 3 = 837 of 900; 8 · 40 − 3 = 317 of 380
    expect(fit?.members?.sides).toBeCloseTo(31.5, 9);
    expect(fit?.members?.rails).toBeCloseTo(31.5, 9);
  });

  it('of a three-way grid measures between upright sides', () => {
    const fit = fitByFrame(gridOf('three_way', 40, ash), { across: 5, up: 4, width: 240, height: 180, edge: 'framed' });
    expect(fit?.members?.sides).toBeCloseTo((240 - 200) / 2, 9);
    expect(fit?.members?.rails).toBeCloseTo((180 - (80 * root3 - 3)) / 2, 9);
  });
});

describe('in a file', () => {
  const fileOf = (shape: string, edge = 'framed'): string =>
    `strip ash { section face 3 depth 10 }\ngrid net { square  pitch 40  of ash }\npanel p { grid net  shape ${shape}  edge ${edge} }\n`;

  it('a fit that comes out both ways is laid out with its pitch and says nothing', () => {
    const { panels, problems } = analyse(fileOf('fit 21 x 8 cells in 900 x 341 by pitch'));
    expect(problems).toEqual([]);
    expect(panels[0]?.panel.grid.side).toBeCloseTo(43, 9);
    expect(panels[0]?.cells[0]?.met).toBe(168);
  });

  it('one that does not says so at its words, with what is left and the counts beside', () => {
    const text = fileOf('fit 21 x 8 cells in 900 x 380 by pitch');
    const { problems, panels } = analyse(text);
    const [problem] = problems;
    expect(problem?.code).toBe('LAP0706');
    expect(text.slice(problem?.range.start, problem?.range.end)).toBe('fit 21 x 8 cells in 900 x 380 by pitch');
    expect(told(problem)).toContain('across they take a side of 43 mm, up 47.88 mm');
    // 380 − 341 = 39, half of it on either side; 21 x 9 takes 383/9
    expect(told(problem)).toContain('39 mm are left over up. Give the frame 19.5 mm more');
    expect(told(problem)).toContain('21 x 9 (side 43 mm across, 42.56 mm up)');
    expect(panels.length).toBe(1);
  });

  it('one by frame that leaves nothing is an error, one with unlike members a warning', () => {
    expect(analyse(fileOf('fit 21 x 8 cells in 830 x 380 by frame')).problems[0]?.code).toBe('LAP0707');
    const [uneven] = analyse(fileOf('fit 21 x 8 cells in 900 x 400 by frame')).problems;
    expect(uneven?.code).toBe('LAP0706');
    expect(told(uneven)).toContain('31.5 mm wide at the sides and 41.5 mm at top and bottom');
  });

  it('a sawn panel has no frame to give way', () => {
    const [problem] = analyse(fileOf('fit 21 x 8 cells in 900 x 380 by frame', 'sawn')).problems;
    expect(told(problem)).toContain('A sawn panel has no frame');
  });
});

it('the plan states the pitch that was found: no lattice is made of the declared one', () => {
  const analysis = analyse(
    'strip ash { section face 3 depth 10 }\ngrid net { square  pitch 40  of ash }\npanel p { grid net  shape fit 21 x 8 cells in 900 x 341 by pitch }\n',
  );
  const plan = planAtSight(analysis, 'p.lap');
  expect(plan.grids.map(({ name, tenSidesMm }) => [name, tenSidesMm])).toEqual([['net in p', 430]]);
});

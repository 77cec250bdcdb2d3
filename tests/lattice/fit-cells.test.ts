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

describe('a fit of a grid whose strips lean alike to either side', () => {
  const fileOf = (shape: string, edge = 'framed', kind = 'diamond 60deg'): string =>
    `strip ash { section face 3 depth 10 }\ngrid net { ${kind}  side 40  of ash }\npanel p { grid net  shape ${shape}  edge ${edge} }\n`;

  // rhombi of side s whose strips rise by 30° are 2s·cos 30° = s√3 wide and 2s·sin 30° = s high
  it.each(['framed', 'sawn'])('is an upright rectangle whose edges run through the nodes, %s', (edge) => {
    const { panels, problems } = analyse(fileOf(`fit 10 x 8 cells in ${String(10 * 30 * root3)} x 240 by pitch`, edge));
    const [laid] = panels;
    expect(problems.filter(({ code }) => code === 'LAP0706')).toEqual([]);
    expect(laid?.panel.grid.side).toBeCloseTo(30, 9);
    const { left, right, bottom, top } = boundsOf(laid?.region.flat() ?? []);
    expect([right - left, top - bottom]).toEqual([expect.closeTo(300 * root3, 6), expect.closeTo(240, 6)]);
    // nodes at whole halves of a rhombus, in every other place: 11 × 9 and 10 × 8 between them
    expect(laid?.nodes).toBe(11 * 9 + 10 * 8);
    // rhombi have their middles in the places between: 10 × 9 and 11 × 8
    expect(laid?.cells.map(({ met }) => met)).toEqual([10 * 9 + 11 * 8]);
  });

  it('tells what does not come out, and leaves rails and sides by frame', () => {
    const [uneven] = analyse(fileOf('fit 10 x 8 cells in 500 x 341 by pitch')).problems;
    expect(uneven?.message).toContain('across they take a side of 28.87 mm, up 42.63 mm');
    const { panels } = analyse(fileOf(`fit 5 x 4 cells in ${String(200 * root3 + 60)} x 220 by frame`));
    const { sides = 0, rails = 0 } = panels[0]?.panel.fit?.members ?? {};
    expect(sides).toBeCloseTo(30, 9);
    expect(rails).toBeCloseTo(30, 9);
  });

  it('is that of squares on their corners too, and refused where strips lean otherwise', () => {
    const squares = analyse(
      fileOf(
        `fit 5 x 4 cells in ${String(200 * Math.SQRT2)} x ${String(160 * Math.SQRT2)} by pitch`,
        'framed',
        'diamond 90deg',
      ),
    );
    expect(squares.panels[0]?.panel.grid.side).toBeCloseTo(40, 9);
    const turned = analyse(fileOf('fit 5 x 4 cells in 300 x 200 by pitch', 'framed', 'three_way turn 10deg'));
    expect(turned.panels).toEqual([]);
    expect(turned.problems.map(({ code }) => code)).toEqual(['LAP0303']);
    expect(turned.problems[0]?.message).toContain('the strips of this grid lean');
  });
});

describe('the frame of a fit by frame', () => {
  const fileOf = (): string =>
    `strip ash { section face 3 depth 10 }\nstrip rail { section face 20 depth 14 }\ngrid net { square  pitch 40  of ash }\n` +
    'panel p { grid net  shape fit 21 x 8 cells in 900 x 400 by frame  frame { of rail  groove 6 } }\n';

  it('is as wide as its strip round the counts beside: (900 − 40 + 3)/20 and (400 − 40 + 3)/9', () => {
    const { problems } = analyse(fileOf());
    expect(problems.map(({ code, severity }) => `${severity} ${code}`)).toEqual(['warning LAP0706', 'error LAP0711']);
    expect(problems[0]?.message).toContain('20 x 9 (side 43.15 mm across, 40.33 mm up)');
  });

  it('is no wider than its strip is milled', () => {
    const text = fileOf();
    const [, wide] = analyse(text).problems;
    expect(text.slice(wide?.range.start, wide?.range.end)).toBe('frame');
    expect(wide?.message).toContain('members come out 41.5 mm wide, and `rail` is milled 20 mm wide');
    expect(analyse(text.replace('face 20', 'face 41.5')).problems.map(({ code }) => code)).toEqual(['LAP0706']);
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

/** Frames: member lengths, stubs in their groove and fillers against closed forms worked out by hand. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import type { Frame, Grid, Panel, PanelShape } from '../../server/design/design-model.ts';
import { fitByFrame } from '../../server/design/builders/fit-cells.ts';
import { frameMembers, groovePieces } from '../../server/lattice/frame-members.ts';
import { cutPlanOf } from '../shop/planned.ts';
import { cellsShape, gridOf, hexagonShape, panelOf, stripStock } from '../design-builder.ts';
import { laidOut } from '../laid-out.ts';
import { told } from '../told.ts';

const ash = stripStock('ash', 3);
const maple = stripStock('maple', 20, { depth: 30, lengths: [{ length: 900, price: null }] });
const frame: Frame = {
  stock: maple,
  corners: 'mitred',
  joint: 'groove',
  jointDepth: 6,
  endGap: 0.5,
  bearing: null,
  range: { start: 2, end: 4 },
};
const root3 = Math.sqrt(3);

const framed = (grid: Grid, shape: PanelShape, more: Partial<Frame> = {}, panel: Partial<Panel> = {}): Panel =>
  panelOf(grid, shape, { edge: 'framed', stub: 5.5, frame: { ...frame, ...more }, ...panel });

const membersOf = (panel: Panel) => frameMembers(laidOut(panel), panel.frame ?? frame);

describe('members', () => {
  const square = gridOf('square', 40, ash);

  it('of 5 x 4 square cells are 197 and 157 inside, and longer by twice their width to the long points', () => {
    // 5 · 40 − 3 and 4 · 40 − 3; 20 wide: + 40
    expect(membersOf(framed(square, cellsShape(5, 4)))).toMatchObject([
      { inner: 197, length: 237, ends: [45, 45], count: 2 },
      { inner: 157, length: 197, ends: [45, 45], count: 2 },
    ]);
    expect(membersOf(framed(square, cellsShape(5, 4), { corners: 'lapped' }))).toMatchObject([
      { length: 237, ends: [90, 90], count: 2 },
      { length: 197, ends: [90, 90], count: 2 },
    ]);
  });

  it('of a three-way parallelogram add w/tan 30° at the sharp corners and w/tan 60° at the wide ones', () => {
    const [long] = membersOf(framed(gridOf('three_way', 40, ash), cellsShape(5, 4)));
    expect(long?.inner).toBeCloseTo(200 - 6 / root3, 6);
    expect((long?.length ?? 0) - (long?.inner ?? 0)).toBeCloseTo(20 * root3 + 20 / root3, 6);
    expect([...(long?.ends ?? [])].map(Math.round).sort()).toEqual([30, 60]);
  });

  it('of a hexagon are six equal ones, cut at 60°', () => {
    const members = membersOf(framed(gridOf('three_way', 40, ash), hexagonShape(2)));
    expect(members.length).toBe(1);
    expect(members[0]?.count).toBe(6);
    expect((members[0]?.length ?? 0) - (members[0]?.inner ?? 0)).toBeCloseTo(40 / root3, 6);
    expect(members[0]?.ends[0]).toBeCloseTo(60, 6);
  });

  it('of unlike widths meet in a mitre from inner to outer corner', () => {
    const fit = fitByFrame(square, { across: 21, up: 8, width: 900, height: 400, edge: 'framed' });
    const [rail, side] = membersOf(framed(square, cellsShape(21, 8), {}, { fit }));
    // 837 inside and sides of 31.5; 317 inside and rails of 41.5
    expect(rail).toMatchObject({ width: 41.5, length: 900 });
    expect(side).toMatchObject({ width: 31.5, length: 400 });
    expect(rail?.ends[0]).toBeCloseTo((Math.atan2(41.5, 31.5) * 180) / Math.PI, 6);
    expect((rail?.ends[0] ?? 0) + (side?.ends[0] ?? 0)).toBeCloseTo(90, 6);
  });
});

describe('strips in a groove of 6 with 0.5 free', () => {
  const lengthsOf = (grid: Grid, inFrame: boolean): number[] =>
    laidOut(framed(grid, cellsShape(3, 3), {}, inFrame ? {} : { frame: null, stub: 0 })).strips.map(
      ({ length }) => length,
    );

  it('run 5.5 into it square on', () => {
    expect(lengthsOf(gridOf('square', 40, ash), true)).toEqual(
      lengthsOf(gridOf('square', 40, ash), false).map((length) => length + 11),
    );
  });

  it('at 60° run in until a corner of their end has 5.5: S·sin 60° + 3·cos 60° = 5.5', () => {
    const stub = (5.5 - 3 / 2) / (root3 / 2);
    const bare = lengthsOf(gridOf('three_way', 40, ash), false);
    lengthsOf(gridOf('three_way', 40, ash), true).forEach((length, index) =>
      expect(length).toBeCloseTo((bare[index] ?? 0) + 2 * stub, 6),
    );
  });
});

it('a groove is filled by 18 fillers of 37 between the strips of 5 x 4 cells, or by four border strips', () => {
  const panel = laidOut(framed(gridOf('square', 40, ash), cellsShape(5, 4)));
  const [filler, ...others] = groovePieces(panel, 'fillers');
  expect(others).toEqual([]);
  expect(filler?.length).toBeCloseTo(37, 6);
  expect(filler?.count).toBe(2 * 5 + 2 * 4);
  expect(groovePieces(panel, 'border').map(({ length, count }) => [Math.round(length), count])).toEqual([
    [197, 2],
    [157, 2],
  ]);
});

describe('in a file', () => {
  const fileOf = (frameText: string, shape = '5 x 4 cells'): string =>
    `strip ash { section face 3 depth 10 }\nstrip maple { section face 20 depth 30  lengths 900 }\n` +
    `grid net { square  pitch 40  of ash }\nmotif brace for square { piece brace from corner 1 to corner 3 }\n` +
    `outline disc { circle radius 120 }\n` +
    `panel p { grid net  shape ${shape}  frame { of maple  ${frameText} }  fill square with brace of ash  copies 2 }\n`;

  it('edge infill over an empty groove is reported with both ways out', () => {
    const [problem] = analyse(fileOf('groove 6')).problems;
    expect(problem?.code).toBe('LAP0709');
    expect(told(problem)).toContain('(18 of 37 mm), each 6 mm wide');
    expect(told(problem)).toContain('(2 of 197 mm, 2 of 157 mm)');
    expect(analyse(fileOf('groove 6  fillers')).problems).toEqual([]);
    expect(analyse(fileOf('stub 6')).problems).toEqual([]);
  });

  it('a frame along a curve is reported', () => {
    expect(analyse(fileOf('stub 6', 'disc')).problems.map(({ code }) => code)).toContain('LAP0708');
  });

  it('members stand in the plan and are cut from the sticks of their strip', async () => {
    const grid = gridOf('square', 40, ash);
    const plan = await cutPlanOf([framed(grid, cellsShape(5, 4), { bearing: 'fillers' }, { copies: 2 })]);
    expect(plan.frames).toMatchObject([
      {
        panel: 'blade',
        stock: 'maple',
        members: [
          { mark: 'F1', lengthMm: 237, innerMm: 197, widthMm: 20, make: 4 },
          { mark: 'F2', lengthMm: 197, innerMm: 157, widthMm: 20, make: 4 },
        ],
        groovePieces: [{ mark: 'G1', lengthMm: 37, widthMm: 6, make: 36 }],
      },
    ]);
    const cuts = plan.stock
      .filter(({ stock }) => stock === 'maple')
      .flatMap(({ sticks }) => sticks.flatMap(({ cuts: each, count }) => each.map(({ mark, n }) => [mark, n * count])));
    const total = (mark: string) => cuts.reduce((sum, [cut, n]) => (cut === mark ? sum + Number(n) : sum), 0);
    expect([total('F1'), total('F2')]).toEqual([4, 4]);
  });
});

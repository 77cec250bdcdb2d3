/** Pieces in one opening: bevels round a node, laps, tips, and what is refused. */
import { describe, expect, it } from 'vitest';
import type { MotifPiece } from '../../../server/design/design-model.ts';
import { benchProblems } from '../../../server/lattice/checks/bench-checks.ts';
import { fillOpening } from '../../../server/lattice/motif/fill-opening.ts';
import type { LaidPanel } from '../../../server/lattice/laid-panel.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { signedArea } from '../../../server/geometry/polygons.ts';
import { markKinds } from '../../../server/shop/marks/mark-kinds.ts';
import {
  atCorner,
  atMidEdge,
  middle,
  benchOf,
  cellsShape,
  fillOf,
  gridOf,
  hemp,
  hexagonShape,
  motifOf,
  panelOf,
  pieceFrom,
  squareHemp,
  stripStock,
  tipOf45,
} from '../../design-builder.ts';
import { told } from '../../told.ts';

const stock = stripStock('bass', 3);
const side = 37;
const squareOpening = [
  { x: 0, y: 0 },
  { x: side, y: 0 },
  { x: side, y: side },
  { x: 0, y: side },
];

const fill = (pieces: readonly MotifPiece[], dividers: readonly MotifPiece[] = []) =>
  fillOpening(squareOpening, motifOf('trial', 'square', { pieces, dividers }), stock, []);

const bevelsOf = (pieces: readonly MotifPiece[]) =>
  fill(pieces).pieces.map(({ shape }) =>
    shape.ends.map(({ bevels }) => bevels?.map((angle) => Number(angle.toFixed(3)))),
  );

describe('bevels', () => {
  it('round a node sum to 360°: eight spokes from the middle, each 22.5/22.5', () => {
    const spokes = [1, 2, 3, 4].flatMap((number) => [
      pieceFrom('arm', middle, atCorner(number)),
      pieceFrom('rib', middle, atMidEdge(number)),
    ]);
    const atMiddle = bevelsOf(spokes).map((ends) => ends.find((pair) => pair?.[0] === 22.5 && pair[1] === 22.5));
    expect(atMiddle.flat().reduce<number>((sum, angle) => sum + (angle ?? 0), 0)).toBeCloseTo(360, 9);
  });

  it('are a mitre where two pieces meet alone: single slanted cuts that sum to 180', () => {
    const [first] = bevelsOf([pieceFrom('one', atCorner(1), middle), pieceFrom('two', middle, atCorner(2))]);
    const mitre = first?.find((pair) => Math.abs((pair?.[0] ?? 0) + (pair?.[1] ?? 0) - 180) < 1e-6 && pair?.[0] !== 90);
    expect(mitre?.slice().sort((a, b) => a - b)).toEqual([45, 135]);
  });

  it('are square where a piece ends alone, and where it butts against the middle of an edge', () => {
    expect(bevelsOf([pieceFrom('peg', atMidEdge(1), middle)])).toEqual([
      [
        [90, 90],
        [90, 90],
      ],
    ]);
  });

  it('against a piece that runs through are its face: the butt ends half a face short', () => {
    const { pieces } = fill([pieceFrom('rail', atMidEdge(4), atMidEdge(2)), pieceFrom('post', atMidEdge(1), middle)]);
    expect(pieces.map(({ role, shape }) => [role, Number(shape.length.toFixed(6))])).toEqual([
      ['rail', 37],
      ['post', 17],
    ]);
  });
});

describe('laps', () => {
  it('halve two crossing diagonals, which are then one kind, laid on one another by a flip', () => {
    const cross = motifOf('cross', 'square', {
      dividers: [pieceFrom('diagonal', atCorner(1), atCorner(3)), pieceFrom('diagonal', atCorner(2), atCorner(4))],
      fills: [{ parts: { kind: 'every' }, motif: hemp, tips: [], range: { start: 0, end: 0 } }],
    });
    const { pieces, problems } = fillOpening(squareOpening, cross, stock, []);
    expect(problems).toEqual([]);
    const [one, two] = pieces;
    const [notch] = one?.shape.notches ?? [];
    expect(one?.shape.notches).toHaveLength(1);
    expect(notch?.first).toBeCloseTo((37 * Math.SQRT2) / 2, 9);
    expect(notch?.angle).toBeCloseTo(90, 9);
    expect([notch?.width, notch?.depth, notch?.from]).toEqual([3, 5, 'above']);
    expect(two?.shape.notches[0]?.from).toBe('above');
    expect(pieces.filter(({ role }) => role === 'arm')).toHaveLength(12);
  });

  it('of three pieces are three-way laps of a third each', () => {
    const { panel } = layOutPanel(
      panelOf(gridOf('three_way', 60, stock), hexagonShape(1), {
        fills: [
          fillOf(
            'triangle',
            motifOf('star', 'triangle', {
              pieces: [1, 2, 3].map((number) => pieceFrom('bar', atCorner(number), atMidEdge((number % 3) + 1))),
            }),
            stock,
          ),
        ],
      }),
    );
    const depths = panel?.pieces.flatMap(({ shape }) => shape.notches.map(({ depth }) => Number(depth.toFixed(3))));
    expect([...new Set(depths)].sort()).toEqual([3.333, 6.667]);
  });

  it('of four pieces at one place are refused', () => {
    const bars = [
      pieceFrom('a', atCorner(1), atCorner(3)),
      pieceFrom('b', atCorner(2), atCorner(4)),
      pieceFrom('c', atMidEdge(1), atMidEdge(3)),
      pieceFrom('d', atMidEdge(2), atMidEdge(4)),
    ];
    expect(fill(bars).problems.map(({ code }) => code)).toEqual(['LAP0505']);
  });
});

describe('a motif that cannot be made is told at its words', () => {
  it('a tip that leaves a neighbour nothing names the range it may have', () => {
    const arms = squareHemp([{ ...tipOf45, angle: 120 }]);
    const { problems } = fillOpening(squareOpening, arms, stock, []);
    expect(problems[0]?.code).toBe('LAP0503');
    expect(told(problems[0])).toContain('below 90°');
  });

  it('two pieces on one line from one node', () => {
    const { problems } = fill([pieceFrom('long', atCorner(1), atCorner(3)), pieceFrom('short', atCorner(1), middle)]);
    expect(problems.map(({ code }) => code)).toContain('LAP0505');
  });

  it('a corner the cell does not have', () => {
    expect(fill([pieceFrom('arm', atCorner(5), middle)]).problems.map(({ code }) => code)).toEqual(['LAP0501']);
  });

  it('a grid finer than its strips, and more pieces than are planned', () => {
    const fine = layOutPanel(panelOf(gridOf('square', 3, stock), cellsShape(2, 2)));
    expect(fine.problems.map(({ code }) => code)).toEqual(['LAP0401']);
    const many = layOutPanel(
      panelOf(gridOf('square', 4, stock), cellsShape(2000, 2000), { fills: [fillOf('square', squareHemp([]), stock)] }),
    );
    expect(many.problems.map(({ code }) => code)).toEqual(['LAP0701']);
  });
});

describe('the bench', () => {
  const grid = gridOf('square', 40, stock);
  const panel = layOutPanel(
    panelOf(grid, cellsShape(2, 2), { fills: [fillOf('square', squareHemp([tipOf45]), stock)] }),
  ).panel as LaidPanel;

  it('with 22.5, 45 and 67.5 makes the square hemp leaf; without 67.5 it names the nearest jig', () => {
    expect(benchProblems([benchOf({ bevels: [22.5, 45, 67.5], kerf: null })], [grid], [panel])).toEqual([]);
    const [problem] = benchProblems([benchOf({ bevels: [22.5, 45, 60], kerf: null })], [grid], [panel]);
    expect(problem?.code).toBe('LAP0507');
    expect(told(problem)).toContain('67.5°');
    expect(told(problem)).toContain('the nearest, 60°');
  });

  it('whose blade is wider than the notch says how to mill the strips', () => {
    const [problem] = benchProblems([benchOf({ bevels: [], kerf: 3.2 })], [{ ...grid, fit: 0.05 }], []);
    expect(problem?.code).toBe('LAP0403');
    expect(told(problem)).toContain('3.15 mm');
    expect(benchProblems([benchOf({ bevels: [], kerf: 3.05 })], [{ ...grid, fit: 0.05 }], [])).toEqual([]);
  });
});

describe('marks', () => {
  it('do not change when panels are listed the other way round', () => {
    const make = (cells: number) =>
      layOutPanel(
        panelOf(gridOf('three_way', 40, stock), hexagonShape(cells), {
          name: `p${cells}`,
          fills: [fillOf('triangle', hemp, stock)],
        }),
      ).panel as LaidPanel;
    const panels = [make(1), make(2)];
    const marks = (list: readonly LaidPanel[]) =>
      markKinds(list).strips.map(({ mark, groups }) => [mark, groups[0]?.group.length.toFixed(2)]);
    expect(marks([...panels].reverse())).toEqual(marks(panels));
  });

  it('stand for pieces whose area is that of their outline (convex, counter-clockwise)', () => {
    const { pieces } = fillOpening(squareOpening, squareHemp([tipOf45]), stock, []);
    for (const { shape, ground } of pieces) expect(signedArea(shape.outline)).toBeCloseTo(signedArea(ground), 6);
  });
});

/** Notches too near an end or one another, walls, short pieces and slivers: figures worked out by hand. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import type { Panel } from '../../../server/design/design-model.ts';
import { benchProblems } from '../../../server/lattice/checks/bench-checks.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { stripProblems } from '../../../server/lattice/checks/strip-checks.ts';
import {
  benchOf,
  cellsShape,
  circleContour,
  fillOf,
  gridOf,
  hemp,
  outlineShape,
  panelOf,
  stripStock,
} from '../../design-builder.ts';
import { told } from '../../told.ts';

const ash = stripStock('ash', 3);
const bass = stripStock('bass', 2.5);

const problemsOf = (panel: Panel) => {
  const { panel: laid } = layOutPanel(panel);
  return laid ? stripProblems([laid]) : [];
};

describe('a crossing near the end of a strip', () => {
  const shape = { kind: 'rectangle', width: 200, height: 160, range: { start: 3, end: 9 } } as const;
  const nodeAt = (x: number): Panel =>
    panelOf(gridOf('square', 40, ash), shape, { edge: 'framed', phase: { kind: 'nodeAt', at: { x: x - 100, y: 20 } } });

  it('whose notch breaks out is reported at the shape, with its distance', () => {
    const [problem, ...others] = problemsOf(nodeAt(1));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: 'LAP0406', severity: 'warning', range: { start: 3, end: 9 } });
    expect(told(problem)).toContain('the nearest is 1 mm from it, and the notch breaks out');
  });

  it('is none where the notch stays inside, and one again where that wall is too thin', () => {
    // 4 mm from the end, a notch of 3 leaves 2.5
    expect(problemsOf(nodeAt(4))).toEqual([]);
    const panel = nodeAt(4);
    const [problem] = problemsOf({ ...panel, grid: { ...panel.grid, wall: 2.6 } });
    expect(told(problem)).toContain('2.5 mm of wood are left, less than the 2.6 mm asked for');
  });
});

describe('notches of different nodes', () => {
  const pitchOf = (pitch: number, fit: number, wall: number | null): Panel =>
    panelOf(gridOf('square', pitch, ash, { fit, wall, sideRange: { start: 5, end: 7 } }), cellsShape(3, 3));

  it('that run into one another are an error at the grid’s size', () => {
    // centres 3.2 apart, notches 3.5 wide
    const problems = problemsOf(pitchOf(3.2, 0.5, null));
    expect(problems).toMatchObject([{ code: 'LAP0407', severity: 'error', range: { start: 5, end: 7 } }]);
    expect(told(problems[0])).toContain('run 0.3 mm into one another');
  });

  it('that leave less than the stated wall are a warning, with the figure', () => {
    expect(problemsOf(pitchOf(6, 0.05, null))).toEqual([]);
    expect(problemsOf(pitchOf(6, 0.05, 2.9))).toEqual([]);
    expect(told(problemsOf(pitchOf(6, 0.05, 3))[0])).toContain('a wall of 2.95 mm, less than the 3 mm');
  });

  it('of one node are none: the two cuts of a three-way strip', () => {
    expect(problemsOf(panelOf(gridOf('three_way', 40, ash, { wall: 5 }), cellsShape(3, 3), { tail: 10 }))).toEqual([]);
  });
});

describe('a piece shorter than the jigs hold', () => {
  it('is reported once at the motif with both lengths (an arm of 20.0940, geometry of the hemp leaf)', () => {
    const grid = gridOf('three_way', 40, ash);
    const { panel } = layOutPanel(panelOf(grid, cellsShape(2, 2), { fills: [fillOf('triangle', hemp, ash)] }));
    const check = (shortestPiece: number) => benchProblems([benchOf({ shortestPiece })], [], panel ? [panel] : []);
    expect(check(20)).toEqual([]);
    const problems = check(25);
    expect(new Set(problems.map((problem) => told(problem))).size).toBe(1);
    expect(problems[0]?.code).toBe('LAP0510');
    expect(told(problems[0])).toContain('20.09 mm long');
  });
});

describe('slivers of a sawn panel', () => {
  const panel = panelOf(gridOf('three_way', 40, ash), outlineShape(circleContour(150)), {
    fills: [fillOf('triangle', hemp, bass)],
    sliver: 6,
  });

  it('are the trimmed pieces that keep less than stated, each with its cell and place', () => {
    const laid = layOutPanel(panel);
    const slivers = laid.panel?.slivers ?? [];
    expect(slivers.length).toBeGreaterThan(0);
    for (const { at, keptMm, row, column } of slivers) {
      expect(keptMm).toBeLessThan(6);
      // what is kept of a piece that the circle cuts lies just inside it
      expect(Math.hypot(at.x, at.y)).toBeGreaterThan(150 - 6);
      expect(Math.hypot(at.x, at.y)).toBeLessThan(150);
      expect(Math.min(row, column)).toBeGreaterThan(0);
    }
    expect(laid.problems).toMatchObject([{ code: 'LAP0705', severity: 'information' }]);
    expect(told(laid.problems[0])).toContain(`${slivers.length} trimmed pieces keep less than 6 mm of arm`);
  });

  it('are not looked for where no length is stated, and grow in number with it', () => {
    const count = (sliver: number | null): number => layOutPanel({ ...panel, sliver }).panel?.slivers.length ?? -1;
    expect(count(null)).toBe(0);
    expect(count(12)).toBeGreaterThan(count(6));
    const trimmed = layOutPanel(panel).panel?.pieces.filter(({ fate }) => fate === 'trimmed') ?? [];
    expect(count(100)).toBe(trimmed.reduce((sum, group) => sum + group.count, 0));
  });
});

it('the notation carries walls and slivers to their problems', () => {
  const { problems } = analyse(
    'strip ash { section face 3 depth 10 }\ngrid fine { square  pitch 6  of ash  wall 4 }\npanel p { grid fine  shape 60 x 60 }\n',
  );
  expect(problems.map(({ code }) => code)).toContain('LAP0408');
});

describe('strips that meet beyond the end of one', () => {
  const problemsOfSize = (width: number, stub: number) => {
    const text = `strip ash { section face 3 depth 10 }\ngrid g { square pitch 40 of ash }\npanel p { grid g shape ${String(width)} x 100 stub ${String(stub)} }`;
    return analyse(text).problems.map(({ code, message }) => ({ code, message }));
  };

  it('without a notch are told: three level strips end 1 mm before the middle of an upright at either side, 0.5 × 3 mm in its wood', () => {
    const [problem, ...others] = problemsOfSize(78, 0);
    expect(others).toEqual([]);
    expect(problem?.code).toBe('LAP0410');
    expect(problem?.message).toContain('at 6 places');
    expect(problem?.message).toContain('share 1.5 mm²');
  });

  it('are not where they stop short of one another, or a stub brings both past the crossing', () => {
    expect(problemsOfSize(76.9, 0)).toEqual([]);
    expect(problemsOfSize(78, 4)).toEqual([]);
  });
});

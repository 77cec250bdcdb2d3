/** Mass of the work, its centre, and how it hangs, by hand. */
import { describe, expect, test } from 'vitest';
import type { Outline } from '../../../server/design/design-model.ts';
import type { Board, Hanging } from '../../../server/design/work-model.ts';
import { longestRunWithin, runsAt } from '../../../server/shop/sections/chords.ts';
import type { PlanHanging } from '../../../server/shop/sections/object-sections.ts';
import {
  circleContour,
  cellsShape,
  gridOf,
  panelOf,
  placementOf,
  polygonContour,
  stripStock,
  workOf,
} from '../../design-builder.ts';
import { planOf } from '../planned.ts';

const range = { start: 0, end: 0 };
const named = (name: string) => ({ name, range, nameRange: range });
const box = (width: number, height: number): Outline => ({
  ...named('box'),
  contours: [
    polygonContour([
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ]),
  ],
});
const ply = { ...named('ply'), thickness: 10, sizes: [], density: 600, kerf: 3, margin: 5, turns: [0, 180] };
const boardOf = (outline: Outline, more: Partial<Board> = {}): Board => ({
  ...named('back'),
  outline,
  sheet: ply,
  edge: { kind: 'square' },
  pivot: null,
  copies: 1,
  ...more,
});

/** 600 × 400 × 10 mm at 600 kg/m³: 1440 g. */
const back = boardOf(box(600, 400));
const hanging: Hanging = { fixings: 2, each: 4000, safety: 4, height: null };
const hung = (more: Partial<Hanging> = {}, board = back): PlanHanging => {
  const work = workOf({
    hanging: { ...hanging, ...more },
    placements: [placementOf({ kind: 'board', board }, { x: 0, y: 0 })],
  });
  const { hanging: plan } = planOf([], { boards: [board], work });
  if (!plan) throw new Error('does not hang');
  return plan;
};

describe('the mass of the work', () => {
  test('a board alone, and its centre', () => {
    const work = workOf({ placements: [placementOf({ kind: 'board', board: back }, { x: 10, y: 20 })] });
    const { mass } = planOf([], { boards: [back], work });
    expect(mass).toMatchObject({ perCopyG: 1440, centre: { xMm: 310, yMm: 220 } });
  });

  test('turned a quarter and mirrored the centre goes along', () => {
    const part = { kind: 'board' as const, board: back };
    const centreOf = (more: object) =>
      planOf([], { boards: [back], work: workOf({ placements: [placementOf(part, { x: 0, y: 0 }, more)] }) }).mass
        .centre;
    expect(centreOf({ turn: 90 })).toEqual({ xMm: -200, yMm: 300 });
    expect(centreOf({ mirrored: true })).toEqual({ xMm: 300, yMm: -200 });
  });

  /** Square lattice, pitch 40, framed, no fit: strips 3 × 10 of 672 kg/m³ (0.60 × 1120, Wood Handbook Table 5-3a). */
  test('a panel adds its strips, notches taken off; copies count', () => {
    const ash = stripStock('ash', 3, { wood: 'white_ash' });
    const panel = panelOf(gridOf('square', 40, ash), cellsShape(5, 4), { edge: 'framed', copies: 2 });
    const volume = (3 * 197 + 4 * 157) * 30 - 12 * 90;
    expect(planOf([panel]).mass.perCopyG).toBeCloseTo(2 * volume * 672e-6, 1);
    expect(planOf([panel], { work: workOf({ copies: 3 }) }).mass.perCopyG).toBeCloseTo(2 * volume * 672e-6, 1);
  });

  test('is not known, and says of what, where a density is missing', () => {
    const { mass } = planOf([panelOf(gridOf('square', 40, stripStock('pearwood', 3)), cellsShape(5, 4))]);
    expect(mass.perCopyG).toBeNull();
    expect(mass.notes.join(' ')).toContain('panel blade, strips of pearwood');
  });

  /** 100 × 50 × 12, an insert of 20 × 10 standing 12 high taken out: 57.6 mL at 1.1 g/mL. */
  test('a casting is its layers less what stands in it', () => {
    const resin = {
      ...named('clear'),
      density: 1.1,
      mix: { a: 2, b: 1, by: 'volume' as const },
      partDensities: null,
      deepestPour: null,
      potLife: null,
      recoat: null,
      cure: null,
      mixSize: null,
      price: null,
    };
    const pour = {
      ...named('stem'),
      mould: { kind: 'rectangle' as const, width: 100, height: 50 },
      resin,
      layers: [
        { colour: null, depth: 6 },
        { colour: null, depth: 6 },
      ],
      inserts: [{ outline: box(20, 10), from: 0, to: 20, density: 0, range: { start: 0, end: 0 } }],
      overfill: 0,
      surfaced: 0.5,
      sealCoat: 0,
      waste: 0,
      spareCastings: 0,
      copies: 1,
    };
    expect(planOf([], { pours: [pour] }).mass.perCopyG).toBeCloseTo((100 * 50 - 200) * 12 * 1.1e-3, 1);
  });
});

describe('hanging', () => {
  /** Two fixings of 4 kg with a factor of 4 carry 2 kg; the board weighs 1.44 kg; one would carry 1 kg. */
  test('what the fixings carry against the mass', () => {
    expect(hung()).toMatchObject({ loadG: 1440, carriesG: 2000, verdict: 'holds', fixingsNeeded: 2 });
    expect(hung({ fixings: 1 })).toMatchObject({ carriesG: 1000, verdict: 'too weak', fixingsNeeded: 2 });
    expect(hung().notes.at(-1)).toContain('local codes');
  });

  test('a cleat at the height asked for spans the board, its ends hidden; holes from its left end seen from behind', () => {
    const { cleat, drill } = hung({ height: 350, fixings: 3 });
    expect(cleat).toEqual({ heightMm: 350, fromMm: 20, toMm: 580, lengthMm: 560 });
    expect(drill).toEqual([
      { xMm: 25, yMm: 330 },
      { xMm: 280, yMm: 330 },
      { xMm: 535, yMm: 330 },
    ]);
  });

  test('left to choose, it lies high, above the centre of mass, and the spacer low', () => {
    const { cleat, spacer } = hung();
    expect(cleat?.heightMm).toBeGreaterThan(350);
    expect(spacer?.heightMm).toBeLessThan(100);
  });

  /** A circle of 300 about its own middle: at 180 the chord is 2·√(300² − 180²) = 480, and the cleat's top is narrowest. */
  test('in round work it fits the chord at its height', () => {
    const board = boardOf({ ...named('disc'), contours: [circleContour(300)] });
    const { cleat } = hung({ height: 180 }, board);
    expect(cleat?.lengthMm).toBeCloseTo(480 - 40, 2);
    const { cleat: chosen } = hung({}, board);
    const { fromMm, toMm, heightMm } = chosen ?? { fromMm: 0, toMm: 0, heightMm: 0 };
    for (const x of [fromMm, toMm]) expect(Math.hypot(x, heightMm)).toBeLessThan(300);
    expect(toMm - fromMm).toBeGreaterThanOrEqual(200);
  });

  test('too low a cleat, or one with no room, is said', () => {
    expect(hung({ height: 150 }).notes.join(' ')).toContain('below the centre of mass');
    expect(hung({ height: 500 })).toMatchObject({ cleat: null, drill: [] });
    expect(hung({ height: 500 }).notes.join(' ')).toContain('No cleat fits');
  });

  test('does not hang, no hanging', () => {
    expect(planOf([], { work: workOf() }).hanging).toBeNull();
  });
});

describe('level runs', () => {
  const ring = (points: [number, number][]) => points.map(([x, y]) => ({ x, y }));
  const hourglass = ring([
    [0, 0],
    [100, 0],
    [60, 50],
    [100, 100],
    [0, 100],
    [40, 50],
  ]);

  test('holes split them', () => {
    const outer = ring([
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ]);
    const hole = ring([
      [40, 40],
      [40, 60],
      [60, 60],
      [60, 40],
    ]);
    expect(runsAt([[outer, hole]], 50)).toEqual([
      [0, 40],
      [60, 100],
    ]);
    expect(runsAt([[outer, hole]], 20)).toEqual([[0, 100]]);
  });

  test('a waist counts though it lies between the borders', () => {
    expect(longestRunWithin([[hourglass]], 25, 75)).toEqual([40, 60]);
  });

  test('parts side by side join', () => {
    const left = ring([
      [0, 0],
      [50, 0],
      [50, 10],
      [0, 10],
    ]);
    const right = ring([
      [50, 0],
      [90, 0],
      [90, 10],
      [50, 10],
    ]);
    expect(longestRunWithin([[left], [right]], 2, 8)).toEqual([0, 90]);
  });
});

/** Pours against worked checks and closed formulas. */
import { describe, expect, test } from 'vitest';
import type { Pour } from '../../../server/design/work-model.ts';
import type { Design } from '../../../server/design/design.ts';
import { emptyDesign } from '../../../server/design/empty-design.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { castingsOf, type LaidBlank } from '../../../server/shop/pours/castings.ts';
import { planPours } from '../../../server/shop/pours/plan-pours.ts';
import {
  circleContour,
  gridOf,
  outlineOf,
  panelOf,
  polygonContour,
  pourOf,
  resinOf,
  stripStock,
  workOf,
} from '../../design-builder.ts';
import { schemaFaults } from '../plan-schema.ts';
import { planOf } from '../planned.ts';

const mould = (width: number, height: number): Pour['mould'] => ({ kind: 'rectangle', width, height });
const plansOf = (pours: readonly Pour[], more: Partial<Design> = {}, blanks: readonly LaidBlank[] = []) =>
  planPours(castingsOf({ ...emptyDesign, pours, ...more }, blanks));
const box = (width: number, height: number) =>
  polygonContour([
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ]);

/** A peg of 20 × 10. */
const insert = (from: number, to: number, density: number | null): Pour['inserts'][number] => ({
  ...{ outline: outlineOf('peg', box(20, 10)), from, to, density },
  range: { start: 0, end: 0 },
});

describe('the reference page’s checks (section 6)', () => {
  test('300 × 200 × 10 with 10 % in the cups: 660 mL, 726 g', () => {
    const [layer] = plansOf([pourOf(mould(300, 200), [10], { waste: 0.1 })])[0]?.layers ?? [];
    expect(layer).toMatchObject({ volumeMl: 660, massG: 726 });
  });

  test('500 mL at 1.10, 2 to 1 by volume: 333.333 and 166.667 mL', () => {
    const [layer] = plansOf([pourOf(mould(100, 100), [50])])[0]?.layers ?? [];
    expect(layer?.massG).toBeCloseTo(550, 6);
    expect(layer?.partA_mL).toBeCloseTo(333.333, 3);
    expect(layer?.partB_mL).toBeCloseTo(166.667, 3);
    expect(layer?.partA_g).toBeNull();
  });

  test('the same, 100 to 47 by mass: 374.150 and 175.850 g', () => {
    const resin = resinOf({ mix: { a: 100, b: 47, by: 'mass' } });
    const [layer] = plansOf([pourOf(mould(100, 100), [50], { resin })])[0]?.layers ?? [];
    expect(layer?.partA_g).toBeCloseTo(374.15, 3);
    expect(layer?.partB_g).toBeCloseTo(175.85, 3);
    expect(layer?.partA_mL).toBeNull();
  });

  test('2 to 1 by volume weighs 100 to 47 where the hardener’s density is 0.94 of the resin’s', () => {
    const resin = resinOf({ partDensities: { a: 1.1, b: 1.034 } });
    const [layer] = plansOf([pourOf(mould(100, 100), [50], { resin })])[0]?.layers ?? [];
    expect((layer?.partB_g ?? 0) / (layer?.partA_g ?? 1)).toBeCloseTo(0.47, 6);
  });
});

describe('volumes by closed formula', () => {
  test('a round mould is πr²h, its upper layer with what is planed away again', () => {
    const round: Pour['mould'] = { kind: 'outline', outline: outlineOf('disc', circleContour(40)) };
    const [plan] = plansOf([pourOf(round, [6, 4], { overfill: 1, surfaced: 0.5 })]);
    expect(plan?.layers.map(({ volumeMl }) => volumeMl)).toEqual(
      [6, 5.5].map((depth) => Math.round(Math.PI * 1600 * depth * 10) / 1e4),
    );
    expect(plan).toMatchObject({ finishedMm: 10, pouredMm: 11.5 });
  });

  test('an insert displaces resin over its own height, layer by layer', () => {
    const inserts = [insert(4, 9, 600)];
    const round: Pour['mould'] = { kind: 'outline', outline: outlineOf('tray', box(100, 50)) };
    const [plan] = plansOf([pourOf(round, [6, 6], { inserts })]);
    expect(plan?.layers[0]?.volumeMl).toBeCloseTo(5000 * 0.006 - 200 * 0.002, 6);
    expect(plan?.layers[1]?.volumeMl).toBeCloseTo(5000 * 0.006 - 200 * 0.003, 6);
  });

  test('where two inserts share their place it is displaced once', () => {
    const inserts = [box(20, 10), box(10, 20)].map((contour, index) => ({
      ...insert(0, 5, 600),
      outline: outlineOf(`peg${index}`, contour),
    }));
    const tray: Pour['mould'] = { kind: 'outline', outline: outlineOf('tray', box(100, 50)) };
    const [plan] = plansOf([pourOf(tray, [5], { inserts })]);
    expect(plan?.layers[0]?.volumeMl).toBeCloseTo((5000 - 300) * 0.005, 6);
  });
});

describe('how many', () => {
  test('copies of pour and work, and the spares, are poured together', () => {
    const [plan] = plansOf([pourOf(mould(100, 100), [5], { copies: 3, spareCastings: 1 })], {
      work: workOf({ copies: 2 }),
    });
    expect(plan).toMatchObject({ castings: 7, spare: 1 });
    expect(plan?.layers[0]?.volumeMl).toBeCloseTo(7 * 50, 6);
  });

  test('as many mixes as the size of a cup asks for', () => {
    const mixes = [400, 350, 349].map(
      (mixSize) => plansOf([pourOf(mould(100, 70), [50], { resin: resinOf({ mixSize }) })])[0]?.layers[0]?.mixes,
    );
    expect(mixes).toEqual([1, 1, 2]);
  });
});

test('each layer but the lowest has its window, counted from the one below', () => {
  const resin = resinOf({ recoat: { earliest: 240, latest: 720 } });
  const [plan] = plansOf([pourOf(mould(10, 10), [5, 5, 5], { resin })]);
  expect(plan?.layers.map(({ recoatFromH, recoatToH, earliestH }) => [recoatFromH, recoatToH, earliestH])).toEqual([
    [null, null, 0],
    [4, 12, 4],
    [4, 12, 8],
  ]);
});

describe('a body lighter than resin floats', () => {
  const withInsert = (density: number | null) => {
    const inserts = [insert(0, 5, density)];
    return plansOf([pourOf({ kind: 'outline', outline: outlineOf('tray', box(100, 50)) }, [10], { inserts })])[0];
  };

  test('it is held down by the resin it displaces less its own mass', () => {
    expect(withInsert(600)?.holdDownG).toBeCloseTo(20 * 10 * 5 * (1.1e-3 - 0.6e-3), 6);
  });

  test('metal needs nothing, and without a density it is not known', () => {
    expect(withInsert(2700)?.holdDownG).toBe(0);
    expect(withInsert(null)?.holdDownG).toBeNull();
  });
});

describe('a lattice blank', () => {
  /** Two strips across two, 3 wide and 10 deep, on a pitch of 40 in a blank 80 × 80. */
  const ash = stripStock('ash', 3, { wood: 'white_ash' });
  const grid = gridOf('square', 40, ash);
  const resin = resinOf();
  const blank = {
    ...{ name: 'cast_a', range: { start: 0, end: 0 }, nameRange: { start: 0, end: 0 }, grid, width: 80, height: 80 },
    ...{ takes: [], margin: 0, gap: 0, allowance: 1.5, turns: null, fromBack: false, matchLaps: false },
    cast: { depth: 10, surfaced: 0.5, overfill: 1, resin },
  };
  const lattice = panelOf(
    grid,
    { kind: 'rectangle', width: 80, height: 80, range: { start: 0, end: 0 } },
    { tail: 0, phase: { kind: 'centred', on: 'cell' } },
  );
  const laid = [layOutPanel(lattice, 2).panel ?? []].flat();
  const [plan] = plansOf([], { blanks: [blank] }, [{ blank, laid }]);
  /** Seen from the front: two strips of 3 × 80 across two, each of the four crossings once. */
  const wood = 4 * 3 * 80 - 4 * 9;

  test('takes its size times the depth poured, less the wood, each crossing once', () => {
    expect(plan?.castings).toBe(2);
    expect(plan?.layers[0]?.volumeMl).toBeCloseTo((2 * (6400 * 12 - wood * 10)) / 1000, 6);
  });

  test('is held down, and its open-pored wood is sealed first', () => {
    // white ash: 672 kg/m³ (reference page, section 1.1)
    expect(plan?.holdDownG).toBeCloseTo(wood * 10 * (1.1e-3 - 0.672e-3), 2);
    expect(plan?.notes[0]).toContain('Seal first: white_ash is open-pored');
  });
});

test('the plan keeps to its schema', () => {
  const inserts = [insert(0, 5, null)];
  expect(schemaFaults(planOf([], { pours: [pourOf(mould(100, 50), [6, 6], { inserts, sealCoat: 60 })] }))).toEqual([]);
});

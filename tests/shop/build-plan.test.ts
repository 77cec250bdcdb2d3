import { describe, expect, test } from 'vitest';
import { writePlanText } from '../../server/shop/writers/write-plan-text.ts';
import { handMadeDesign, handMadeKinds, handMadePanel } from '../hand-made-panel.ts';
import { schemaFaults } from './plan-schema.ts';
import { planAtSight } from '../plan-at-sight.ts';

const planned = {
  revision: 'bf9cf968',
  design: handMadeDesign,
  panels: [handMadePanel],
  blanks: [],
  kinds: handMadeKinds,
  incomplete: false,
};
const plan = planAtSight(planned, 'tray.lap');

describe('the plan', () => {
  test('keeps to its schema', () => {
    expect(schemaFaults(plan)).toEqual([]);
    expect(
      schemaFaults(planAtSight({ ...planned, panels: [], kinds: { pieces: [], strips: [], hinges: [] } }, '-')),
    ).toEqual([]);
  });

  test('is refused by its schema when a key is missing, misspelt or of the wrong kind', () => {
    const { pieces, ...withoutPieces } = plan;
    expect(schemaFaults(withoutPieces)).not.toEqual([]);
    expect(schemaFaults({ ...plan, peices: pieces })).not.toEqual([]);
    expect(schemaFaults({ ...plan, copies: 0 })).not.toEqual([]);
    expect(schemaFaults({ ...plan, pieces: [{ ...pieces[0], ends: [] }] })).not.toEqual([]);
  });

  test('says what it rests on', () => {
    expect(plan.revision).toBe('bf9cf968');
    expect(plan.grids).toEqual([
      {
        name: 'squares',
        kind: 'square',
        sideMm: 40,
        fitMm: 0.05,
        tenSidesMm: 400,
        check: { what: 'ten sides along a strip', mm: 400 },
      },
    ]);
    expect(plan.benches).toEqual([{ name: 'shop', kerfMm: 3, bevels: [22.5, 45] }]);
  });

  test('gives a panel for one copy', () => {
    expect(plan.panels).toEqual([
      {
        name: 'tray <1>',
        copies: 2,
        quantity: 2,
        edge: 'sawn',
        areaMm2: 2400,
        perimeterMm: 200,
        nodes: 1,
        cells: [{ shape: 'square', met: 4, needed: 2 }],
        infill: { make: 2, whole: 1, trimmed: 1 },
        strips: 2,
      },
    ]);
  });

  test('gives pieces and strips for all copies, split by panel and by where they come from', () => {
    expect(plan.pieces).toMatchObject([
      {
        mark: 'A&1',
        from: [{ motif: 'spoke', piece: 'arm', make: 4 }],
        lengthMm: 20,
        edgesMm: [17, 17],
        ends: [{ bevels: [45, 45] }, { bevels: [90, 90] }],
        make: 4,
        whole: 2,
        trimmed: 2,
        spare: 1,
        total: 5,
        panels: { 'tray <1>': 4 },
      },
    ]);
    expect(plan.strips.map(({ mark, family, lengthMm, panels }) => ({ mark, family, lengthMm, panels }))).toEqual([
      { mark: 'S1', family: 1, lengthMm: 72, panels: { 'tray <1>': 2 } },
      { mark: 'S2', family: 2, lengthMm: 52, panels: { 'tray <1>': 2 } },
    ]);
    expect(plan.strips[0]?.notches).toEqual([
      { atMm: 36, widthMm: 3.05, runMm: 3.05, angle: 90, depthMm: 5, from: 'above' },
    ]);
  });

  test('carries the caution of every step it has, and of no other', () => {
    expect(plan.cautions.map(({ step }) => step)).toEqual([
      'mill strips',
      'notch strips',
      'cut to length',
      'cut infill',
      'saw outlines',
    ]);
    const framed = { ...handMadePanel, panel: { ...handMadePanel.panel, edge: 'framed' as const }, pieces: [] };
    const kinds = { ...planned.kinds, pieces: [] };
    const steps = planAtSight({ ...planned, panels: [framed], kinds }, '-').cautions.map(({ step }) => step);
    expect(steps).toEqual(['mill strips', 'notch strips', 'cut to length', 'frame']);
  });
});

describe('the plan as text', () => {
  const text = writePlanText(plan);

  test('has each kind on one line, to a tenth of a millimetre', () => {
    expect(text).toMatch(/^S1 +ash +3\.0 × 10\.0 +72\.0 +1 +2 +1 +3 +tray <1> 2$/m);
    expect(text).toMatch(
      /^A&1 +spoke arm +bass +3\.0 × 10\.0 +20\.0 +17\.0 \/ 17\.0 +45 \/ 45 +90 \/ 90 +2 +2 +1 +5 +tray <1> 4$/m,
    );
    expect(text).toContain('S1  from above, 5.0 deep, 3.05 wide, 90°\n    at 36.0');
  });

  test('says evenly spaced notches as a run, others one by one', () => {
    const at = (...places: number[]) => {
      const notches = places.map((atMm) => ({
        atMm,
        widthMm: 3,
        runMm: 3,
        angle: 90,
        depthMm: 5,
        from: 'above' as const,
      }));
      return writePlanText({ ...plan, strips: plan.strips.slice(0, 1).map((strip) => ({ ...strip, notches })) });
    };
    expect(at(20, 60, 100, 140)).toContain('at 20.0, then every 40.0 to 140.0: 4 cuts\n');
    expect(at(20, 60, 99)).toContain('at 20.0  60.0  99.0\n');
    expect(at(20, 60)).toContain('at 20.0  60.0\n');
  });

  test('says what it rests on and what to check', () => {
    expect(text).toContain('from tray.lap, text bf9cf968\n');
    expect(text).toContain('grid squares: side 40.0, fit 0.05; check: ten sides along a strip measure 400.0\n');
    expect(text).toContain('bench shop: kerf 3.00, bevels 22.5, 45\n');
  });

  test('says when something is missing', () => {
    expect(text).not.toContain('INCOMPLETE');
    expect(writePlanText({ ...plan, incomplete: true })).toContain('INCOMPLETE');
  });

  test('ends with one line break and has no spaces at line ends', () => {
    expect(text).toMatch(/[^\n]\n$/);
    expect(text).not.toMatch(/ \n/);
  });
});

/** The whole job's settings on a panel made by hand, and on designs read from text. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { keysOf } from '../../../server/shop/jigs/key-share.ts';
import type { Setting } from '../../../server/shop/jigs/setting.ts';
import { workSettings } from '../../../server/shop/jigs/work-settings.ts';
import { jobSteps } from '../../../server/shop/steps/job-steps.ts';
import type { MarkedKinds } from '../../../server/shop/marks/marked-kinds.ts';
import { handMadeKinds } from '../../hand-made-panel.ts';

const conditions = { kerf: 3, gang: 10, trim: 0, indexing: 'pin' } as const;
const sample = (name: string): MarkedKinds =>
  analyse(readFileSync(new URL(`../../../samples/${name}.lap`, import.meta.url), 'utf8')).kinds;
const inStep = (settings: readonly Setting[], step: Setting['step']): Setting[] =>
  settings.filter((setting) => setting.step === step);

describe('a tray by hand: two strips that cross, one kind of arm', () => {
  const { settings, byHand } = workSettings(handMadeKinds, conditions);

  test('each stock to its depth and its face', () => {
    expect(inStep(settings, 'mill strips').map(({ stopMm, marks, pieces }) => [stopMm, marks, pieces])).toEqual([
      [10, ['S1', 'S2'], 6],
      [3, ['S1', 'S2'], 6],
      [10, ['A&1'], 5],
      [3, ['A&1'], 5],
    ]);
  });

  test('the arm square at one end, 45 turned over at the other', () => {
    expect(inStep(settings, 'cut infill')).toMatchObject([
      { tool: 'crosscut saw', angle: 90, stopMm: 20, caliperMm: 20, flip: false, marks: ['A&1'], pieces: 5 },
      { tool: 'chisel', angle: 45, flip: true, marks: ['A&1'], pieces: 5 },
    ]);
    expect(inStep(settings, 'cut infill')[1]?.stopMm).toBeCloseTo(21.5, 9);
    expect(byHand).toEqual([]);
  });

  test('on the fence the bench has', () => {
    const jigsOf = (indexing: 'pin' | 'stop') =>
      inStep(workSettings(handMadeKinds, { ...conditions, indexing }).settings, 'notch strips').map(({ jig }) => jig);
    expect(new Set(jigsOf('pin'))).toEqual(new Set(['pin fence']));
    expect(new Set(jigsOf('stop'))).toEqual(new Set(['stop fence']));
  });

  test('strips are cut longest first', () => {
    expect(inStep(settings, 'cut to length').map(({ stopMm, marks }) => [stopMm, marks])).toEqual([
      [72, ['S1']],
      [52, ['S2']],
    ]);
  });
});

describe.each(['ginkgo', 'transom', 'lamp'])('%s', (name) => {
  const kinds = sample(name);
  const { settings, changes } = workSettings(kinds, conditions);

  test('is numbered through, its steps in their order, a gate at the end of each', () => {
    expect(settings.map(({ order }) => order)).toEqual(settings.map((_, index) => index + 1));
    const places = settings.map(({ step }) => jobSteps.findIndex(({ title }) => title === step));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    settings.forEach(({ step, gate }, index) => expect(gate !== null).toBe(settings[index + 1]?.step !== step));
  });

  test('cuts every piece at all its settings: ordinary ones and keys make up the total', () => {
    for (const { mark, total, shape } of kinds.pieces) {
      const jigs = shape.ends.map(({ bevels }) => bevels?.[0]).filter((angle) => angle !== undefined);
      expect(jigs).toHaveLength(2);
      const piecesOf = (step: Setting['step']): number =>
        Math.max(
          0,
          ...inStep(settings, step)
            .filter(({ marks }) => marks.includes(mark))
            .map(({ pieces }) => pieces),
        );
      expect(piecesOf('cut infill') + piecesOf('cut keys')).toBeGreaterThanOrEqual(total);
    }
  });

  test('needs no more changes than the bound: no order has fewer', () => {
    for (const step of changes) expect(step).toMatchObject({ proven: true, changes: step.bound });
  });
});

describe('keys', () => {
  test('one arm of three is a key, 0.1 longer, spares in proportion', () => {
    const { pieces } = sample('ginkgo');
    const [arm] = pieces;
    if (!arm) throw new Error('no arm');
    const keys = Math.ceil(arm.make / 3);
    expect(keysOf(arm)).toEqual({ pieces: Math.ceil((keys * arm.total) / arm.make), longer: 0.1 });
  });

  test('no order of fitting, no keys', () => {
    for (const kind of handMadeKinds.pieces) expect(keysOf(kind)).toEqual({ pieces: 0, longer: 0 });
  });
});

/**
 * The order of the job and its gates, and what does not change between the two prints. Source: common practice of the
 * trade, as the product's description lists it step by step.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { jobStep, jobSteps } from '../../../server/shop/steps/job-steps.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const sample = (name: string): string => readFileSync(new URL(`../../../samples/${name}.lap`, import.meta.url), 'utf8');
const planOf = (text: string): ShopPlan => planAtSight(analyse(text), 'design.lap');
const tasksOf = (plan: ShopPlan, step: string): string =>
  plan.steps.find(({ title }) => title === step)?.tasks.join('\n') ?? '';

test('mill, notch, cut, assemble, flush, measure; frame, infill, keys; pour, flatten; template, saw, bands; bodies; fit, finish, mount, pack', () => {
  const order = jobSteps.map(({ title }) => title).filter((title) => title !== 'fill the bags');
  expect(order).toEqual([
    'mill strips',
    'notch strips',
    'cut to length',
    'assemble',
    'flush',
    'measure',
    'frame',
    'cut infill',
    'cut keys',
    'fill the lattice',
    'pour',
    'flatten',
    'register templates',
    'saw outlines',
    'bend bands',
    'cast bodies',
    'cut boards',
    'fit shapes',
    'finish',
    'mount',
    'pack',
  ]);
});

test('the gates ask for what the trade asks', () => {
  const asked = [
    ['mill strips', /test notch slides under thumb pressure/],
    ['assemble', /ten cells measured, diagonals equal/],
    ['cut infill', /test cell.*finger push/],
    ['cut keys', /last one needs a tap.*stays when turned over/],
    ['pour', /recoat window/],
    ['flatten', /finished depth/],
    ['bend bands', /band is flush/],
    ['mount', /dry layout.*mock hang/],
  ] as const;
  for (const [step, words] of asked) expect(jobStep(step).gate, step).toMatch(words);
});

describe('inside the steps of the ginkgo', () => {
  const plan = planOf(sample('ginkgo'));

  test('all long stock of a grid is notched without touching the pin, and only then cut', () => {
    expect(tasksOf(plan, 'notch strips')).toContain('do not touch it until all strips of that pitch are done');
    const titles = plan.steps.map(({ title }) => title);
    expect(titles.indexOf('notch strips')).toBeLessThan(titles.indexOf('cut to length'));
  });

  test('laps are seated halfway, then tapped home', () => {
    expect(tasksOf(plan, 'assemble')).toMatch(/halfway, then tap home/);
  });

  test('seal, hold down, pour: in this order', () => {
    const tasks = tasksOf(plan, 'pour');
    const places = ['Seal first', 'hold each down', 'layer 1'].map((words) => tasks.indexOf(words));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  test('the template lies on the lattice’s nodes before the saw; parts are finished with their joints masked', () => {
    expect(tasksOf(plan, 'register templates')).toContain('three numbered nodes');
    expect(tasksOf(plan, 'fit shapes')).toContain('with extra left');
    expect(tasksOf(plan, 'finish')).toMatch(/^Mask every face that is still to be glued/);
  });
});

test('in framed work the frame is glued square before any infill goes in', () => {
  const { steps } = planOf(sample('transom'));
  const titles = steps.map(({ title }) => title);
  expect(titles.indexOf('frame')).toBeLessThan(titles.indexOf('cut infill'));
  expect(steps[titles.indexOf('frame')]?.tasks.at(-1)).toContain('square round the lattice before any infill goes in');
});

describe('printed again after measuring', () => {
  /** Ten cells of 30 came out 1.2 longer in all, and the strips 0.1 thicker. */
  const drawn = sample('coasters');
  const before = planOf(drawn);
  const after = planOf(drawn.replace('  fit 0.05', '  fit 0.05\n  measured 10 cells 301.2 face 3.1'));

  test('strips, already cut, keep their marks, lengths and notches', () => {
    const cut = ({ strips }: ShopPlan) =>
      strips.map(({ mark, lengthMm, notches, total }) => ({ mark, lengthMm, notches, total }));
    expect(cut(after)).toEqual(cut(before));
  });

  test('marks of pieces do not shift', () => {
    const made = ({ pieces }: ShopPlan) => pieces.map(({ mark, from, total }) => ({ mark, from, total }));
    expect(made(after)).toEqual(made(before));
  });

  test('every length changes as the card of the second sheet foretold', () => {
    const followed = before.pieces.filter(({ perTenth }) => perTenth !== null);
    expect(followed.length).toBeGreaterThan(0);
    for (const { mark, lengthMm, perTenth } of followed) {
      const now = after.pieces.find((piece) => piece.mark === mark);
      // pitch 0.12 larger, face 0.1: 1.2 and 1 tenths
      const foretold = lengthMm + 1.2 * (perTenth?.pitchMm ?? 0) + (perTenth?.faceMm ?? 0);
      expect(now?.lengthMm, mark).toBeCloseTo(foretold, 2);
      expect(now?.lengthMm).not.toBeCloseTo(lengthMm, 2);
    }
  });
});

test('a panel of three cells is measured over its three, not over ten that it has not', () => {
  expect(tasksOf(planOf(sample('coasters')), 'measure')).toContain(
    'coaster has no ten: 3 sides along a strip should measure 90.0',
  );
  expect(tasksOf(planOf(sample('transom')), 'measure')).not.toContain('has no ten');
});

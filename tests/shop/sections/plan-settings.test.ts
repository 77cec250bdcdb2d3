/** Settings as the plan writes them, for every sample. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { radians } from '../../../server/geometry/point.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const folder = fileURLToPath(new URL('../../../samples/', import.meta.url));
const samples = readdirSync(folder).filter((file) => file.endsWith('.lap'));

describe.each(samples)('settings of %s', (file) => {
  const plan = planAtSight(analyse(readFileSync(folder + file, 'utf8')), file);
  const { settings } = plan;

  test('are numbered in order and name marks of the plan', () => {
    expect(settings.map(({ order }) => order)).toEqual(settings.map((_, index) => index + 1));
    const members = plan.frames.flatMap((frame) => [...frame.members, ...frame.groovePieces]);
    const bands = plan.bands.flatMap(({ laminations }) => laminations.flatMap(({ pieces }) => pieces));
    const marks = new Set([...plan.pieces, ...plan.strips, ...members, ...bands].map(({ mark }) => mark));
    expect(settings.flatMap((setting) => setting.marks).filter((mark) => !marks.has(mark))).toEqual([]);
  });

  test('end every step with one gate, and never come back to a step', () => {
    const steps = settings.map(({ step }) => step);
    const changes = steps.filter((step, index) => step !== steps[index - 1]);
    expect(new Set(changes).size).toBe(changes.length);
    expect(settings.filter(({ gate }) => gate !== null).map(({ step }) => step)).toEqual(changes);
  });

  test('notch every strip in every row it has', () => {
    for (const strip of plan.strips) {
      const rows = settings.filter(({ notching, marks }) => notching && marks.includes(strip.mark));
      const cut = rows.reduce((sum, { notching }) => sum + (notching?.notches ?? 0), 0);
      expect(cut).toBe(strip.notches.length);
    }
  });

  test('set the stop of a bevel at length + (t/2)·cot β, the caliper at the length itself', () => {
    const bevels = settings.filter(
      ({ step, jig, notching }) => step.startsWith('cut ') && jig !== null && !notching && step !== 'cut to length',
    );
    for (const { angle, stopMm, caliperMm, marks } of bevels) {
      const piece = plan.pieces.find(({ mark }) => mark === marks[0]);
      // a single slanted cut has its tip at the face, where the slope itself begins
      const onAxis = piece?.ends.every(({ bevels }) => bevels === null || bevels[0] === bevels[1]) ?? false;
      if (!onAxis) continue;
      const reach = (stopMm ?? 0) - (caliperMm ?? 0);
      expect(reach).toBeCloseTo((piece?.face ?? 0) / 2 / Math.tan(radians(angle ?? 90)), 3);
    }
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { analyse, type Analysis } from '../../server/analyse.ts';
import { drawPanel } from '../../server/drawing/draw-panel.ts';
import { writeSvg } from '../../server/drawing/write-svg.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { readPaths } from '../drawing/read-svg.ts';
import { schemaFaults } from '../shop/plan-schema.ts';
import { planAtSight } from '../plan-at-sight.ts';

const folder = fileURLToPath(new URL('../../samples/', import.meta.url));
const files = readdirSync(folder).filter((file) => file.endsWith('.lap'));

function sample(file: string): { analysis: Analysis; plan: ShopPlan } {
  const analysis = analyse(readFileSync(folder + file, 'utf8'));
  return { analysis, plan: planAtSight(analysis, file) };
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe.each(files)('%s', (file) => {
  const { analysis, plan } = sample(file);

  test('has no problem', () => {
    expect(analysis.problems).toEqual([]);
    expect(plan.incomplete).toBe(false);
  });

  test('makes a plan that keeps to the schema', () => {
    expect(schemaFaults(plan)).toEqual([]);
  });

  test('adds up', () => {
    for (const piece of plan.pieces) {
      expect(piece.make).toBe(piece.whole + piece.trimmed);
      expect(piece.make).toBe(sum(Object.values(piece.panels)));
      expect(piece.make).toBe(sum(piece.from.map(({ make }) => make)));
    }
    for (const item of [...plan.pieces, ...plan.strips]) expect(item.total).toBe(item.make + item.spare);
    // Panels that are sawn from blanks make nothing themselves: their blanks do.
    const made = [...analysis.panels, ...analysis.blanks.flatMap(({ laid }) => laid)];
    expect(sum(plan.pieces.map(({ make }) => make))).toBe(
      sum(made.map(({ quantity, pieces }) => quantity * sum(pieces.map(({ count }) => count)))),
    );
    expect(sum(plan.strips.map(({ make }) => make))).toBe(
      sum(made.map(({ quantity, strips }) => quantity * sum(strips.map(({ placements }) => placements.length)))),
    );
    for (const { name, copies, infill } of plan.blanks)
      expect(copies * infill.make).toBe(sum(plan.pieces.map(({ panels }) => panels[name] ?? 0)));
    const marks = [...plan.pieces, ...plan.strips].map(({ mark }) => mark);
    expect(new Set(marks).size).toBe(marks.length);
  });

  test('has its notches on the strip, in order', () => {
    for (const { lengthMm, notches } of plan.strips) {
      const places = notches.map(({ atMm }) => atMm);
      expect(places).toEqual([...places].sort((first, second) => first - second));
      for (const { atMm } of notches) {
        expect(atMm).toBeGreaterThanOrEqual(0);
        expect(atMm).toBeLessThanOrEqual(lengthMm);
      }
    }
  });

  test('is drawn whole: a path for every strip and piece, and a picture that renders', () => {
    for (const laid of analysis.panels) {
      const svg = writeSvg(drawPanel(laid, analysis, analysis.design.title), file);
      const marked = readPaths(svg).flatMap(({ mark }) => (mark === null ? [] : [mark]));
      const own = plan.panels.find(({ name }) => name === laid.panel.name);
      expect(marked.length).toBe((own?.strips ?? 0) + (own?.infill.make ?? 0));
      if (laid.quantity > 0)
        for (const { mark, panels } of [...plan.pieces, ...plan.strips]) {
          const perCopy = (panels[laid.panel.name] ?? 0) / laid.quantity;
          expect(marked.filter((each) => each === mark).length).toBe(perCopy);
        }
      expect(new Resvg(svg, { fitTo: { mode: 'width', value: 400 } }).render().width).toBe(400);
    }
  });

  test('does not depend on when or how often it is planned', () => {
    expect(sample(file).plan).toEqual(plan);
  });
});

describe('the lamp, by hand', () => {
  const { plan } = sample('lamp.lap');
  const opening = 42 - 3;
  const leg = opening - 1.5 * Math.SQRT2;
  const inradius = leg * (1 - Math.SQRT1_2);

  test('has the strips of a frame four cells wide and six high', () => {
    const kinds = plan.strips.map(({ lengthMm, make, notches }) => [lengthMm, make, notches.length]);
    expect(kinds.sort()).toEqual([
      [4 * 42 - 3 + 2 * 4, 4 * 5, 3],
      [6 * 42 - 3 + 2 * 4, 4 * 3, 5],
    ]);
  });

  test('has one diagonal, two arms from the square corners and four from the sharp ones in each of the 20 cells that the map fills', () => {
    const cells = 4 * (4 * 6 - 4);
    const kinds = plan.pieces.map(({ lengthMm, make }) => ({ length: lengthMm, make }));
    const expected = [
      { length: opening * Math.SQRT2, make: cells },
      { length: inradius / Math.sin(Math.PI / 8), make: 4 * cells },
      { length: inradius * Math.SQRT2, make: 2 * cells },
    ];
    kinds.sort((first, second) => second.length - first.length);
    expect(kinds.map(({ make }) => make)).toEqual(expected.map(({ make }) => make));
    kinds.forEach(({ length }, index) => {
      expect(length).toBeCloseTo(expected[index]?.length ?? 0, 3);
    });
  });
});

describe('the ginkgo, by hand', () => {
  const { plan } = sample('ginkgo.lap');

  test('needs one kind of arm: every trimmed piece is made whole', () => {
    expect(plan.pieces).toMatchObject([{ ends: [{ bevels: [60, 60] }, { bevels: [30, 30] }] }]);
    expect(plan.pieces[0]?.lengthMm).toBeCloseTo(36 / Math.sqrt(3) - 3, 3);
  });

  test('has strips of whole steps between two tails', () => {
    for (const { lengthMm } of plan.strips) expect((lengthMm - 2 * 6) % 36).toBeCloseTo(0, 6);
  });

  test('saws two leaves from each of three blanks, six for two copies of three', () => {
    expect(plan.blanks.map(({ copies, places }) => [copies, places.length])).toEqual([[3, 2]]);
    expect(plan.panels[0]?.quantity).toBe(6);
  });
});

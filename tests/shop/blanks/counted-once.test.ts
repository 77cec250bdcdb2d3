/**
 * Panels sawn from blanks are counted once in every section: not twice (by panel and blank), and not as none. The same
 * three tiles are planned alone, and out of one blank that is just their size, so that both make the same.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { compareDesigns } from '../../../server/compare/compare-designs.ts';
import type { ShopPlan } from '../../../server/shop/shop-plan.ts';
import { plannedAtSight, planAtSight } from '../../plan-at-sight.ts';

const text = (more = ''): string => `
strip ash { wood white_ash  section face 3 depth 10  lengths 900 }
strip bass { wood basswood  section face 3 depth 10  lengths 600 }
bench shop { bevels 45  kerf 3  pitch_error 0.05 }
grid squares { square  pitch 40  of ash  fit 0.05 }
motif cross for square { divider diagonal from corner 1 to corner 3 }
outline plate { rectangle 76 x 76 }
panel tile { grid squares  centred node  shape plate  edge sawn  fill square with cross of bass  copies 3 }
finish oil { coverage 12  coats 2  loss 10%  price 28 EUR per 1L }
work tiles {
  place tile at 0, 0
  place tile at 90, 0
  place tile at 180, 0
  finish oil
  moisture 12% to 8%
  minutes 1 per cell for fill_the_lattice
  minutes 10 per metre for saw_outlines
  hourly 30 EUR
}
${more}`;

const planOf = (more = ''): ShopPlan => {
  const analysis = analyse(text(more));
  expect(analysis.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  return planAtSight(analysis, 'tiles.lap');
};
const blank = 'blank cast { grid squares  shape 300 x 120  take tile 3 }';
const open = planOf();
const sawn = planOf(blank);

describe('three tiles out of a blank', () => {
  test('are three, filled and sawn', () => {
    expect(sawn.blanks.reduce((all, { copies, places }) => all + copies * places.length, 0)).toBe(3);
    expect(sawn.panels[0]?.quantity).toBe(3);
    expect(sawn.steps.find(({ title }) => title === 'saw outlines')?.tasks[0]).toContain('tile: 3 to saw');
    const saws = sawn.labour.lines.find(({ per }) => per === 'metre');
    expect(saws?.units).toBeCloseTo((3 * 4 * 76) / 1000, 2);
  });

  test('take as many minutes as the blank has cells to fill', () => {
    const cells = sawn.labour.lines.find(({ per }) => per === 'cell');
    expect(cells?.units).toBe(sawn.blanks.reduce((all, each) => all + each.copies * each.cells, 0));
    expect(cells?.units).toBeGreaterThan(0);
  });

  test('weigh and are finished as three', () => {
    expect(sawn.mass).toEqual(open.mass);
    expect(sawn.mass.perCopyG).toBeGreaterThan(0);
    expect(sawn.finish?.areaMm2).toBeCloseTo(open.finish?.areaMm2 ?? NaN, 6);
    expect(sawn.finish?.areaMm2).toBeGreaterThan(0);
    expect(sawn.work?.parts).toEqual([{ part: 'tile', placed: 3 }]);
  });

  test('move as the wood does, and close as the blank’s longest strips do', () => {
    expect(sawn.movement).toEqual(open.movement);
    expect(open.fit.map(({ panel }) => panel)).toEqual(['tile']);
    expect(sawn.fit.map(({ panel, notches }) => [panel, notches])).toEqual([['cast', 7]]);
  });

  test('need the strips of the blank alone, and each kind is made by it alone', () => {
    for (const kind of [...sawn.strips, ...sawn.pieces]) {
      expect(Object.keys(kind.panels)).toEqual(['cast']);
      expect(kind.make).toBe(kind.panels['cast']);
    }
    const assembled = sawn.steps.find(({ title }) => title === 'assemble')?.tasks ?? [];
    expect(assembled.map((task) => task.split(',')[0])).toEqual(['cast']);
  });

  test('cost the finish of three, and the work of both', () => {
    const finishOf = ({ cost }: ShopPlan) => cost.lines.filter(({ what }) => what.startsWith('finish'));
    expect(finishOf(sawn)).toEqual(finishOf(open));
  });

  test('cast in resin are solid: faces and edges are finished, resin fills what the wood leaves', () => {
    const cast = planOf(
      `resin clear { mix 100 to 45 by mass  density 1.1  deepest 20 }\n${blank.replace('take', 'depth 9  of clear  take')}`,
    );
    expect(cast.finish?.areaMm2).toBeCloseTo(3 * (2 * 76 * 76 + 4 * 76 * 9), 3);
    const resin = cast.mass.parts.find(({ part }) => part === 'panel tile, resin');
    const part = (name: string): number => cast.mass.parts.find((each) => each.part.endsWith(name))?.massG ?? NaN;
    // full of resin the three would weigh 1.1 · 76² · 9 mm³ each; wood of about 0.5 to 0.7 g/mL takes the place of some
    expect(resin?.massG).toBeLessThan((3 * 1.1 * 76 * 76 * 9) / 1000);
    const wood = (part('strips') / 0.672 + part('infill') / 0.4144) / 1.1;
    expect((resin?.massG ?? 0) / 1.1).toBeGreaterThan((3 * 76 * 76 * 9) / 1000 - wood * 1.1);
  });

  test('compare as the same to themselves, and as another way of making to those made alone', () => {
    const versionOf = (more: string) => plannedAtSight(analyse(text(more)), 'blanks.lap');
    expect(compareDesigns(versionOf(blank), versionOf(blank)).same).toBe(true);
    const change = compareDesigns(versionOf(''), versionOf(blank));
    expect(change.same).toBe(false);
  });
});

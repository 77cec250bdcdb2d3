/** The full work of the ginkgo: its plan, printed sheet, templates and drawings say the same, and add up. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { analyse, type Analysis } from '../../server/analyse.ts';
import { drawBlank } from '../../server/drawing/draw-blank.ts';
import { writePdf } from '../../server/drawing/page/write-pdf.ts';
import { printSheet } from '../../server/drawing/print/print-sheet.ts';
import { buildTemplate } from '../../server/drawing/template/build-template.ts';
import type { Template } from '../../server/drawing/template/template.ts';
import { templateSubject } from '../../server/drawing/template/template-subject.ts';
import { writeSvg } from '../../server/drawing/write-svg.ts';
import { flattenContour } from '../../server/geometry/flatten-path.ts';
import { distance } from '../../server/geometry/point.ts';
import { boundsOf } from '../../server/geometry/polygons.ts';
import { loadTypefaces } from '../../server/machine/typefaces.ts';
import type { ShopPlan } from '../../server/shop/shop-plan.ts';
import { usualEffort } from '../../server/machine/search-effort.ts';
import { planDesign } from '../../server/plan-design.ts';
import { readPdf } from '../drawing/read-pdf.ts';
import { readPaths } from '../drawing/read-svg.ts';

const text = readFileSync(fileURLToPath(new URL('../../samples/ginkgo.lap', import.meta.url)), 'utf8');
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

let analysis: Analysis;
let plan: ShopPlan;
let pages: string[];
beforeAll(async () => {
  const planned = await planDesign(analyse(text), 'ginkgo.lap', usualEffort());
  [analysis, plan] = [planned, planned.plan];
  const typefaces = await loadTypefaces();
  const sheet = await readPdf(await writePdf(printSheet(plan, analysis, 'A4', typefaces), typefaces));
  pages = sheet.pages.map((page) => page.text);
}, 120_000);

function templateOf(name: string): Template {
  const subject = templateSubject(analysis.design, name);
  const template = subject && buildTemplate(analysis, subject, 'ginkgo.lap');
  if (!template) throw new Error(`no template ${name}`);
  return template;
}

const sizeOf = ({ bounds }: Pick<Template, 'bounds'>): number[] =>
  [bounds.right - bounds.left, bounds.top - bounds.bottom].map((size) => Math.round(size * 10) / 10);

describe('blanks', () => {
  test('yield every leaf of every copy, and no more are made than must be', () => {
    const leaves = sum(plan.blanks.map(({ copies, places }) => copies * places.length));
    const [blade] = plan.panels;
    expect(leaves).toBe(blade?.quantity);
    expect(leaves).toBe((blade?.copies ?? 0) * plan.copies);
    expect(plan.blanks.every(({ proven }) => proven)).toBe(true);
    expect(sum(plan.blanks.map(({ copies }) => copies))).toBe(plan.blanks[0]?.bound);
  });

  test('are drawn with as many of each mark as the plan makes for them', () => {
    const drawn = analysis.blanks.flatMap((nested) => drawBlank(nested, analysis, null));
    expect(drawn).toHaveLength(plan.blanks.length);
    const counts = new Map<string, number>();
    drawn.forEach((drawing, index) => {
      for (const { mark } of readPaths(writeSvg(drawing, 'ginkgo.lap')))
        if (mark !== null) counts.set(mark, (counts.get(mark) ?? 0) + (plan.blanks[index]?.copies ?? 0));
    });
    for (const { mark, make } of [...plan.pieces, ...plan.strips])
      expect([mark, counts.get(mark)]).toEqual([mark, make]);
  });

  test('hold each cut-out at the place the template is laid: nodes of the blank under nodes of the leaf', () => {
    const { marks } = templateOf('blade');
    const sides = marks.map(({ at }, index) => distance(at, marks[(index + 1) % marks.length]?.at ?? at) / 36);
    // On a three-way lattice the square of a distance between nodes, in sides, is a whole number: a² + ab + b².
    for (const side of sides) expect(side ** 2).toBeCloseTo(Math.round(side ** 2), 6);
    const leaf = boundsOf(
      templateOf('blade')
        .lines.find(({ kind }) => kind === 'saw')
        ?.contours.flatMap(flattenContour) ?? [],
    );
    for (const cutOut of analysis.blanks.flatMap(({ cutOuts }) => cutOuts)) {
      const cut = boundsOf(cutOut.sawLine.flat());
      expect(cut.right - cut.left).toBeCloseTo(leaf.right - leaf.left, 1);
      expect(cut.top - cut.bottom).toBeCloseTo(leaf.top - leaf.bottom, 1);
    }
  });
});

describe('on paper', () => {
  test('every mark of strip, piece and band stands with what is cut of it', () => {
    const all = pages.join('\n');
    const squeezed = all.replace(/\s+/g, '');
    for (const { mark, make, spare, total } of [...plan.strips, ...plan.pieces]) {
      expect(squeezed.includes(`${make}+${spare}=${total}`)).toBe(true);
      expect(pages.some((page) => page.includes(mark))).toBe(true);
    }
    for (const { laminations } of plan.bands)
      for (const { mark } of laminations.flatMap(({ pieces }) => pieces)) expect(all).toContain(mark);
  });

  test('every step stands with its gate and caution, in the order of the plan', () => {
    const all = pages.join('\n').replace(/\s+/g, ' ');
    for (const { gate } of plan.steps) if (gate !== null) expect(all).toContain(gate);
    for (const { text: caution } of plan.cautions) expect(all).toContain(caution.replace(/\s+/g, ' '));
  });

  test('blanks, castings and boards stand with their figures', () => {
    const all = pages.join('\n').replace(/\s+/g, ' ');
    for (const { copies, places, infill } of plan.blanks)
      for (const words of [
        `${copies} blanks to make like this, ${places.length} cut-outs in each`,
        `${infill.make} pieces to a blank`,
      ])
        expect(all).toContain(words);
    for (const { layers } of plan.pours) for (const { volumeMl } of layers) expect(all).toContain(volumeMl.toFixed(1));
    for (const { name } of plan.boards) expect(all).toContain(name);
  });
});

describe('templates', () => {
  test('of leaf, stem and board are as large as the plan says', () => {
    const [blade] = analysis.panels;
    const region = boundsOf(blade?.region.flat() ?? []);
    const finished = templateOf('blade').lines.find(({ kind }) => kind === 'finished');
    const drawn = boundsOf(finished?.contours.flatMap(flattenContour) ?? []);
    expect(drawn.right - drawn.left).toBeCloseTo(region.right - region.left, 2);
    const [back] = plan.boards;
    const board = templateOf('back').lines.find(({ kind }) => kind === 'finished');
    expect(sizeOf({ bounds: boundsOf(board?.contours.flatMap(flattenContour) ?? []) })).toEqual([
      back?.widthMm,
      back?.heightMm,
    ]);
  });

  test('of the caul runs as far outside the leaf as the step says', () => {
    const [width = 0] = sizeOf(templateOf('rim'));
    const [leaf = 0] = sizeOf({ bounds: boundsOf(analysis.panels[0]?.region.flat() ?? []) });
    expect(width - leaf).toBeCloseTo(2 * (plan.bands[0]?.caulOutMm ?? 0), 1);
  });

  test('to drill by has the holes of the plan', () => {
    const { marks } = templateOf('ginkgo');
    expect(marks).toHaveLength(plan.hanging?.drill.length ?? 0);
    expect(marks).toHaveLength(plan.hanging?.fixings ?? 0);
  });
});

describe('figures that must add up', () => {
  test('the mass of a copy is its parts’, and what the fixings are held against', () => {
    const parts = plan.mass.parts.map(({ massG }) => massG ?? NaN);
    expect(plan.mass.perCopyG).toBeCloseTo(sum(parts), 0);
    expect(plan.hanging?.loadG).toBe(plan.mass.perCopyG);
    expect(plan.mass.parts.map(({ part }) => part)).toEqual(
      expect.arrayContaining(['panel blade, resin', 'band rim', 'board back', 'cast stem']),
    );
  });

  test('resin kept in the leaves and stems is part of what is poured', () => {
    const kept = sum(
      plan.mass.parts.filter(({ material }) => material === 'casting_resin').map(({ massG }) => massG ?? NaN),
    );
    const poured = sum(plan.pours.flatMap(({ layers }) => layers.map(({ massG }) => massG)));
    expect(kept * plan.copies).toBeGreaterThan(0);
    expect(kept * plan.copies).toBeLessThan(poured);
  });

  test('each length of band is cut as often as there are leaves, and the sticks of walnut hold them', () => {
    const walnut = plan.stock.find(({ stock }) => stock === 'walnut_strip');
    const pieces = plan.bands.flatMap(({ laminations, quantity }) =>
      laminations.flatMap((lamination) => lamination.pieces.map(({ mark }) => [mark, quantity] as const)),
    );
    for (const [mark, quantity] of pieces) {
      const cut = sum(
        walnut?.sticks.map(
          ({ cuts, count }) => count * sum(cuts.filter((each) => each.mark === mark).map(({ n }) => n)),
        ) ?? [],
      );
      expect([mark, cut]).toEqual([mark, quantity]);
      expect(quantity).toBe(plan.panels[0]?.quantity);
    }
  });

  test('stems are cast as often as they are placed, one spare besides, and nothing stands off the board', () => {
    const stems = analysis.design.work?.placements.filter(({ part }) => part.kind === 'pour').length ?? 0;
    const [stem] = plan.pours.filter(({ name }) => name === 'stem');
    expect((stem?.castings ?? 0) - (stem?.spare ?? 0)).toBe(stems * plan.copies);
    expect(analysis.problems).toEqual([]);
  });
});

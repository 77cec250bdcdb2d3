/**
 * The printed shop sheet against what makes a sheet trusted at the bench. Paper: ISO 216 (A4 210 × 297 mm) and ANSI Y14.1
 * (letter 8.5 × 11 in); a PDF's unit is 1/72 inch (ISO 32000), so 100 mm are 283.465 of it. Read back by pdf.js and parse5.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadTypefaces } from '../../server/machine/typefaces.ts';
import { type Facts, flatItems, type Page } from '../../server/drawing/page/page-model.ts';
import type { Typefaces } from '../../server/drawing/page/typeface.ts';
import { writeHtml } from '../../server/drawing/page/write-html.ts';
import { writePdf } from '../../server/drawing/page/write-pdf.ts';
import { laidTexts, outOfPage, overlaps, printed, textsOf } from './printed-sheet.ts';
import { extentPt, readPdf } from './read-pdf.ts';
import { statedSections } from './stated-sections.ts';

const samples = fileURLToPath(new URL('../../samples', import.meta.url));
const names = readdirSync(samples).filter((file) => file.endsWith('.lap'));
const textOf = (name: string): string => readFileSync(`${samples}/${name}`, 'utf8');
const points = (millimetres: number): number => (millimetres * 72) / 25.4;

let typefaces: Typefaces;
beforeAll(async () => {
  typefaces = await loadTypefaces();
});

describe.each(names)('%s', (name) => {
  test('carries on every page: file, revision, face, kerf, pitch, one check, page n of m, which part', () => {
    const { plan, file } = printed(textOf(name), typefaces);
    const [grid] = plan.grids;
    const figures = [`pitch ${grid?.sideMm.toFixed(1)}`, `10 cells of ${grid?.name} ${grid?.tenSidesMm.toFixed(1)}`];
    file.pages.forEach((page, index) => {
      const text = textsOf(page).join(' ');
      for (const words of ['design.lap', plan.revision, 'face 3.0', 'kerf 3.00', ...figures])
        expect(text).toContain(words);
      expect(text).toContain(`page ${index + 1} of ${file.pages.length}`);
      expect(/Part 1 to the lattice|Part 2 after measuring/.test(text)).toBe(true);
    });
  });

  test('says once for every mark: drawn at full size, on a label, in a table; needed + spare = cut', () => {
    const { plan, file } = printed(textOf(name), typefaces);
    const factsOf = (pages: readonly Page[]): readonly Facts[] =>
      pages.flatMap(({ items }) => [
        ...[...flatItems(items)].flatMap((item) => (item.kind === 'path' ? [item.facts] : [])),
        ...items.flatMap((item) => (item.kind === 'group' ? [item.facts] : [])),
      ]);
    // a student has no other page than the own card, so that draws the bag's pieces again, once each
    const isCard = ({ title }: Page): boolean => title.startsWith('Student card');
    const facts = factsOf(file.pages.filter((page) => !isCard(page)));
    const onCards = factsOf(file.pages.filter(isCard));
    const inBag = new Set(plan.kit?.bag.map(({ mark }) => mark));
    const pieces = new Set(plan.pieces.map(({ mark }) => mark));
    const texts = file.pages.flatMap(textsOf);
    for (const { mark, make, spare, total, lengthMm } of [...plan.strips, ...plan.pieces]) {
      expect(make + spare).toBe(total);
      const drawn = (all: readonly Facts[]): string[] =>
        all
          .filter((fact) => fact['mark'] === mark && fact['length-mm'] !== undefined)
          .map((fact) => Number(fact['length-mm']).toFixed(2));
      expect(drawn(facts), mark).toEqual([lengthMm.toFixed(2)]);
      expect(drawn(onCards), mark).toEqual(inBag.has(mark) && pieces.has(mark) ? [lengthMm.toFixed(2)] : []);
      expect(
        [...facts, ...onCards].filter(({ label }) => label === mark),
        mark,
      ).toHaveLength(1);
      expect(texts.filter((text) => text === mark).length, mark).toBeGreaterThanOrEqual(3);
      expect(texts, mark).toContain(`${make} + ${spare} =`);
    }
  });

  test.each(['A4', 'letter'] as const)('keeps every text on its %s page and off every other', (paper) => {
    for (const page of printed(textOf(name), typefaces, paper).file.pages) {
      const boxes = laidTexts(page, typefaces);
      expect(outOfPage(page, boxes), page.title).toEqual([]);
      expect(overlaps(boxes), page.title).toEqual([]);
    }
  });

  test('goes in the order of the job, each step with its gate and its caution beside it', () => {
    const { plan, file } = printed(textOf(name), typefaces);
    const words = file.pages.flatMap(textsOf).join(' ');
    let from = words.indexOf('1  mill strips');
    expect(from).toBeGreaterThan(0);
    for (const { order, title, gate, caution } of plan.steps) {
      const place = words.indexOf(`${order}  ${title}`, from);
      expect(place, title).toBeGreaterThanOrEqual(from);
      const next = words.indexOf(`${order + 1}  `, place + 1);
      const own = words.slice(place, next < 0 ? undefined : next);
      if (gate) expect(own).toContain(`Gate: ${gate.split(' ')[0] ?? ''}`);
      if (caution) expect(own).toContain('Take care');
      from = place;
    }
  });

  test('says “continued” wherever a table or a section runs on to a page', () => {
    const { file } = printed(textOf(name), typefaces);
    const titles = file.pages.map(({ title }) => title);
    titles.slice(1).forEach((title, index) => {
      if (title.replace(', continued', '') === titles[index]?.replace(', continued', ''))
        expect(title).toContain('continued');
    });
    for (const page of file.pages) {
      const texts = textsOf(page);
      const runsOn = texts.includes('first stop') || texts.includes('stop');
      // settings stand under their step, a class's jigs under their own title
      const begins = texts.some((text) => /^\d+ {2}\S/.test(text) || text.startsWith('Jigs: '));
      if (runsOn) expect(begins, page.title).toBe(true);
    }
  });

  test('has no figure finer than the bench can set: 0.1 mm, keys 0.05', () => {
    for (const page of printed(textOf(name), typefaces).file.pages) {
      expect(textsOf(page).filter((text) => /\d\.\d{3}/.test(text))).toEqual([]);
    }
  });

  test('says that it was not tested in wood', () => {
    const [cover] = printed(textOf(name), typefaces).file.pages;
    expect(cover && textsOf(cover).join(' ')).toContain('Not tested in wood');
  });
});

describe('the sheet as PDF', () => {
  test.each([
    ['A4', 210, 297],
    ['letter', 8.5 * 25.4, 11 * 25.4],
  ] as const)('on %s has pages of its size and bars of 100 mm both ways', async (paper, width, height) => {
    const { file } = printed(textOf('lamp.lap'), typefaces, paper);
    const { pages } = await readPdf(await writePdf(file, typefaces));
    expect(pages).toHaveLength(file.pages.length);
    for (const { sizePt, pathsPt } of pages) {
      expect(sizePt[0]).toBeCloseTo(points(width), 2);
      expect(sizePt[1]).toBeCloseTo(points(height), 2);
      const long = (index: 0 | 1): boolean =>
        pathsPt.some((path) => path.length >= 4 && Math.abs(extentPt(path)[index] - 283.465) < 0.01);
      expect([long(0), long(1)]).toEqual([true, true]);
    }
  });

  test('prints pieces at full size, and what stands on them can be read and searched', async () => {
    const { file, plan } = printed(textOf('lamp.lap'), typefaces);
    const { pages, title } = await readPdf(await writePdf(file, typefaces));
    expect(title).toContain('Lamp with four sides');
    const lengths = pages.flatMap(({ pathsPt }) => pathsPt.map((path) => extentPt(path)[0]));
    for (const { lengthMm, mark } of plan.pieces) {
      expect(
        lengths.some((length) => Math.abs(length - points(lengthMm)) < 0.03),
        mark,
      ).toBe(true);
    }
    const text = pages.map((page) => page.text).join('\n');
    for (const words of ['28.2 mm tip to tip', 'Gate: ten cells measured', 'Record card'])
      expect(text).toContain(words);
  });
});

describe('the sheet as HTML', () => {
  type Node = DefaultTreeAdapterTypes.ChildNode;

  function* elements(nodes: readonly Node[]): Generator<DefaultTreeAdapterTypes.Element> {
    for (const node of nodes) {
      if ('attrs' in node) yield node;
      if ('childNodes' in node) yield* elements(node.childNodes);
    }
  }

  test('stands alone: no script, nothing fetched; one picture a page at the paper’s size', () => {
    const { file, plan } = printed(textOf('ginkgo.lap'), typefaces);
    const html = writeHtml(file, typefaces);
    const all = [...elements(parse(html).childNodes)];
    expect(all.filter(({ tagName }) => ['script', 'link', 'img', 'iframe', 'object', 'use'].includes(tagName))).toEqual(
      [],
    );
    expect(all.flatMap(({ attrs }) => attrs).filter(({ name }) => /^(on|src|href|xlink)/.test(name))).toEqual([]);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|@import|url\((?!data:|#)/);
    const pictures = all.filter(({ tagName }) => tagName === 'svg');
    expect(pictures).toHaveLength(file.pages.length);
    for (const { attrs } of pictures) {
      expect(attrs).toContainEqual({ name: 'width', value: '210mm' });
      expect(attrs).toContainEqual({ name: 'height', value: '297mm' });
    }
    expect(html).toContain('@page { size: 210mm 297mm; margin: 0; }');
    const labels = all.flatMap(({ attrs }) =>
      attrs.filter(({ name }) => name === 'data-label').map(({ value }) => value),
    );
    expect(labels).toEqual([...plan.strips, ...plan.pieces].map(({ mark }) => mark));
  });
});

describe('a sheet with everything stated', () => {
  const stated = () => printed(textOf('lamp.lap'), typefaces, 'A4', statedSections).file;

  test.each(['A4', 'letter'] as const)('keeps its texts in place on %s', (paper) => {
    for (const page of printed(textOf('lamp.lap'), typefaces, paper, statedSections).file.pages) {
      const boxes = laidTexts(page, typefaces);
      expect(outOfPage(page, boxes), page.title).toEqual([]);
      expect(overlaps(boxes), page.title).toEqual([]);
    }
  });

  test('has a label for every bag and the teacher’s box, and a student card on one page with the pieces at full size', () => {
    const pages = stated().pages;
    const labels = pages.filter(({ title }) => title.startsWith('Bag labels')).flatMap(textsOf);
    for (const title of ['Bag 1 of 3', 'Bag 2 of 3', 'Bag 3 of 3', 'Teacher’s box']) expect(labels).toContain(title);
    expect(labels.filter((text) => text.startsWith('A1: 96 + 2 spare'))).toHaveLength(3);
    const cards = pages.filter(({ title }) => title.startsWith('Student card'));
    expect(cards).toHaveLength(1);
    const drawn = cards
      .flatMap(({ items }) => [...flatItems(items)])
      .flatMap((item) => (item.kind === 'path' ? [item.facts] : []));
    expect(drawn.filter((fact) => fact['length-mm'] !== undefined).map(({ mark }) => mark)).toEqual(['A1', 'D']);
  });

  test('has the price line by line, each with an empty field for what it came to', () => {
    const pages = stated().pages.filter(({ title }) => title.startsWith('Work and price'));
    const texts = pages.flatMap(textsOf);
    for (const words of ['actual', '18.50 EUR', '= price of a copy, before tax', '177.93 EUR', '5 h 3 min'])
      expect(texts).toContain(words);
    const fields = pages
      .flatMap(({ items }) => [...flatItems(items)])
      .filter((item) => item.kind === 'path' && item.look === 'box' && Object.keys(item.facts).length === 0);
    // two parts to weigh, one line of labour, three of cost, five totals
    expect(fields).toHaveLength(11);
  });

  test('tells how it hangs and what its frame is made of', () => {
    const words = stated().pages.flatMap(textsOf).join(' ');
    for (const part of [
      'Load 4.2 kg',
      'Holes from the cleat’s left end, seen from behind: 40.0 (height 172.0), 200.0 (height 172.0)',
      'Frame of lamp_side: frame_ash, mitred, groove 4.0 deep',
      'F1',
    ]) {
      expect(words).toContain(part);
    }
  });
});

describe('whatever the file says', () => {
  const letters = fc.constantFrom('a', 'W', 'é', '格', 'ж', '_', 'x9');
  const names = fc.array(letters, { minLength: 1, maxLength: 26 }).map((parts) => `n${parts.join('')}`);
  const titles = fc.string({ unit: fc.constantFrom('W', 'i', ' ', 'ö', '子', '🌿'), maxLength: 160 });

  const design = (
    stock: string,
    motif: string,
    role: string,
    panel: string,
    title: string,
    units: 'mm' | 'in',
    across: number,
  ) => `
title "${title}"
units ${units}
strip ${stock} { wood white_ash  section face 3mm depth 10mm  spare 5% }
bench shop { bevels 45  kerf 3mm }
grid mesh { square  pitch 41.7mm  of ${stock}  fit 0.05mm }
motif ${motif} for square { piece ${role} from corner 1 to corner 3  fit_order ${role} key 0.1mm }
panel ${panel} { grid mesh  shape ${across} x 3 cells  edge framed  fill square with ${motif} of ${stock} }
`;

  test('no text leaves its page or lies over another, and the marks are all there', () => {
    fc.assert(
      fc.property(
        fc.tuple(names, names, names, names),
        titles,
        fc.constantFrom('mm' as const, 'in' as const),
        fc.integer({ min: 2, max: 14 }),
        fc.constantFrom('A4' as const, 'letter' as const),
        ([stock, motif, role, panel], title, units, across, paper) => {
          const text = design(`s${stock}`, `m${motif}`, `r${role}`, `p${panel}`, title, units, across);
          const { file, plan } = printed(text, typefaces, paper);
          expect(plan.pieces.length).toBeGreaterThan(0);
          for (const page of file.pages) {
            const boxes = laidTexts(page, typefaces);
            expect(outOfPage(page, boxes)).toEqual([]);
            expect(overlaps(boxes)).toEqual([]);
          }
        },
      ),
      { numRuns: 25 },
    );
  });

  test('inches are decimal to 0.001 where they are measured, and the bars are of 4 in', () => {
    const { file } = printed(design('ash', 'bar', 'rod', 'door', 'Door', 'in', 3), typefaces);
    const texts = file.pages.flatMap(textsOf).join('\n');
    // 41.7 mm = 1.64173 in, 3 mm = 0.11811 in (by hand)
    expect(texts).toContain('mesh: face 0.118 in, pitch 1.642 in');
    expect(texts).toContain('Bars of 4 in: measure both; lengths in inches');
  });
});

/** Drawings as PDF, read back by pdf.js. A point is 1/72 inch of 25.4 mm (ISO 32000), so 100 mm are 283.465 points. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { loadTypefaces } from '../../server/machine/typefaces.ts';
import { drawPanel } from '../../server/drawing/draw-panel.ts';
import { drawPiece } from '../../server/drawing/draw-piece.ts';
import type { PageFile, PageItem } from '../../server/drawing/page/page-model.ts';
import { blackAndWhite } from '../../server/drawing/page/palettes.ts';
import { arc, ring } from '../../server/drawing/page/path-steps.ts';
import { textWidth, type Typefaces } from '../../server/drawing/page/typeface.ts';
import { writePdf } from '../../server/drawing/page/write-pdf.ts';
import { panelPage } from '../../server/drawing/panel-page.ts';
import { area, rectangle, textAt } from '../../server/drawing/sheet/sheet-lines.ts';
import { extentPt, readPdf } from './read-pdf.ts';

const points = (millimetres: number): number => (millimetres * 72) / 25.4;
const ginkgo = readFileSync(fileURLToPath(new URL('../../samples/ginkgo.lap', import.meta.url)), 'utf8');

let typefaces: Typefaces;
beforeAll(async () => {
  typefaces = await loadTypefaces();
});

const fileOf = (...items: PageItem[]): PageFile => ({
  title: 'Café 格子',
  summary: '',
  palette: blackAndWhite,
  pages: [{ width: 210, height: 297, title: 'one', items }],
});

const read = async (file: PageFile) => readPdf(await writePdf(file, typefaces));

describe('a page as PDF', () => {
  test('has the size of its paper (ISO 216: A4 is 210 × 297 mm)', async () => {
    const { pages, title } = await read(fileOf());
    expect(title).toBe('Café 格子');
    expect(pages).toHaveLength(1);
    const [width, height] = pages[0]?.sizePt ?? [];
    expect(width).toBeCloseTo(points(210), 2);
    expect(height).toBeCloseTo(points(297), 2);
  });

  test('holds more strokes than a call takes arguments', async () => {
    const boxes = Array.from({ length: 30_000 }, (_, index) => area('box', rectangle(index % 200, 1, 1, 1)));
    const [head] = new TextDecoder('latin1')
      .decode((await writePdf(fileOf(...boxes), typefaces)).subarray(0, 5))
      .split('\n');
    expect(head).toBe('%PDF-');
  });

  test('keeps a shape at its size and place, y turned up', async () => {
    const { pages } = await read(fileOf(area('box', rectangle(20, 30, 100, 5))));
    const [path = []] = pages[0]?.pathsPt ?? [];
    expect(extentPt(path)[0]).toBeCloseTo(283.465, 2);
    expect(Math.min(...path.map(([x]) => x))).toBeCloseTo(points(20), 2);
    expect(Math.max(...path.map(([, y]) => y))).toBeCloseTo(points(297 - 30), 2);
  });

  test('prints letters of many scripts, and measures them as the reader does', async () => {
    const texts = ['Café “½ × 12.5 mm”', 'Ελιά, берёза', '格子 麻の葉', 'asa 麻 Ω ☐'];
    const look = { size: 6, look: 'strong' };
    const items = texts.map((text, index) => textAt(text, { x: 20, y: 30 + index * 10 }, look));
    const { pages } = await read(fileOf(...items));
    for (const [index, text] of texts.entries()) {
      const line = pages[0]?.texts.filter(({ y }) => Math.abs(y - (297 - 30 - index * 10)) < 0.1) ?? [];
      expect(line.map((each) => each.text).join('')).toBe(text);
      const last = line.at(-1);
      expect((last?.x ?? 0) + (last?.width ?? 0) - 20).toBeCloseTo(textWidth(text, look, typefaces), 1);
    }
  });

  test('ends, centres and turns a text about its place', async () => {
    const place = { x: 100, y: 100 };
    const { pages } = await read(
      fileOf(
        textAt('end', place, { size: 5, anchor: 'end' }),
        textAt('middle', place, { size: 5, anchor: 'middle' }),
        textAt('up', place, { size: 5, turn: 90, anchor: 'end' }),
      ),
    );
    const at = (text: string) => pages[0]?.texts.find((each) => each.text === text);
    expect(at('end')?.x).toBeCloseTo(100 - textWidth('end', { size: 5 }, typefaces), 1);
    expect(at('middle')?.x).toBeCloseTo(100 - textWidth('middle', { size: 5 }, typefaces) / 2, 1);
    expect(at('up')?.y).toBeCloseTo(297 - 100 - textWidth('up', { size: 5 }, typefaces), 1);
  });

  test('shows a group through its window', async () => {
    const items = [area('box', rectangle(0, 0, 50, 50))];
    const { pages } = await read(
      fileOf({ kind: 'group', name: 'tile', facts: {}, items, clip: rectangle(10, 10, 20, 20) }),
    );
    expect(pages[0]?.pathsPt.map((path) => Math.round(extentPt(path)[0]))).toEqual([
      Math.round(points(20)),
      Math.round(points(50)),
    ]);
  });

  test('gives the same bytes for the same pages', async () => {
    const file = fileOf(textAt('same', { x: 10, y: 10 }, { size: 4 }));
    expect(await writePdf(file, typefaces)).toEqual(await writePdf(file, typefaces));
  });
});

test('an arc keeps to its circle', () => {
  const steps = arc({ x: 10, y: 20 }, 30, 40, 200);
  const ends = steps.map((step) => step.slice(-2) as unknown as [number, number]);
  for (const [x, y] of ends) expect(Math.hypot(x - 10, y - 20)).toBeCloseTo(30, 9);
  const [start, ...curves] = ends.map(([x, y]) => ({ x, y }));
  expect(start?.x).toBeCloseTo(10 + 30 * Math.cos((40 * Math.PI) / 180), 9);
  expect(curves.at(-1)?.y).toBeCloseTo(20 - 30 * Math.sin((240 * Math.PI) / 180), 9);
  expect(ring([{ x: 0, y: 0 }]).at(-1)).toEqual(['Z']);
});

describe('the ginkgo', () => {
  const analysis = analyse(ginkgo);

  test('lies on one page of its own size, every strip and piece a path, its bar 100 mm', async () => {
    const [laid] = analysis.panels;
    if (!laid) throw new Error('no panel');
    const drawing = drawPanel(laid, analysis, 'Ginkgo');
    const file = panelPage(drawing, 'ginkgo.lap');
    const { pages } = await read(file);
    const [page] = pages;
    expect(page?.sizePt[0]).toBeCloseTo(points(file.pages[0]?.width ?? 0), 2);
    const widths = page?.pathsPt.map((path) => extentPt(path)[0]) ?? [];
    expect(widths.some((width) => Math.abs(width - 283.465) < 0.01)).toBe(true);
    // strips: 336 mm is the longest (the plan of the same file)
    expect(
      Math.max(...(page?.pathsPt ?? []).filter((path) => path.length === 4).map((path) => extentPt(path)[0])),
    ).toBeCloseTo(points(336), 1);
    const arms = laid.pieces.reduce((count, group) => count + group.count, 0);
    expect(page?.text).toContain(`arm A, 17.8 long, ${arms} in this panel`);
    const strips = drawing.layers.filter(({ kind }) => kind === 'strip').flatMap(({ kinds }) => kinds);
    for (const { mark } of strips) expect(page?.text).toMatch(new RegExp(`\\b${mark}\\b`));
  });

  test('has its arm on paper at full size: s/√3 − t = 17.785 mm for side 36 and face 3', async () => {
    const [arm] = analysis.kinds.pieces;
    if (!arm) throw new Error('no piece');
    const { pages } = await read(drawPiece(analysis, arm, 'ginkgo.lap'));
    const lengths = (pages[0]?.pathsPt ?? []).map((path) => extentPt(path)[0]);
    const expected = points(36 / Math.sqrt(3) - 3);
    expect(lengths.some((length) => Math.abs(length - expected) < 0.01)).toBe(true);
    expect(pages[0]?.text).toContain('17.8 tip to tip');
  });
});

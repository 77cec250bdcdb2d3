import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { readPaths } from './read-svg.ts';
import { sheetsOf } from './sheets-of.ts';
import { planAtSight } from '../plan-at-sight.ts';

const folders = ['../../samples/', '../cases/drawings/'].map((path) => fileURLToPath(new URL(path, import.meta.url)));
const designs = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((file) => file.endsWith('.lap'))
    .map((file) => ({ file, text: readFileSync(folder + file, 'utf8') })),
);

const textsOf = (svg: string): string[] =>
  [...svg.matchAll(/<text [^>]*>([^<]*)<\/text>/g)].map(([, text = '']) => text);

const cornersOf = (svg: string) => readPaths(svg).flatMap(({ rings }) => rings.flat());

const numbersOf = (texts: readonly string[]): number[] => texts.map(Number).filter((value) => !Number.isNaN(value));

describe.each(designs)('sheets of $file', ({ file, text }) => {
  const analysis = analyse(text);
  const plan = planAtSight(analysis, file);
  const sheets = sheetsOf(text, file);

  test('there is one for every mark and panel, and all stay on their paper', () => {
    expect(sheets).toHaveLength(plan.pieces.length + plan.strips.length + plan.panels.length);
    for (const { subject, svg } of sheets) {
      const [, width = 0, height = 0] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)?.map(Number) ?? [];
      expect(svg, subject).toContain(`width="${width}mm" height="${height}mm"`);
      for (const [x, y] of cornersOf(svg)) {
        expect(x, subject).toBeGreaterThanOrEqual(0);
        expect(x, subject).toBeLessThanOrEqual(width);
        expect(-y, subject).toBeGreaterThanOrEqual(0);
        expect(-y, subject).toBeLessThanOrEqual(height);
      }
    }
  });

  test('whole pieces lie on their sheet at full size', () => {
    for (const { subject, svg } of sheets.filter(({ kind }) => kind === 'piece')) {
      const piece = plan.pieces.find(({ mark }) => mark === subject);
      const drawn = readPaths(svg).find(({ mark }) => mark === subject);
      const along = drawn?.rings.flat().map(([x]) => x) ?? [];
      expect(Math.max(...along) - Math.min(...along)).toBeCloseTo(piece?.lengthMm ?? 0, 2);
    }
  });

  test('quantities are those of the plan', () => {
    for (const { subject, svg } of sheets) {
      const planned = [...plan.pieces, ...plan.strips].find(({ mark }) => mark === subject);
      if (planned) expect(numbersOf(textsOf(svg))).toEqual(expect.arrayContaining([planned.total, planned.spare]));
    }
  });

  test('a chart has every cell to fill twice, and its rows add up', () => {
    for (const { subject, svg } of sheets.filter(({ kind }) => kind === 'chart')) {
      const panel = plan.panels.find(({ name }) => name === subject);
      const needed = panel?.cells.reduce((total, cell) => total + cell.needed, 0) ?? 0;
      expect([...svg.matchAll(/data-row=/g)]).toHaveLength(2 * needed);
      const counts = textsOf(svg).flatMap((each) => (each.startsWith('= ') ? [Number(each.slice(2))] : []));
      expect(counts.reduce((total, count) => total + count, 0)).toBe(2 * needed);
    }
  });

  test('every sheet can be rendered', () => {
    const [first] = sheets;
    if (first) expect(new Resvg(first.svg).render().width).toBeGreaterThan(0);
  });
});

describe('the hexagon of hemp', () => {
  const text = readFileSync(`${folders[1] ?? ''}hemp.lap`, 'utf8');
  const sheets = new Map(sheetsOf(text, 'hemp.lap').map(({ subject, svg }) => [subject, svg]));

  test('tells the arm as worked out by hand', () => {
    const texts = textsOf(sheets.get('A') ?? '');
    expect(texts).toEqual(
      expect.arrayContaining(['20.1 tip to tip', '16.6', '60°', '30°', 'Enlarged 5:1, seen from the front']),
    );
    expect(texts).toContain('End 1: bevels 60° left, 60° right');
  });

  test('says the hand of the middle strips and only theirs', () => {
    const handed = [...sheets].filter(([, svg]) => /(Right|Left)-handed/.test(svg)).map(([subject]) => subject);
    const plan = planAtSight(analyse(text), 'hemp.lap');
    expect(handed).toEqual(plan.strips.filter(({ hand }) => hand !== null).map(({ mark }) => mark));
  });

  test('gives the order of the layers, and seats before it taps', () => {
    const texts = textsOf(sheets.get('star') ?? '').join(' ');
    expect(texts).toMatch(
      /First, notches up: family 1, lying at 0°: .*Then: family 2, lying at 60°: .*Last, notches down: family 3/,
    );
    expect(texts).toContain('Seat all laps halfway');
    expect(texts).toContain('arm as the key, cut 0.10 mm longer');
  });

  test('numbers rows and columns, and counts each row', () => {
    const [, front = ''] = (sheets.get('star') ?? '').split('data-side="front"');
    const texts = textsOf(front.split('</g>')[0] ?? '');
    expect(texts.slice(0, 7)).toEqual(['1', '2', '3', '4', '5', '6', '7']);
    expect(texts.slice(-8)).toEqual(['1', '= 5', '2', '= 7', '3', '= 7', '4', '= 5']);
  });

  test('mirrors the back', () => {
    const [front = [], back = []] = ['front', 'back'].map((side) => {
      const [, view = ''] = (sheets.get('star') ?? '').split(`data-side="${side}"`);
      return readPaths(view.split('</g>')[0] ?? '')
        .filter(({ rings }) => rings[0]?.length === 3)
        .map(({ rings }) => rings.flat().reduce((total, [x]) => total + x, 0) / 3);
    });
    expect(front.length).toBeGreaterThan(0);
    const sums = front.map((x, index) => x + (back[index] ?? 0));
    for (const sum of sums) expect(sum).toBeCloseTo(sums[0] ?? 0, 2);
  });
});

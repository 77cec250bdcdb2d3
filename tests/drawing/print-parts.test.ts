/** The parts of the printed sheet by themselves: lines, pages, tables, marks in few words. */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadTypefaces } from '../../server/machine/typefaces.ts';
import { flatItems, type PageItem } from '../../server/drawing/page/page-model.ts';
import { textWidth, type Typefaces } from '../../server/drawing/page/typeface.ts';
import { base64 } from '../../server/drawing/page/write-html.ts';
import { type Block, blockOf } from '../../server/drawing/print/blocks.ts';
import { asPart, type FlowPart, pourSections } from '../../server/drawing/print/flow.ts';
import { markRanges } from '../../server/shop/marks/mark-ranges.ts';
import { printTable } from '../../server/drawing/print/table.ts';
import { wrapText } from '../../server/drawing/print/wrap-text.ts';
import { textAt } from '../../server/drawing/sheet/sheet-lines.ts';

let typefaces: Typefaces;
beforeAll(async () => {
  typefaces = await loadTypefaces();
});

const block = (text: string, height: number, keepsWithNext = false): Block =>
  blockOf(height, [textAt(text, { x: 0, y: 1 }, { size: 1 })], keepsWithNext);

const textsIn = (items: readonly PageItem[]): string[] =>
  [...flatItems(items)].flatMap((item) => (item.kind === 'text' ? [item.text] : []));

const pour = (parts: readonly FlowPart[], height: number): string[][] =>
  pourSections([{ title: 'all', part: 1, parts }], height).map(({ items }) => textsIn(items));

const tableOf = (rows: number, rowHeight: number): FlowPart => ({
  kind: 'table',
  title: (continued) => block(continued ? 'title, continued' : 'title', 5),
  head: block('head', 5),
  rows: Array.from({ length: rows }, (_, index) => block(`row ${index + 1}`, rowHeight)),
  tail: block('tail', 5),
});

describe('pages', () => {
  test('a table that a page can hold is never split: it moves to the next page whole', () => {
    expect(pour([asPart(block('before', 60)), tableOf(4, 10)], 100)).toEqual([
      ['before'],
      ['title', 'head', 'row 1', 'row 2', 'row 3', 'row 4', 'tail'],
    ]);
  });

  test('a longer one goes on with its head repeated and “continued”, the tail with the last row', () => {
    expect(pour([tableOf(10, 20)], 100)).toEqual([
      ['title', 'head', 'row 1', 'row 2', 'row 3', 'row 4'],
      ['title, continued', 'head', 'row 5', 'row 6', 'row 7', 'row 8'],
      ['title, continued', 'head', 'row 9', 'row 10', 'tail'],
    ]);
  });

  test('a heading stays with what follows it', () => {
    expect(
      pour([asPart(block('before', 80)), asPart(block('heading', 10, true)), asPart(block('text', 30))], 100),
    ).toEqual([['before'], ['heading', 'text']]);
  });

  test('nothing is lost, nothing is cut, whatever the heights', () => {
    const heights = fc.array(fc.record({ height: fc.integer({ min: 1, max: 100 }), keeps: fc.boolean() }), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(heights, (parts) => {
        const blocks = parts.map(({ height, keeps }, index) => block(String(index), height, keeps));
        const bodies = pourSections([{ title: 'all', part: 2, parts: blocks.map(asPart) }], 100);
        expect(bodies.flatMap(({ items }) => textsIn(items))).toEqual(blocks.map((_, index) => String(index)));
        for (const { items } of bodies) {
          for (const item of flatItems(items)) {
            if (item.kind !== 'text') continue;
            const height = blocks[Number(item.text)]?.height ?? 0;
            expect(item.at.y - 1 + height).toBeLessThanOrEqual(100);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('begin anew for every section, titles told on', () => {
    const bodies = pourSections(
      [
        { title: 'one', part: 1, parts: [asPart(block('a', 60)), asPart(block('b', 60))] },
        { title: 'none', part: 1, parts: [] },
        { title: 'two', part: 2, parts: [asPart(block('c', 10))] },
      ],
      100,
    );
    expect(bodies.map(({ title, part }) => [title, part])).toEqual([
      ['one', 1],
      ['one, continued', 1],
      ['two', 2],
    ]);
  });
});

describe('lines', () => {
  const words = fc.string({ unit: fc.constantFrom('a', 'W', ' ', '格', 'ß', '-'), maxLength: 80 });

  test('are no wider than their room and lose no letter', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 6, max: 60 }), (text, width) => {
        const look = { size: 4, look: 'strong' };
        const lines = wrapText(text, look, width, typefaces);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        for (const line of lines) expect(textWidth(line, look, typefaces)).toBeLessThanOrEqual(width + 0.001);
      }),
      { numRuns: 60 },
    );
  });

  test('are broken at spaces where they can be', () => {
    const width = textWidth('seat all laps', { size: 4 }, typefaces);
    expect(wrapText('seat all laps halfway', { size: 4 }, width, typefaces)).toEqual(['seat all laps', 'halfway']);
  });
});

test('a table gives way in its widest columns until it fits, and splits a row that would fill a page', () => {
  const rows = [{ mark: 'S1', note: 'word '.repeat(400).trim() }];
  const columns = [
    { title: 'mark', cell: ({ mark }: (typeof rows)[number]) => mark },
    { title: 'note', cell: ({ note }: (typeof rows)[number]) => note },
  ];
  const table = printTable('Notes', columns, rows, 100, typefaces);
  expect(table.rows.length).toBeGreaterThan(1);
  expect(textsIn(table.rows.flatMap(({ items }) => items)).join(' ')).toBe(`S1 ${rows[0]?.note ?? ''}`);
  for (const { items, height } of table.rows) {
    expect(height).toBeLessThan(120);
    for (const item of flatItems(items)) {
      if (item.kind === 'text') expect(item.at.x + textWidth(item.text, item, typefaces)).toBeLessThanOrEqual(100.001);
    }
  }
});

test.each([
  [['S1', 'S2', 'S3', 'S5'], 'S1–S3, S5'],
  [['A', 'B1', 'B2'], 'A, B1, B2'],
  [['S9', 'S11', 'S10'], 'S9, S11, S10'],
  [[], ''],
])('marks %j are written %s', (marks, words) => {
  expect(markRanges(marks)).toBe(words);
});

test.each([
  ['', ''],
  ['f', 'Zg=='],
  ['fo', 'Zm8='],
  ['foobar', 'Zm9vYmFy'],
])('base 64 of “%s” is “%s” (the vectors of RFC 4648)', (text, coded) => {
  expect(base64(new TextEncoder().encode(text))).toBe(coded);
});

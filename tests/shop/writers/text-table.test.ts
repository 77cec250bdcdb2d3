import { expect, test } from 'vitest';
import { textTable } from '../../../server/shop/writers/text-table.ts';

const columns = [
  { title: 'mark', cell: (row: { mark: string; make: number }) => row.mark },
  { title: 'make', right: true, cell: (row: { mark: string; make: number }) => String(row.make) },
];

test('columns are as wide as their widest cell, numbers flush right', () => {
  const rows = [
    { mark: 'arm 1', make: 7 },
    { mark: '葉', make: 12345 },
  ];
  expect(textTable(columns, rows)).toBe(['mark    make', '─────  ─────', 'arm 1      7', '葉      12345'].join('\n'));
});

test('no rows, no table', () => {
  expect(textTable(columns, [])).toBe('');
});

/** Plain tables for reading: columns as wide as their widest cell, a rule under the heads. */
import { maximum } from '../../geometry/numbers.ts';
import { type LengthFigures, lengthFigures } from '../../words/figures.ts';

export interface Column<Row> {
  /** Where a column has one unit for all, its title says it. */
  readonly title: string | ((words: LengthFigures) => string);
  /** Numbers stand flush right. */
  readonly right?: boolean;
  readonly cell: (row: Row, words: LengthFigures) => string;
}

/** The table of `rows`, or an empty text where there are none; no line ends in spaces. Lengths stand as `words` have them. */
export function textTable<Row>(
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  words: LengthFigures = lengthFigures('mm'),
): string {
  if (rows.length === 0) return '';
  const cells = [
    columns.map((column) => titleOf(column, words)),
    ...rows.map((row) => columns.map((column) => column.cell(row, words))),
  ];
  const widths = columns.map((_, index) => maximum(cells.map((line) => lengthOf(line[index]))));
  const lines = cells.map((line) =>
    columns.map((column, index) => fitted(line[index] ?? '', widths[index] ?? 0, column)).join('  '),
  );
  const rule = widths.map((width) => '─'.repeat(width)).join('  ');
  return [lines[0] ?? '', rule, ...lines.slice(1)].map((line) => line.trimEnd()).join('\n');
}

export const titleOf = <Row>({ title }: Column<Row>, words: LengthFigures): string =>
  typeof title === 'string' ? title : title(words);

function fitted(text: string, width: number, column: { readonly right?: boolean }): string {
  const spaces = ' '.repeat(Math.max(0, width - lengthOf(text)));
  return column.right ? spaces + text : text + spaces;
}

/** Characters, counted by code point so that letters outside the basic plane keep the columns straight. */
const lengthOf = (text: string | undefined): number => Array.from(text ?? '').length;

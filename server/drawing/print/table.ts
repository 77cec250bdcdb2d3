/** Tables of the printed sheet: columns as wide as their texts need, long texts in several lines, one row a block. */
import { maximum, minimum, sum } from '../../geometry/numbers.ts';
import type { PageItem, TextLook } from '../page/page-model.ts';
import { textWidth, type Typefaces } from '../page/typeface.ts';
import { area, openLine, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { ascent, type Block, blockOf, leading, paragraph, stacked, space } from './blocks.ts';
import type { FlowTable } from './flow.ts';
import { letterSizes } from './print-context.ts';
import { wrapText } from './wrap-text.ts';

export interface PrintColumn<Row> {
  readonly title: string;
  readonly align?: 'left' | 'right';
  readonly strong?: boolean;
  /** A tick box, or a field to write in by hand, in place of a text. */
  readonly tick?: boolean;
  readonly toFill?: boolean;
  readonly cell?: (row: Row) => string;
}

const gap = 3;
const padding = 1.3;
const boxSize = 4.4;
const fieldToFill = { width: 25, height: 8 };
/** A table with room left over is spread, but not further than this between two columns. */
const widestGap = 9;
const headSize = letterSizes.small;
const size = letterSizes.figure;
/** A cell with more lines goes on in further rows, so that a row always finds room on a page. */
const mostLines = 16;

/** What stands over a table: told at its start unless a heading says it already, and on every page it runs on to. */
export interface TableTitle {
  readonly text: string;
  readonly atStart: boolean;
}

/** A table in `width` millimetres, its title repeated with the head on every page it runs on to. */
export function printTable<Row>(
  title: string | TableTitle,
  columns: readonly PrintColumn<Row>[],
  rows: readonly Row[],
  width: number,
  typefaces: Typefaces,
  tail: Block | null = null,
): FlowTable {
  const cells = rows.map((row) => columns.map(({ cell }) => cell?.(row) ?? ''));
  const widths = columnWidths(columns, cells, width, typefaces);
  const spread = Math.min(widestGap, (width - sum(widths)) / Math.max(1, widths.length - 1));
  const lefts = widths.map((_, index) => sum(widths.slice(0, index)) + index * spread);
  const leastHeight = columns.some(({ toFill }) => toFill) ? fieldToFill.height : boxSize;
  const look = ({ strong = false }: PrintColumn<Row>): TextLook => ({ size, look: strong ? 'strong' : '' });
  const lines = cells.map((row) =>
    row.map((text, index) => {
      const column = columns[index];
      return column ? wrapText(text, look(column), widths[index] ?? 0, typefaces) : [];
    }),
  );
  const rowBlock = (row: readonly (readonly string[])[], isFirst: boolean): Block => {
    const height = Math.max(leastHeight, maximum(row.map((cell) => cell.length * leading * size))) + 2 * padding;
    const items = columns.flatMap((column, index): PageItem[] => {
      const left = lefts[index] ?? 0;
      if (column.tick) return isFirst ? [area('box', rectangle(left, padding, boxSize, boxSize))] : [];
      if (column.toFill) return [area('box', rectangle(left, padding / 2, widths[index] ?? 0, height - padding))];
      return cellItems(row[index] ?? [], look(column), column.align === 'right', left, widths[index] ?? 0, padding);
    });
    return blockOf(height, [...items, rule(width, height, 'guide')]);
  };
  const headLines = columns.map(({ title: text }, index) =>
    wrapText(text, { size: headSize }, widths[index] ?? 0, typefaces),
  );
  const headHeight = maximum(headLines.map((each) => each.length)) * leading * headSize + 1;
  const head = blockOf(
    headHeight,
    [
      ...columns.flatMap(({ align }, index) =>
        cellItems(
          headLines[index] ?? [],
          { size: headSize, look: 'quiet' },
          align === 'right',
          lefts[index] ?? 0,
          widths[index] ?? 0,
          0,
        ),
      ),
      rule(width, headHeight, 'rule'),
    ],
    true,
  );
  return {
    kind: 'table',
    title: (continued) => tableTitle(title, continued, width, typefaces),
    head,
    rows: lines.flatMap((row) => inParts(row).map((part, index) => rowBlock(part, index === 0))),
    tail,
  };
}

function tableTitle(title: string | TableTitle, continued: boolean, width: number, typefaces: Typefaces): Block | null {
  const { text: words, atStart } = typeof title === 'string' ? { text: title, atStart: true } : title;
  if (!continued && !atStart) return null;
  const text = continued ? `${words}, continued` : words;
  const block = stacked([
    space(2),
    paragraph(text, { size: letterSizes.figure, look: 'strong' }, width, typefaces),
    space(1),
  ]);
  return { ...block, keepsWithNext: true };
}

const rule = (width: number, y: number, look: 'rule' | 'guide'): PageItem =>
  openLine(look, [
    { x: 0, y },
    { x: width, y },
  ]);

function cellItems(
  lines: readonly string[],
  look: TextLook,
  right: boolean,
  left: number,
  width: number,
  top: number,
): PageItem[] {
  const x = right ? left + width : left;
  return lines.map((line, index) =>
    textAt(line, { x, y: top + (ascent + index * leading) * look.size }, { ...look, anchor: right ? 'end' : 'start' }),
  );
}

/** A row whose cells have too many lines as several rows. */
function inParts(row: readonly (readonly string[])[]): (readonly string[])[][] {
  const parts = Math.max(1, Math.ceil(Math.max(0, maximum(row.map((cell) => cell.length))) / mostLines));
  return Array.from({ length: parts }, (_, index) =>
    row.map((cell) => cell.slice(index * mostLines, (index + 1) * mostLines)),
  );
}

/** Natural widths where they fit; else the widest columns give way to an equal width until all fit. */
function columnWidths<Row>(
  columns: readonly PrintColumn<Row>[],
  cells: readonly (readonly string[])[],
  width: number,
  typefaces: Typefaces,
): number[] {
  const natural = columns.map(({ title, strong = false, tick, toFill }, index) => {
    if (tick) return boxSize;
    if (toFill) return fieldToFill.width;
    const texts = cells.map((row) => textWidth(row[index] ?? '', { size, look: strong ? 'strong' : '' }, typefaces));
    const longest = texts.reduce((most, each) => Math.max(most, each), 0);
    return Math.max(longest, headWidth(title, typefaces));
  });
  const room = width - gap * (columns.length - 1);
  const most = levelThatFits(natural, room);
  return natural.map((each) => Math.min(each, most));
}

/** A head may stand in two lines, more where the column gives way. */
function headWidth(title: string, typefaces: Typefaces): number {
  const width = (text: string): number => textWidth(text, { size: headSize }, typefaces);
  const words = title.split(' ');
  const ways = words.map((_, index) =>
    Math.max(width(words.slice(0, index + 1).join(' ')), width(words.slice(index + 1).join(' '))),
  );
  return minimum(ways);
}

/** The width that no column may exceed so that all together take `room`. */
function levelThatFits(widths: readonly number[], room: number): number {
  const sorted = [...widths].sort((a, b) => a - b);
  let left = room;
  for (const [index, width] of sorted.entries()) {
    const share = left / (sorted.length - index);
    if (width > share) return share;
    left -= width;
  }
  return Math.max(0, maximum(widths));
}

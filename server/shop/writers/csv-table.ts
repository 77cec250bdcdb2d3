/** Tables for spreadsheets: RFC 4180, a line of heads first, lines ended by CR LF, numbers with a decimal point. */
import { lengthFigures } from '../../words/figures.ts';
import { type Column, titleOf } from './text-table.ts';

/** Whatever the file's units are. */
const inMillimetres = lengthFigures('mm');

/** The table of `rows`; with no rows, the heads alone. */
export function csvTable<Row>(columns: readonly Column<Row>[], rows: readonly Row[]): string {
  const lines = [
    columns.map((column) => titleOf(column, inMillimetres)),
    ...rows.map((row) => columns.map((column) => column.cell(row, inMillimetres))),
  ];
  return lines.map((cells) => `${cells.map(field).join(',')}\r\n`).join('');
}

/** A field in quotes where a comma, a quote or a line break in it makes them needed. */
const field = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

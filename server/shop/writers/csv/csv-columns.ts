/** Columns of tables for spreadsheets: text, and numbers as they stand in the JSON. */
import type { Column } from '../text-table.ts';

export const text = <Row>(title: string, cell: (row: Row) => string): Column<Row> => ({ title, cell });
export const figure = <Row>(title: string, value: (row: Row) => number): Column<Row> => ({
  title,
  cell: (row) => String(value(row)),
});

/** Empty where there is no number. */
export const optionalFigure = <Row>(title: string, value: (row: Row) => number | null): Column<Row> => ({
  title,
  cell: (row) => String(value(row) ?? ''),
});

/** A change as plain text and as Markdown (GitHub's tables), for terminals and for pull requests. */
import { textTable } from '../shop/writers/text-table.ts';
import type { ChangeReport, ReportTable } from './change-report.ts';

/** Plain text; ends with a line break. */
export function writeChangeText(report: ChangeReport): string {
  const head = [report.title, report.versions].join('\n');
  const tables = report.tables.map((table) => `${table.title}\n\n${plainTable(table)}`);
  return `${[head, report.summary.join('\n'), ...notesOf(report), ...tables].join('\n\n')}\n`;
}

const notesOf = ({ notes }: ChangeReport): string[] => (notes.length > 0 ? [notes.join('\n')] : []);

const plainTable = ({ columns, rows }: ReportTable): string =>
  textTable(
    columns.map((column, index) => ({ ...column, cell: (cells: readonly string[]) => cells[index] ?? '' })),
    rows.map(({ cells }) => cells),
  );

/** More rows than this make a comment nobody reads. */
const rowsShown = 40;

/** Markdown; long tables are folded away, and end with how many rows more there are. */
export function writeChangeMarkdown(report: ChangeReport): string {
  const parts = [
    `### ${inMarkdown(report.title)}`,
    inMarkdown(report.versions),
    report.summary.map((sentence) => `- ${inMarkdown(sentence)}`).join('\n'),
    ...(report.notes.length > 0 ? [report.notes.map((note) => `> ${inMarkdown(note)}`).join('\n>\n')] : []),
    ...report.tables.map(markdownTable),
  ];
  return `${parts.join('\n\n')}\n`;
}

/** Tables up to this length stand open. */
const openRows = 12;

function markdownTable({ title, columns, rows }: ReportTable): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(inMarkdown).join(' | ')} |`;
  const rule = `| ${columns.map(({ right }) => (right ? '--:' : '---')).join(' | ')} |`;
  const shown = rows.slice(0, rowsShown).map(({ cells }) => line(cells));
  const rest = rows.length - shown.length;
  const table = [line(columns.map((column) => column.title)), rule, ...shown].join('\n');
  const more = rest > 0 ? `\n\n${rest} rows more: \`halflap compare\` lists them all.` : '';
  if (rows.length <= openRows) return `**${title}**\n\n${table}${more}`;
  return `<details><summary><b>${title}</b> (${rows.length})</summary>\n\n${table}${more}\n\n</details>`;
}

/** Text that stands for itself in Markdown, in a table too. */
const inMarkdown = (text: string): string => text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&').replace(/[\r\n]+/g, ' ');

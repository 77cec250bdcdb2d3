/** A change as a page of its own: sentences, overlay, tables. No script, nothing fetched. */
import { escaped } from '../drawing/svg-text.ts';
import type { ChangeReport, ReportTable } from './change-report.ts';

/** The page; `overlay` is the SVG of the panels, empty where none is drawn. */
export function writeChangeHtml(report: ChangeReport, overlay: string): string {
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(report.title)}: what changed</title>
<style>
body { margin: 2rem auto; max-width: 62rem; padding: 0 1rem; background: #fdfcf9; color: #33281d; font: 15px/1.5 sans-serif; }
h1 { margin: 0; font-size: 1.5rem; }
h2 { margin: 2rem 0 0.4rem; font-size: 1.1rem; border-left: 0.4rem solid #0f5257; padding-left: 0.6rem; }
.versions { margin: 0.2rem 0 1rem; color: #6b5d4c; }
.notes { border-left: 0.4rem double #9a4a1c; padding-left: 0.8rem; }
.overlay { max-width: 100%; height: auto; border: 1px solid #ddd5c6; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { padding: 0.2rem 0.7rem 0.2rem 0; border-bottom: 1px solid #ddd5c6; text-align: left; vertical-align: top; }
.right { text-align: right; }
@media print { body { max-width: none; margin: 0; background: none; } tr { break-inside: avoid; } }
</style>
</head>
<body>
${changeBody(report, overlay)}
</body>
</html>
`;
}

/** The same without the page round it, for a page that has its own looks. Rows say what they are about. */
export function changeBody(report: ChangeReport, overlay: string): string {
  return [
    `<h1>${escaped(report.title)}</h1>`,
    `<p class="versions">${escaped(report.versions)}</p>`,
    list('summary', report.summary),
    ...(report.notes.length > 0 ? [list('notes', report.notes)] : []),
    ...(overlay === '' ? [] : [`<figure>${overlay}</figure>`]),
    ...report.tables.map(tableMarkup),
  ].join('\n');
}

const list = (look: string, items: readonly string[]): string =>
  `<ul class="${look}">${items.map((item) => `<li>${escaped(item)}</li>`).join('')}</ul>`;

function tableMarkup({ title, columns, rows }: ReportTable): string {
  const side = (index: number): string => (columns[index]?.right ? ' class="right"' : '');
  const heads = columns.map((column, index) => `<th scope="col"${side(index)}>${escaped(column.title)}</th>`).join('');
  const lines = rows.map(({ cells, subject }) => {
    const about = subject
      ? ` data-sort="${subject.sort}" data-old="${escaped(subject.old ?? '')}" data-new="${escaped(subject.new ?? '')}"`
      : '';
    return `<tr${about}>${cells.map((cell, index) => `<td${side(index)}>${escaped(cell)}</td>`).join('')}</tr>`;
  });
  return `<h2>${escaped(title)}</h2>\n<table><thead><tr>${heads}</tr></thead><tbody>\n${lines.join('\n')}\n</tbody></table>`;
}

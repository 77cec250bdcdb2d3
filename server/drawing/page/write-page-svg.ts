/** A drawing of one page as an SVG file. */
import { escaped } from '../svg-text.ts';
import type { PageFile } from './page-model.ts';
import { styleRules, svgPage } from './page-svg.ts';

/** The file's first page at full size, ending with a line break. */
export function writePageSvg({ title, summary, palette, pages }: PageFile): string {
  const heading = [
    `<title id="sheet-title">${escaped(title)}</title>`,
    `<desc id="sheet-summary">${escaped(summary)}</desc>`,
    '<style>',
    ...styleRules(palette, 'sans-serif'),
    '</style>',
  ];
  const labels = 'role="img" aria-labelledby="sheet-title sheet-summary"';
  const lines = pages.slice(0, 1).flatMap((page) => svgPage(page, labels, heading));
  return `${lines.join('\n')}\n`;
}

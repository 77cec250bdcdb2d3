/** Pages as one HTML file that needs nothing else: every page a picture of its paper's size, the letters carried inside. */
import { escaped, number } from '../svg-text.ts';
import type { PageFile } from './page-model.ts';
import { styleRules, svgPage } from './page-svg.ts';
import type { Typeface, Typefaces } from './typeface.ts';

const family = 'sheet letters';

/**
 * The file, ending with a line break: no scripts, nothing fetched. Of the typefaces only the first is carried, plain
 * and strong; letters that it lacks come from the reader's machine.
 */
export function writeHtml({ title, summary, palette, pages }: PageFile, typefaces: Typefaces): string {
  const [first] = pages;
  const paper = first ? `${number(first.width)}mm ${number(first.height)}mm` : 'auto';
  const lines = [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<title>${escaped(title)}</title>`,
    `<meta name="description" content="${escaped(summary)}">`,
    '<style>',
    fontRule(typefaces.plain[0], 'normal'),
    fontRule(typefaces.strong[0], 'bold'),
    `@page { size: ${paper}; margin: 0; }`,
    'body { margin: 0; background: #d8d8d8; }',
    'svg { display: block; margin: 4mm auto; break-after: page; break-inside: avoid; }',
    '@media print { body { background: none; } svg { margin: 0; } svg:last-of-type { break-after: auto; } }',
    ...styleRules(palette, `'${family}', sans-serif`),
    '</style>',
    '</head>',
    '<body>',
    ...pages.flatMap((page, index) =>
      svgPage(page, `role="img" aria-label="${escaped(page.title)}"`, [], `page-${index + 1}`),
    ),
    '</body>',
    '</html>',
  ];
  return `${lines.join('\n')}\n`;
}

const fontRule = ({ bytes }: Typeface, weight: string): string =>
  `@font-face { font-family: '${family}'; font-weight: ${weight}; src: url(data:font/ttf;base64,${base64(bytes)}) format('truetype'); }`;

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** RFC 4648. */
export function base64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let index = 0; index < bytes.length; index += 3) {
    const [a = 0, b, c] = bytes.subarray(index, index + 3);
    const three = (a << 16) | ((b ?? 0) << 8) | (c ?? 0);
    const letter = (shift: number): string => alphabet[(three >> shift) & 63] ?? '';
    parts.push(letter(18) + letter(12) + (b === undefined ? '=' : letter(6)) + (c === undefined ? '=' : letter(0)));
  }
  return parts.join('');
}

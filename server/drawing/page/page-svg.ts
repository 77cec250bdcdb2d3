/** Pages as SVG: named looks become classes, told once in a style sheet. */
import { number, escaped } from '../svg-text.ts';
import type { Facts, Look, Page, PageItem, Palette, PathItem, PathStep, TextItem } from './page-model.ts';

/** The rules of a style sheet, one a line; `within` is put before every selector. */
export function styleRules({ looks, letters }: Palette, fonts: string, within = ''): string[] {
  return [
    `${within}.paper { fill: #ffffff; }`,
    `${within}text { fill: ${letters.plain}; font-family: ${fonts}; font-kerning: none; font-variant-ligatures: none; }`,
    `${within}text.halo { stroke: #ffffff; stroke-width: 1; stroke-linejoin: round; paint-order: stroke; }`,
    `${within}text.quiet { fill: ${letters.quiet}; }`,
    `${within}text.strong { font-weight: bold; }`,
    `${within}text.accent { fill: ${letters.accent}; }`,
    `${within}text.reversed { fill: ${letters.reversed}; }`,
    ...Object.entries(looks).map(([name, look]) => `${within}.${name} { ${declarations(look).join(' ')} }`),
  ];
}

function declarations({ fill, opacity, stroke, width, dash }: Look): string[] {
  const filled = [`fill: ${fill ?? 'none'};`, ...(opacity === undefined ? [] : [`fill-opacity: ${opacity};`])];
  if (stroke === null) return [...filled, 'stroke: none;'];
  return [
    ...filled,
    `stroke: ${stroke};`,
    `stroke-width: ${width};`,
    'stroke-linecap: round;',
    'stroke-linejoin: round;',
    ...(dash.length === 0 ? [] : [`stroke-dasharray: ${dash.join(' ')};`, 'stroke-linecap: butt;']),
  ];
}

/** The elements of a page's items. `idStart` begins every id, so that several pages can stand in one file. */
export function svgItems(items: readonly PageItem[], idStart = 'clip'): string[] {
  return items.flatMap((item, index) => {
    if (item.kind === 'path') return [pathElement(item)];
    if (item.kind === 'text') return [textElement(item)];
    const id = `${idStart}-${index}`;
    const open = `<g class="${escaped(item.name)}"${factsText(item.facts)}`;
    if (item.clip === null) return [`${open}>`, ...svgItems(item.items, id), '</g>'];
    const shape = item.clip.map(({ x, y }) => `${number(x)} ${number(y)}`).join('L');
    return [
      `<clipPath id="${id}"><path d="M${shape}Z"/></clipPath>`,
      `${open} clip-path="url(#${id})">`,
      ...svgItems(item.items, id),
      '</g>',
    ];
  });
}

/** A whole page as one element, a millimetre to the unit, at full size. `more` stands first inside it. */
export function svgPage(page: Page, attributes: string, more: readonly string[], idStart?: string): string[] {
  const [width, height] = [number(page.width), number(page.height)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" ${attributes}>`,
    ...more,
    `<path class="paper" d="M0 0h${width}v${height}h-${width}Z"/>`,
    ...svgItems(page.items, idStart),
    '</svg>',
  ];
}

function pathElement({ look, steps, facts }: PathItem): string {
  const inked = typeof look === 'string' ? `class="${look}"` : `style="${declarations(look).join(' ')}"`;
  return `<path ${inked}${factsText(facts)} d="${steps.map(stepText).join('')}"/>`;
}

const stepText = ([name, ...figures]: PathStep): string => name + figures.map(number).join(' ');

const factsText = (facts: Facts): string =>
  Object.entries(facts)
    .map(([name, value]) => ` data-${name}="${typeof value === 'number' ? number(value) : escaped(value)}"`)
    .join('');

function textElement({ text, at, size, anchor = 'start', look = '', turn = 0 }: TextItem): string {
  const classes = look === '' ? '' : ` class="${look}"`;
  const aligned = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const where =
    turn === 0
      ? `x="${number(at.x)}" y="${number(at.y)}"`
      : `transform="translate(${number(at.x)} ${number(at.y)}) rotate(${number(-turn)})"`;
  return `<text${classes} ${where}${aligned} font-size="${number(size)}">${escaped(text)}</text>`;
}

/** Lines and letters of a sheet: SVG elements in paper millimetres, y down. Widths and dashes are told in the style sheet. */
import type { Point } from '../../geometry/point.ts';
import { escaped, number } from '../svg-text.ts';

export const ink = '#33281d';
export const accent = '#0f5257';

/** Widths of ISO 128's 0.35 group: visible edges wide, all else narrow. */
export const sheetStyle = [
  '<style>',
  '.paper { fill: #ffffff; }',
  `text { fill: ${ink}; font-family: sans-serif; }`,
  'text.halo { stroke: #ffffff; stroke-width: 1; stroke-linejoin: round; paint-order: stroke; }',
  'text.quiet { fill: #6b5d4d; }',
  'text.strong { font-weight: bold; }',
  `text.accent { fill: ${accent}; }`,
  `.wood { fill: #f3e8d0; stroke: ${ink}; stroke-width: 0.35; stroke-linejoin: round; }`,
  `.bare { fill: #f3e8d0; stroke: none; }`,
  `.edge { fill: none; stroke: ${ink}; stroke-width: 0.35; stroke-linecap: round; stroke-linejoin: round; }`,
  `.cut { fill: #ffffff; stroke: ${ink}; stroke-width: 0.35; stroke-linejoin: round; }`,
  `.hidden { fill: none; stroke: ${ink}; stroke-width: 0.18; stroke-dasharray: 1.2 0.6; }`,
  `.axis { fill: none; stroke: ${ink}; stroke-width: 0.18; stroke-dasharray: 5 1 0.6 1; }`,
  `.thin { fill: none; stroke: ${accent}; stroke-width: 0.18; }`,
  `.arrow { fill: ${accent}; stroke: none; }`,
  '.guide { fill: none; stroke: #b5c8c8; stroke-width: 0.18; }',
  `.outline { fill: none; stroke: ${accent}; stroke-width: 0.45; stroke-linejoin: round; }`,
  `.rule { fill: none; stroke: ${ink}; stroke-width: 0.25; }`,
  `.box { fill: #ffffff; stroke: ${ink}; stroke-width: 0.3; }`,
  '</style>',
];

export type LineKind = 'edge' | 'hidden' | 'axis' | 'thin' | 'guide' | 'outline' | 'rule';
export type AreaKind = 'wood' | 'bare' | 'cut' | 'box' | 'arrow';

export interface TextLook {
  readonly size: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Extra classes: halo, quiet, strong, accent. */
  readonly look?: string;
  /** Degrees counter-clockwise as seen on the page. */
  readonly turn?: number;
}

const at = ({ x, y }: Point): string => `${number(x)} ${number(y)}`;

export const openLine = (kind: LineKind, points: readonly Point[]): string =>
  `<path class="${kind}" d="M${points.map(at).join('L')}"/>`;

/** A closed shape; `attributes` are written as they are. */
export const area = (kind: AreaKind | LineKind, points: readonly Point[], attributes = ''): string =>
  `<path class="${kind}"${attributes} d="M${points.map(at).join('L')}Z"/>`;

/** A text whose base line begins, is centred or ends at `place`. */
export function textAt(text: string, place: Point, { size, anchor = 'start', look = '', turn = 0 }: TextLook): string {
  const classes = look === '' ? '' : ` class="${look}"`;
  const aligned = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const where =
    turn === 0
      ? `x="${number(place.x)}" y="${number(place.y)}"`
      : `transform="translate(${at(place)}) rotate(${number(-turn)})"`;
  return `<text${classes} ${where}${aligned} font-size="${number(size)}">${escaped(text)}</text>`;
}

/** Lines of text under one another, the first base line at `place`. */
export const textBlock = (lines: readonly string[], place: Point, leading: number, look: TextLook): string[] =>
  lines.map((line, index) => textAt(line, { x: place.x, y: place.y + index * leading }, look));

export const rectangle = (left: number, top: number, width: number, height: number): Point[] => [
  { x: left, y: top },
  { x: left + width, y: top },
  { x: left + width, y: top + height },
  { x: left, y: top + height },
];

/** Splits `text` at spaces so that no line has more than `most` letters, if its words allow. */
export function wrapped(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

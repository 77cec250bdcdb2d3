/** The sheet around a working drawing: paper of ISO 216, a heading, and a foot that says what it rests on and how to check the print. */
import type { LengthUnit } from '../../design/design-model.ts';
import type { PageFile, PageItem } from '../page/page-model.ts';
import { coloured } from '../page/palettes.ts';
import { barItems, checkBar } from './check-bar.ts';
import { openLine, textAt, textBlock, wrapped } from './sheet-lines.ts';

export interface Paper {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** Upright sizes of ISO 216 in millimetres, the smallest first. */
const sizes = [
  ['A4', 210, 297],
  ['A3', 297, 420],
  ['A2', 420, 594],
  ['A1', 594, 841],
  ['A0', 841, 1189],
] as const;

export const papers: readonly Paper[] = sizes.flatMap(([name, short, long]) => [
  { name: `${name} upright`, width: short, height: long },
  { name: `${name} lying`, width: long, height: short },
]);

export const lyingA4: Paper = { name: 'A4 lying', width: 297, height: 210 };

export const margin = 14;
export const headHeight = 20;
export const footHeight = 29;

export interface SheetText {
  /** The name large at the head, such as a mark. */
  readonly mark: string;
  readonly heading: string;
  readonly subheading: string;
  /** The design's title, its file and the state of its text. */
  readonly origin: string;
  /** What is taken as given. */
  readonly assumptions: readonly string[];
  /** One thing to check in a minute. */
  readonly check: string;
}

/** A file of one sheet at full size, its figures in `units`. `summary` says in words what is drawn. */
export function sheetPage(
  paper: Paper,
  units: LengthUnit,
  text: SheetText,
  summary: string,
  body: readonly PageItem[],
): PageFile {
  const { width, height } = paper;
  const title = `${text.mark}: ${text.heading}`;
  const items = [...head(text), ...body, ...foot(paper, units, text)];
  return { title, summary, palette: coloured, pages: [{ width, height, title, items }] };
}

const markSize = 11;
/** Widest letters of a common sans-serif face, in ems. */
const widestLetter = 0.75;

function head({ mark, heading, subheading }: SheetText): PageItem[] {
  const left = margin + Array.from(mark).length * markSize * widestLetter + 4;
  return [
    textAt(mark, { x: margin, y: margin + 9.5 }, { size: markSize, look: 'strong accent' }),
    textAt(heading, { x: left, y: margin + 3.6 }, { size: 5, look: 'strong' }),
    textAt(subheading, { x: left, y: margin + 9.5 }, { size: 3.8 }),
  ];
}

const footSize = 2.9;

function foot({ width, height }: Paper, units: LengthUnit, { origin, assumptions, check }: SheetText): PageItem[] {
  const bar = checkBar(units);
  const top = height - footHeight;
  const barLeft = width - margin - bar.length;
  const letters = Math.floor((barLeft - margin - 6) / (footSize * 0.5));
  const lines = [origin, ...assumptions].flatMap((line) => wrapped(line, letters));
  return [
    openLine('rule', [
      { x: margin, y: top },
      { x: width - margin, y: top },
    ]),
    ...textBlock(lines, { x: margin, y: top + 4.6 }, 4, { size: footSize }),
    ...barItems(bar, { x: barLeft, y: top + 5 }, 2.4),
    textAt(
      `Bar of ${bar.name} on the print: measure it; ${bar.units}`,
      { x: width - margin, y: top + 11.4 },
      { size: 3.1, anchor: 'end' },
    ),
    textAt(check, { x: width - margin, y: top + 16.5 }, { size: 3.1, anchor: 'end', look: 'strong' }),
  ];
}

/** What stands under a drawing: title, the summary, a bar to check the print with, and a full-size sample of every infill piece. */
import type { Drawing, DrawnKind } from './drawing.ts';
import { commonestMark, kindsOf } from './svg-marks.ts';
import { escaped, number, pathData } from './svg-text.ts';

const titleSize = 5;
const lineSize = 3.4;
const lineHeight = 5;
const sampleHeight = 7;
const bar = 100;

export interface Caption {
  readonly lines: readonly string[];
  /** Lowest line of the caption in the picture's flipped coordinates. */
  readonly bottom: number;
}

/** The caption with its upper left corner at `left`, `top` (flipped coordinates, millimetres). */
export function captionFor(drawing: Drawing, left: number, top: number): Caption {
  const samples = samplesOf(drawing);
  const common = commonestMark(drawing);
  const texts = [...drawing.summary, ...(common === null ? [] : [`Infill pieces without a mark are ${common}`])];
  const barTop = top + titleSize + lineHeight * (texts.length + 1);
  const samplesTop = barTop + 15;
  const lines = [
    '<g class="caption">',
    textLine(drawing.title, left, top + titleSize, titleSize),
    ...texts.map((text, index) => textLine(text, left, top + titleSize + lineHeight * (index + 1) + 1, lineSize)),
    ...checkBar(left, barTop),
    ...samples.flatMap((kind, index) => sample(kind, left, samplesTop + index * sampleHeight)),
    '</g>',
  ];
  return { lines, bottom: samplesTop + samples.length * sampleHeight };
}

function textLine(text: string, x: number, y: number, size: number): string {
  return `<text x="${number(x)}" y="${number(y)}" font-size="${size}">${escaped(text)}</text>`;
}

/** A hundred millimetres with a tick every ten. */
function checkBar(left: number, top: number): string[] {
  const ticks = Array.from(
    { length: 11 },
    (_, index) => `M${number(left + index * 10)} ${number(top)}v${index % 5 === 0 ? 3 : 1.6}`,
  );
  return [
    `<path fill="none" stroke="#33281d" stroke-width="0.25" d="M${number(left)} ${number(top)}h${bar}${ticks.join('')}"/>`,
    textLine(`${bar} mm: measure this bar on the print`, left, top + 7.5, lineSize),
  ];
}

/** One kind a mark, in the order of the marks. */
function samplesOf(drawing: Drawing): DrawnKind[] {
  const byMark = new Map(kindsOf(drawing, ['piece', 'trimmed']).map((kind) => [kind.mark, kind] as const));
  return [...byMark.values()].sort((first, second) => first.mark.localeCompare(second.mark, 'en', { numeric: true }));
}

/** The piece itself to lay the part on, with what it is called. */
function sample(kind: DrawnKind, left: number, middle: number): string[] {
  const xs = kind.rings.flat().filter((_, index) => index % 2 === 0);
  const width = Math.max(...xs) - Math.min(...xs);
  return [
    `<path class="sample" stroke="#33281d" stroke-width="0.18" transform="translate(${number(left - Math.min(...xs))} ${number(middle)})" d="${pathData(kind.rings)}"/>`,
    textLine(kind.label, left + width + 3, middle + 1.2, lineSize),
  ];
}

/** What stands under a drawing: title, the summary, a bar to check the print with, and a full-size sample of every infill piece. */
import { maximum, minimum } from '../geometry/numbers.ts';
import type { Drawing, DrawnKind } from './drawing.ts';
import { commonestMark, isLabelled, kindsOf } from './svg-marks.ts';
import { type CheckBar, checkBar } from './sheet/check-bar.ts';
import type { PageItem, PathItem, PathStep, TextItem } from './page/page-model.ts';
import { ink } from './page/palettes.ts';
import { ringSteps } from './page/path-steps.ts';
import { textAt } from './sheet/sheet-lines.ts';

const titleSize = 5;
const lineSize = 3.4;
const lineHeight = 5;
const sampleHeight = 7;
const sampleGap = 3;

export interface Caption {
  readonly items: readonly PageItem[];
  /** Lowest line of the caption in the picture's flipped coordinates. */
  readonly bottom: number;
}

/** The caption with its upper left corner at `left`, `top` (flipped coordinates, millimetres); `source` names the design's file. */
export function captionFor(drawing: Drawing, source: string, left: number, top: number): Caption {
  const samples = samplesOf(drawing);
  const texts = captionTexts(drawing, source);
  const bar = checkBar(drawing.units);
  const barTop = top + titleSize + lineHeight * (texts.length + 1);
  const samplesTop = barTop + 15;
  const items = [
    textLine(drawing.title, left, top + titleSize, titleSize),
    ...texts.map((text, index) => textLine(text, left, top + titleSize + lineHeight * (index + 1) + 1, lineSize)),
    tickedBar(bar, left, barTop),
    textLine(`Bar of ${bar.name}: measure it on the print; ${bar.units}`, left, barTop + 7.5, lineSize),
    ...samples.flatMap((kind, index) => sample(kind, left, samplesTop + index * sampleHeight)),
  ];
  return { items, bottom: samplesTop + samples.length * sampleHeight };
}

/** Millimetres that the caption needs across, by a generous estimate of the letters' widths. */
export function captionWidth(drawing: Drawing, source: string): number {
  const samples = samplesOf(drawing).map((kind) => sampleWidth(kind) + sampleGap + textWidth(kind.label, lineSize));
  const texts = captionTexts(drawing, source).map((text) => textWidth(text, lineSize));
  return Math.max(
    checkBar(drawing.units).length,
    textWidth(drawing.title, titleSize),
    maximum(texts),
    maximum(samples),
  );
}

function captionTexts(drawing: Drawing, source: string): string[] {
  const common = isLabelled(drawing) ? null : commonestMark(drawing);
  return [
    `From ${source}`,
    ...drawing.summary,
    ...(common === null ? [] : [`Infill pieces without a mark are ${common}`]),
  ];
}

/** Millimetres that `text` takes at `size`, generously: letters beyond the Latin, Greek and Cyrillic scripts may be as wide as they are high. */
export function textWidth(text: string, size: number): number {
  return size * Array.from(text).reduce((ems, letter) => ems + (letter < '\u2e80' ? 0.6 : 1), 0);
}

const textLine = (text: string, x: number, y: number, size: number): TextItem => textAt(text, { x, y }, { size });

function tickedBar({ length, parts, group }: CheckBar, left: number, top: number): PathItem {
  const ticks = Array.from({ length: parts + 1 }, (_, index): PathStep[] => {
    const x = left + (index * length) / parts;
    return [
      ['M', x, top],
      ['L', x, top + (index % group === 0 ? 3 : 1.6)],
    ];
  });
  const steps: PathStep[] = [['M', left, top], ['L', left + length, top], ...ticks.flat()];
  return { kind: 'path', look: 'rule', steps, facts: { 'check-mm': length } };
}

/** One kind a mark, in the order of the marks. */
function samplesOf(drawing: Drawing): DrawnKind[] {
  if (isLabelled(drawing)) return [];
  const byMark = new Map(kindsOf(drawing, ['piece', 'trimmed']).map((kind) => [kind.mark, kind] as const));
  return [...byMark.values()].sort((first, second) => first.mark.localeCompare(second.mark, 'en', { numeric: true }));
}

/** The piece itself to lay the part on, with what it is called. */
function sample(kind: DrawnKind, left: number, middle: number): PageItem[] {
  const start = left - minimum(alongOf(kind));
  return [
    sampleShape(kind, start, middle),
    textLine(kind.label, left + sampleWidth(kind) + sampleGap, middle + 1.2, lineSize),
  ];
}

const sampleLook = { fill: '#ffffff', stroke: ink, width: 0.18, dash: [] };

function sampleShape({ rings, mark }: DrawnKind, left: number, middle: number): PathItem {
  const steps = rings.flatMap((ring) => ringSteps(ring, { x: left, y: middle }));
  return { kind: 'path', look: sampleLook, steps, facts: { sample: mark } };
}

function sampleWidth(kind: DrawnKind): number {
  const along = alongOf(kind);
  return maximum(along) - minimum(along);
}

/** Places of all corners along the axis. */
const alongOf = (kind: DrawnKind): number[] => kind.rings.flat().filter((_, index) => index % 2 === 0);

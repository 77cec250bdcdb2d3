/** Each panel and each blank as large as a page allows, with the marks of its strips and pieces. */
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { drawPanel } from '../draw-panel.ts';
import type { Drawing } from '../drawing.ts';
import { copiesText } from '../shared-words.ts';
import { textAt } from '../sheet/sheet-lines.ts';
import type { Facts, Look, PageItem, PathStep, TextItem } from '../page/page-model.ts';
import { ringSteps } from '../page/path-steps.ts';
import { placedRings } from '../placed-rings.ts';
import { commonestMark, markTexts } from '../svg-marks.ts';
import { type Block, blockOf, paragraph, stacked } from './blocks.ts';
import { letterSizes, type PrintContext } from './print-context.ts';

/** Room around the panel for the marks at the strips' ends, paper mm. */
const marksRoom = 9;
const stripMark = 2.5;
const placeName = 5;
const smallestMark = 1.2;

export function panelPicture(laid: LaidPanel, height: number, context: PrintContext): Block {
  const { drawn } = context;
  const drawing = drawPanel(laid, drawn, drawn.design.title);
  return picture(drawing, { panel: laid.panel.name }, captionLines(drawing, laid), height, context);
}

/** A blank with its cut-outs: their saw lines, and their names over the marks of strips and infill. */
export function blankPicture(
  drawing: Drawing,
  caption: readonly string[],
  height: number,
  context: PrintContext,
): Block {
  const common = commonestMark(drawing);
  const lines = [...caption, ...(common === null ? [] : [`Infill pieces without a mark are ${common}.`])];
  return picture(drawing, { blank: drawing.name }, lines, height, context);
}

function picture(
  drawing: Drawing,
  facts: Facts,
  caption: readonly string[],
  height: number,
  { width, typefaces }: PrintContext,
): Block {
  const { left, right, bottom, top } = drawing.bounds;
  const text = stacked(caption.map((line) => paragraph(line, { size: letterSizes.text }, width, typefaces)));
  const scale = Math.min(
    1,
    (width - 2 * marksRoom) / (right - left),
    (height - text.height - 2 * marksRoom) / (top - bottom),
  );
  const start = { x: (width - (right - left) * scale) / 2 - left * scale, y: marksRoom + top * scale };
  const place = (item: PageItem): PageItem => scaled(item, scale, start);
  const names = drawing.texts.map(({ x, y, text: name }) =>
    textAt(name, { x, y: -y }, { size: placeName / scale, anchor: 'middle', look: 'strong halo' }),
  );
  const marks = sizedMarks(markTexts({ ...drawing, texts: [] }), scale);
  const shown = [...layers(drawing), ...marks, ...names].map(place);
  const items: PageItem[] = [{ kind: 'group', name: 'picture', facts, items: shown, clip: null }];
  return stacked([blockOf((top - bottom) * scale + 2 * marksRoom, items), text]);
}

function captionLines(drawing: Drawing, { panel }: LaidPanel): string[] {
  const common = commonestMark(drawing);
  return [
    `${panel.name}, seen from the front, ${copiesText(panel.copies)}; not to scale. Dashed pieces are cut by the outline.`,
    ...(common === null ? [] : [`Infill pieces without a mark are ${common}.`]),
  ];
}

const looks: Readonly<Record<string, Look>> = {
  strip: { fill: '#ffffff', stroke: '#000000', width: 0.18, dash: [] },
  piece: { fill: '#e6e6e6', stroke: '#000000', width: 0.12, dash: [] },
  trimmed: { fill: '#ffffff', stroke: '#000000', width: 0.12, dash: [0.7, 0.5] },
  outline: { fill: null, stroke: '#000000', width: 0.5, dash: [] },
  note: { fill: null, stroke: '#000000', width: 0.9, dash: [] },
};

/** In the drawing's coordinates with y turned down. */
const layers = (drawing: Drawing): PageItem[] =>
  drawing.layers.flatMap(({ kind, kinds }): PageItem[] => {
    const look = looks[kind];
    if (!look) return [];
    return kinds.flatMap((each) =>
      [...placedRings(each)].map((rings) => ({
        kind: 'path',
        look,
        steps: rings.flatMap((ring) => ringSteps(ring, { x: 0, y: 0 })),
        facts: kind === 'outline' ? {} : { mark: each.mark },
      })),
    );
  });

/** Strips' marks large enough to be read on the paper; marks inside pieces keep to the pieces, and are left out where too small. */
function sizedMarks(marks: readonly PageItem[], scale: number): PageItem[] {
  return marks.flatMap((item): PageItem[] => {
    if (item.kind !== 'text') return [item];
    if (item.anchor !== 'middle') return [{ ...item, size: stripMark / scale }];
    return item.size * scale < smallestMark ? [] : [item];
  });
}

function scaled(item: PageItem, factor: number, start: { x: number; y: number }): PageItem {
  const at = (x: number, y: number): [number, number] => [start.x + x * factor, start.y + y * factor];
  if (item.kind === 'text') return scaledText(item, factor, at);
  if (item.kind === 'group') return { ...item, items: item.items.map((each) => scaled(each, factor, start)) };
  return { ...item, steps: item.steps.map((step) => scaledStep(step, at)) };
}

function scaledText(item: TextItem, factor: number, at: (x: number, y: number) => [number, number]): TextItem {
  const [x, y] = at(item.at.x, item.at.y);
  return { ...item, size: item.size * factor, at: { x, y } };
}

function scaledStep(step: PathStep, at: (x: number, y: number) => [number, number]): PathStep {
  if (step[0] === 'Z') return step;
  if (step[0] === 'C') return ['C', ...at(step[1], step[2]), ...at(step[3], step[4]), ...at(step[5], step[6])];
  return [step[0], ...at(step[1], step[2])];
}

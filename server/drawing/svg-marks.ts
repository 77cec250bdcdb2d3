/** Marks on a drawing: beside every strip's end 1, and inside every infill piece that is not of the commonest kind. */
import { maximum, minimum } from '../geometry/numbers.ts';
import { radians, turned } from '../geometry/point.ts';
import type { Drawing, DrawnKind, DrawnText } from './drawing.ts';
import type { PageItem, TextItem } from './page/page-model.ts';
import { textAt } from './sheet/sheet-lines.ts';

/** Space between a strip's end and its mark. */
const gap = 1.4;

/** Height of the letters beside a strip; in a piece, less than the thinnest usual face. */
const stripMarkSize = 2.6;
const pieceMarkSize = 1.7;
/** From a line of text's base to its middle, in heights of its letters. */
const toMiddle = 0.35;

/** The marks, or the words that a drawing brings in their place, in the flipped coordinates of the picture, never upside down. */
export function markTexts(drawing: Drawing): PageItem[] {
  if (isLabelled(drawing)) return drawing.texts.map(ownText);
  const strips = kindsOf(drawing, ['strip']);
  const common = commonestMark(drawing);
  const pieces = kindsOf(drawing, ['piece', 'trimmed']).filter((kind) => kind.mark !== common);
  return [
    ...strips.flatMap((kind) => textsOf(kind, -gap, stripMarkSize)),
    ...pieces.flatMap((kind) => textsOf(kind, null, pieceMarkSize)),
  ];
}

/** Words of the drawing's own, in the flipped coordinates of the picture. */
const ownText = ({ x, y, size, anchor, text }: DrawnText): TextItem => textAt(text, { x, y: -y }, { size, anchor });

/** Whether the drawing brings words of its own, that say which mark is where. */
export const isLabelled = ({ texts }: Drawing): boolean => texts.length > 0;

/** The infill mark that most pieces have; they carry no mark in the drawing, and the caption says so. Null without infill. */
export function commonestMark(drawing: Drawing): string | null {
  const counts = new Map<string, number>();
  for (const { mark, placements } of kindsOf(drawing, ['piece', 'trimmed'])) {
    counts.set(mark, (counts.get(mark) ?? 0) + placements.length / 3);
  }
  const [commonest] = [...counts].sort(([, first], [, second]) => second - first);
  return commonest?.[0] ?? null;
}

/** Every kind in the layers of these kinds, from the back. */
export function kindsOf(drawing: Drawing, kinds: readonly string[]): DrawnKind[] {
  return drawing.layers.filter((layer) => kinds.includes(layer.kind)).flatMap((layer) => layer.kinds);
}

/** One text a placement: `before` its origin along its axis, or in the middle where `before` is null. */
function textsOf(kind: DrawnKind, before: number | null, size: number): TextItem[] {
  const texts: TextItem[] = [];
  for (let index = 0; index + 2 < kind.placements.length; index += 3) {
    const [x = 0, y = 0, turn = 0] = kind.placements.slice(index, index + 3);
    const upsideDown = Math.cos(radians(turn)) < 0;
    const along = before ?? middleOf(kind);
    const anchor = before === null ? 'middle' : upsideDown ? 'start' : 'end';
    const reading = upsideDown ? turn - 180 : turn;
    const offset = turned({ x: upsideDown ? -along : along, y: -toMiddle * size }, reading);
    texts.push(textAt(kind.mark, { x: x + offset.x, y: -(y + offset.y) }, { size, anchor, turn: reading }));
  }
  return texts;
}

/** Middle of a piece along its axis. */
function middleOf(kind: DrawnKind): number {
  const xs = kind.rings.flat().filter((_, index) => index % 2 === 0);
  return (minimum(xs) + maximum(xs)) / 2;
}

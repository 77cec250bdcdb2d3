/** The mark of every strip, written beside its end 1 along the strip, never upside down. */
import { radians } from '../geometry/point.ts';
import type { Drawing } from './drawing.ts';
import { escaped, number } from './svg-text.ts';

/** Space between a strip's end and its mark. */
const gap = 1.4;

export function stripMarks(drawing: Drawing): string[] {
  const kinds = drawing.layers.filter((layer) => layer.kind === 'strip').flatMap((layer) => layer.kinds);
  return ['<g class="mark">', ...kinds.flatMap((kind) => markTexts(kind.mark, kind.placements)), '</g>'];
}

function markTexts(mark: string, placements: readonly number[]): string[] {
  const texts: string[] = [];
  for (let index = 0; index + 2 < placements.length; index += 3) {
    texts.push(markText(mark, placements[index] ?? 0, placements[index + 1] ?? 0, placements[index + 2] ?? 0));
  }
  return texts;
}

function markText(mark: string, x: number, y: number, turn: number): string {
  const upsideDown = Math.cos(radians(turn)) < 0;
  const anchor = upsideDown ? 'start' : 'end';
  const place = `translate(${number(x)} ${number(-y)}) rotate(${number(upsideDown ? 180 - turn : -turn)})`;
  return `<text transform="${place}" x="${upsideDown ? gap : -gap}" dy="0.35em" text-anchor="${anchor}">${escaped(mark)}</text>`;
}

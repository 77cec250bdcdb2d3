/** Lines and letters of a sheet, in paper millimetres, y down. */
import type { Point } from '../../geometry/point.ts';
import type { AreaKind, Facts, LineKind, PathItem, TextItem, TextLook } from '../page/page-model.ts';
import { chain, circle, ring } from '../page/path-steps.ts';

export const openLine = (look: LineKind, points: readonly Point[]): PathItem => ({
  kind: 'path',
  look,
  steps: chain(points),
  facts: {},
});

/** A closed shape; `facts` say what it stands for. */
export const area = (look: AreaKind | LineKind, points: readonly Point[], facts: Facts = {}): PathItem => ({
  kind: 'path',
  look,
  steps: ring(points),
  facts,
});

export const disc = (look: AreaKind, centre: Point, radius: number): PathItem => ({
  kind: 'path',
  look,
  steps: circle(centre, radius),
  facts: {},
});

/** A text whose base line begins, is centred or ends at `place`. */
export const textAt = (text: string, place: Point, look: TextLook): TextItem => ({
  kind: 'text',
  text,
  at: place,
  ...look,
});

/** Lines of text under one another, the first base line at `place`. */
export const textBlock = (lines: readonly string[], place: Point, leading: number, look: TextLook): TextItem[] =>
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

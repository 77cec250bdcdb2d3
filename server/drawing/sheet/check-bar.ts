/** The bar that a print is measured by: 100 mm, or 4 in; and what it says of the figures beside it. */
import type { LengthUnit } from '../../design/design-model.ts';
import { millimetresIn } from '../../design/values/quantity.ts';
import type { Point } from '../../geometry/point.ts';
import { isImperial, lengthText } from '../../words/figures.ts';
import type { PageItem } from '../page/page-model.ts';
import { area, rectangle } from './sheet-lines.ts';

export interface CheckBar {
  /** Paper millimetres. */
  readonly length: number;
  /** Equal parts, and how many of them make a stretch that the eye counts by. */
  readonly parts: number;
  readonly group: number;
  /** "100 mm", "4 in". */
  readonly name: string;
  /** What figures without a unit are in. */
  readonly units: string;
}

export function checkBar(units: LengthUnit): CheckBar {
  const [length, parts, group] = isImperial(units) ? [4 * millimetresIn.in, 8, 2] : [100, 10, 5];
  return {
    length,
    parts,
    group,
    name: lengthText(length, units, 'size'),
    units: `lengths in ${isImperial(units) ? 'inches' : 'mm'}`,
  };
}

/** The bar from its upper left corner, level or upright, every other part filled. */
export function barItems({ length, parts }: CheckBar, { x, y }: Point, thickness: number, upright = false): PageItem[] {
  const stretch = (from: number, to: number): Point[] =>
    upright ? rectangle(x, y + from, thickness, to - from) : rectangle(x + from, y, to - from, thickness);
  const part = length / parts;
  const filled = Array.from({ length: parts }, (_, index) => index).filter((index) => index % 2 === 0);
  return [
    area('box', stretch(0, length), { 'check-mm': length }),
    ...filled.map((index) => area('arrow', stretch(index * part, (index + 1) * part))),
  ];
}

/** The size and area of an outline. */
import { counted } from '../../../grammar/words.ts';
import type { Analysis } from '../../analyse.ts';
import type { Outline } from '../../design/design-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { contourArea, contourLength } from '../../geometry/measure-path.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { sum } from './tally.ts';
import { areaText, lengthText } from '../../words/figures.ts';

export function outlineHover({ design }: Analysis, outline: Outline): HoverLines {
  const { units } = design;
  const holes = outline.contours.length - 1;
  const panels = design.panels
    .filter(({ shape }) => shape.kind === 'outline' && shape.outline.name === outline.name)
    .map(({ name }) => `\`${name}\``);
  return [
    heading('outline', outline.name),
    sizeText(outline, (length) => lengthText(length, units, 'length')),
    `Area ${areaText(sum(outline.contours.map(contourArea)), units)}${holes > 0 ? `, less ${counted(holes, 'hole')}` : ''}`,
    `${lengthText(sum(outline.contours.map(contourLength)), units, 'length')} perimeter`,
    panels.length > 0 ? `Used in ${panels.join(', ')}` : 'Not used in any panel',
  ];
}

function sizeText({ contours }: Outline, text: (length: number) => string): string {
  const points = contours.flatMap(flattenContour);
  const extent = (values: readonly number[]): number =>
    values.reduce((most, value) => Math.max(most, value), -Infinity) -
    values.reduce((least, value) => Math.min(least, value), Infinity);
  return points.length === 0
    ? ''
    : `${text(extent(points.map(({ x }) => x)))} wide, ${text(extent(points.map(({ y }) => y)))} high`;
}

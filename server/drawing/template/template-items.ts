/** A template's lines, marks and letters as items of a page, at full size: y down, the drawing's origin at the page's. */
import { coarserRing } from '../../geometry/coarser-ring.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { angleOf, between, distance, type Point, subtract } from '../../geometry/point.ts';
import type { Look, PageItem, PathItem, TextItem } from '../page/page-model.ts';
import { chain, circle, ring } from '../page/path-steps.ts';
import { contourSteps } from '../page/segment-steps.ts';
import { textAt } from '../sheet/sheet-lines.ts';
import {
  lineNames,
  type RegisterMark,
  type Template,
  type TemplateLine,
  type TemplateLineKind,
  type TemplateSpot,
} from './template.ts';

const black = '#000000';
const inked = (width: number, dash: readonly number[] = [], stroke = black): Look => ({
  fill: null,
  stroke,
  width,
  dash,
});

/** Told apart by width and dashes alone, for printers without colour. */
export const lineLooks: Readonly<Record<TemplateLineKind, Look>> = {
  finished: inked(0.5),
  sand: inked(0.25, [2.4, 1]),
  saw: inked(0.3, [9, 1.4]),
  caul: inked(0.3, [9, 1.4]),
  cleat: inked(0.4),
  spacer: inked(0.3, [4, 1]),
};
export const scribeLook = inked(0.9, [0.6, 1.6]);
export const axisLook = inked(0.14, [5, 1, 0.6, 1], '#707070');
const markLook = inked(0.3);
const spotLook = inked(0.3, [1, 0.6]);

const pageOrigin: Point = { x: 0, y: 0 };
const flipped = ({ x, y }: Point): Point => ({ x, y: -y });

/** From the back to the front: centre lines, the other lines, their names along them, the places to take care at, the marks. */
export function templateItems(template: Template): PageItem[] {
  return [
    ...template.axes.map(([from, to]): PathItem => ({
      kind: 'path',
      look: axisLook,
      steps: chain([flipped(from), flipped(to)]),
      facts: { line: 'axis' },
    })),
    ...[...template.lines].reverse().map(linePath),
    ...template.lines.flatMap(namesAlong),
    ...template.scribe.flatMap(scribeItems),
    ...template.spots.flatMap((spot) => spotItems(spot, (template.bounds.left + template.bounds.right) / 2)),
    ...template.marks.flatMap((mark) => markItems(mark, `${template.name} · ${template.seenFrom}`)),
  ];
}

const linePath = ({ kind, contours }: TemplateLine): PathItem => ({
  kind: 'path',
  look: lineLooks[kind],
  steps: contours.flatMap((contour) =>
    contour.every((segment) => segment.kind === 'line')
      ? ring(coarserRing(flattenContour(contour)).map(flipped))
      : contourSteps(contour, pageOrigin),
  ),
  facts: { line: kind },
});

const nameSize = 2.2;
/** A line's name stands every so many millimetres along it, each line's at other places. */
const nameEvery = 110;
const nameStarts: Readonly<Record<TemplateLineKind, number>> = {
  saw: 20,
  finished: 55,
  sand: 90,
  caul: 20,
  cleat: 20,
  spacer: 20,
};
/** From a line of text's base to its middle, in heights of its letters. */
const toMiddle = 0.35;

function namesAlong({ kind, contours }: TemplateLine): TextItem[] {
  return contours.flatMap((contour) =>
    placesAlong(flattenContour(contour), nameStarts[kind], nameEvery).map(({ at, heading }) => {
      const turn = heading > 90 && heading <= 270 ? heading - 180 : heading;
      const [sine, cosine] = [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
      const base = { x: at.x + sine * toMiddle * nameSize, y: -(at.y - cosine * toMiddle * nameSize) };
      return textAt(lineNames[kind], base, { size: nameSize, anchor: 'middle', look: 'halo', turn });
    }),
  );
}

/** Places on a closed ring at `start`, `start` + `every`, … mm along it, and which way it runs there. */
function placesAlong(corners: readonly Point[], start: number, every: number): { at: Point; heading: number }[] {
  const places: { at: Point; heading: number }[] = [];
  let [passed, next] = [0, start];
  for (const [index, from] of corners.entries()) {
    const to = corners[(index + 1) % corners.length] ?? from;
    const span = distance(from, to);
    for (; span > 0 && next <= passed + span; next += every) {
      places.push({ at: between(from, to, (next - passed) / span), heading: angleOf(subtract(to, from)) });
    }
    passed += span;
  }
  return places;
}

/** Dots along the finished line, named in the middle. */
function scribeItems(points: readonly Point[]): PageItem[] {
  const middle = points[Math.floor(points.length / 2)];
  return [
    { kind: 'path', look: scribeLook, steps: chain(points.map(flipped)), facts: { line: 'scribe' } },
    ...(middle
      ? [textAt('scribe line', { x: middle.x, y: -middle.y - 1.6 }, { size: nameSize, anchor: 'middle', look: 'halo' })]
      : []),
  ];
}

const spotRadius = 2;

/** A dashed ring with words beside it, towards the middle of the drawing. */
function spotItems({ at, text }: TemplateSpot, middle: number): PageItem[] {
  const { x, y } = flipped(at);
  return [
    { kind: 'path', look: spotLook, steps: circle({ x, y }, spotRadius), facts: { spot: text } },
    x > middle
      ? textAt(text, { x: x - 3.2, y: y + 1 }, { size: 2.8, look: 'halo', anchor: 'end' })
      : textAt(text, { x: x + 3.2, y: y + 1 }, { size: 2.8, look: 'halo' }),
  ];
}

const markRadius = 3;
const crossReach = 5;

/** A circle with a cross, its label large beside it and whose mark it is. */
function markItems({ label, at }: RegisterMark, whose: string): PageItem[] {
  const { x, y } = flipped(at);
  const arm = (dx: number, dy: number): PageItem => ({
    kind: 'path',
    look: markLook,
    steps: chain([
      { x: x - dx, y: y - dy },
      { x: x + dx, y: y + dy },
    ]),
    facts: {},
  });
  return [
    { kind: 'path', look: markLook, steps: circle({ x, y }, markRadius), facts: { mark: label } },
    arm(crossReach, 0),
    arm(0, crossReach),
    textAt(label, { x: x + 5, y: y - 2.4 }, { size: 7, look: 'strong halo' }),
    textAt(whose, { x: x + 5, y: y + 4.4 }, { size: 2.8, look: 'halo' }),
  ];
}

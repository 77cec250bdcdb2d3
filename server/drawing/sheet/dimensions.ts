/** Dimensions of a working drawing, on paper millimetres, y down: lengths along the page, ordinates from a zero, angles. */
import { type Point, radians } from '../../geometry/point.ts';
import type { PageItem } from '../page/page-model.ts';
import { arc } from '../page/path-steps.ts';
import { area, openLine, textAt } from './sheet-lines.ts';

export const figureSize = 3.5;
const arrowLength = 2.4;
const arrowHalf = 0.45;
/** Extension lines keep off the shape, and run on beyond the dimension line. */
const clearOfShape = 0.8;
const beyond = 1.6;
const aboveLine = 1.5;

/** From `from` to `to`, level, its line at height `y`; `start` is where each extension line leaves the shape. */
export function lengthDimension(from: Point, to: Point, y: number, figure: string): PageItem[] {
  const narrow = to.x - from.x < 2 * arrowLength + 1;
  const middle = (from.x + to.x) / 2;
  const outwards = narrow ? -1 : 1;
  const line = narrow
    ? [
        { x: from.x - 2 * arrowLength, y },
        { x: to.x + 2 * arrowLength, y },
      ]
    : [
        { x: from.x, y },
        { x: to.x, y },
      ];
  return [
    extension(from, y),
    extension(to, y),
    openLine('thin', line),
    arrow({ x: from.x, y }, outwards === 1 ? 180 : 0),
    arrow({ x: to.x, y }, outwards === 1 ? 0 : 180),
    textAt(figure, { x: middle, y: y - aboveLine }, { size: figureSize, anchor: 'middle', look: 'halo' }),
  ];
}

/** An upright dimension between two heights, its line at `x`, the figure beside it. */
export function heightDimension(x: number, top: number, bottom: number, from: number, figure: string): PageItem[] {
  const side = Math.sign(x - from);
  const runOut = x + side * beyond;
  return [
    openLine('thin', [
      { x: from + side * clearOfShape, y: top },
      { x: runOut, y: top },
    ]),
    openLine('thin', [
      { x: from + side * clearOfShape, y: bottom },
      { x: runOut, y: bottom },
    ]),
    openLine('thin', [
      { x, y: top - 2 * arrowLength },
      { x, y: bottom + 2 * arrowLength },
    ]),
    arrow({ x, y: top }, 270),
    arrow({ x, y: bottom }, 90),
    textAt(
      figure,
      { x: runOut + side * 0.6, y: (top + bottom) / 2 + figureSize * 0.36 },
      { size: figureSize, anchor: side > 0 ? 'start' : 'end', look: 'halo' },
    ),
  ];
}

function extension(start: Point, y: number): PageItem {
  const down = Math.sign(y - start.y);
  return openLine('thin', [
    { x: start.x, y: start.y + down * clearOfShape },
    { x: start.x, y: y + down * beyond },
  ]);
}

/** A slim arrow head with its tip at `tip`; `heading` is the way it points, counter-clockwise as seen on the page. */
export function arrow(tip: Point, heading: number): PageItem {
  const along = { x: Math.cos(radians(heading)), y: -Math.sin(radians(heading)) };
  const back = { x: tip.x - along.x * arrowLength, y: tip.y - along.y * arrowLength };
  return area('arrow', [
    tip,
    { x: back.x - along.y * arrowHalf, y: back.y + along.x * arrowHalf },
    { x: back.x + along.y * arrowHalf, y: back.y - along.x * arrowHalf },
  ]);
}

export interface Ordinate {
  readonly x: number;
  readonly figure: string;
}

/**
 * Figures standing upright over their places, each on its line from `shapeTop` up to `figures`. Lines that stand
 * closer than their figures need are led apart; none changes its order.
 */
export function ordinateDimensions(ordinates: readonly Ordinate[], shapeTop: number, figures: number): PageItem[] {
  const sorted = [...ordinates].sort((a, b) => a.x - b.x);
  const spread = spreadApart(
    sorted.map(({ x }) => x),
    figureSize + 0.7,
  );
  return sorted.flatMap(({ x, figure }, index) => {
    const over = spread[index] ?? x;
    return [
      openLine('thin', [
        { x, y: shapeTop - clearOfShape },
        { x, y: figures + 6 },
        { x: over, y: figures + 3 },
        { x: over, y: figures },
      ]),
      textAt(figure, { x: over + figureSize * 0.36, y: figures - 1 }, { size: figureSize, turn: 90 }),
    ];
  });
}

/** Sorted places moved apart to at least `gap`, each cluster kept about its own middle. */
export function spreadApart(places: readonly number[], gap: number): number[] {
  const clusters: { middle: number; count: number }[] = [];
  for (const place of places) {
    let cluster = { middle: place, count: 1 };
    for (let before = clusters.at(-1); before && overlap(before, cluster, gap); before = clusters.at(-1)) {
      const count = before.count + cluster.count;
      cluster = { middle: (before.middle * before.count + cluster.middle * cluster.count) / count, count };
      clusters.pop();
    }
    clusters.push(cluster);
  }
  return clusters.flatMap(({ middle, count }) =>
    Array.from({ length: count }, (_, index) => middle + (index - (count - 1) / 2) * gap),
  );
}

interface Cluster {
  readonly middle: number;
  readonly count: number;
}

const overlap = (before: Cluster, after: Cluster, gap: number): boolean =>
  after.middle - before.middle < ((before.count + after.count) / 2) * gap;

/**
 * The angle at `vertex` from the ray that heads `start` degrees over `sweep` degrees (counter-clockwise as seen on
 * the page): an arc of `radius` with arrow heads, the far ray drawn out to it, the figure beyond that ray's end.
 */
export function angleDimension(
  vertex: Point,
  start: number,
  sweep: number,
  radius: number,
  figure: string,
): PageItem[] {
  const onArc = (heading: number, reach: number): Point => ({
    x: vertex.x + reach * Math.cos(radians(heading)),
    y: vertex.y - reach * Math.sin(radians(heading)),
  });
  const to = onArc(start + sweep, radius);
  const turnsLeft = sweep > 0;
  const label = onArc(start + sweep, radius + beyond + figureSize * 0.6);
  const inward = Math.cos(radians(start)) * figureSize * 1.5;
  return [
    openLine('thin', [vertex, onArc(start + sweep, radius + beyond)]),
    { kind: 'path', look: 'thin', steps: arc(vertex, radius, start, sweep), facts: {} },
    arrow(to, start + sweep + (turnsLeft ? 90 : -90)),
    textAt(
      figure,
      { x: label.x + inward, y: label.y + figureSize * 0.36 },
      { size: figureSize, anchor: 'middle', look: 'halo' },
    ),
  ];
}

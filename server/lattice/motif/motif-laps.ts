/** Where pieces and dividers of one motif cross away from their ends: half laps, three-way laps, and crossings that can't be lapped. */
import { append } from '../../geometry/numbers.ts';
import { crossingWithin } from '../../geometry/lines.ts';
import { angleOf, distance, type Point, subtract } from '../../geometry/point.ts';
import { directionTolerance, placeTolerance } from '../../geometry/tolerance.ts';
import type { NotchRun } from '../laid-panel.ts';
import { lapCut } from '../strips/notch-runs.ts';
import type { Axis } from './piece-ends.ts';

/** Axes, by number and from the lowest to the highest, that cross at `node`. */
export interface Crossing {
  readonly node: Point;
  readonly axes: readonly number[];
}

/**
 * Every place where two or more axes cross away from their ends. The smaller direction lies lower, unless
 * `liesAbove` says that the first of two axes lies above the second.
 */
export function crossingsOf(
  axes: readonly Axis[],
  liesAbove: (first: number, second: number) => boolean = () => false,
): Crossing[] {
  const crossings: { node: Point; axes: number[] }[] = [];
  axes.forEach((one, first) => {
    axes.slice(first + 1).forEach((two, offset) => {
      const node = crossingWithin(one.from, one.to, two.from, two.to);
      if (!node) return;
      const known = crossings.find((each) => distance(each.node, node) <= placeTolerance);
      const numbers = [first, first + 1 + offset];
      if (known) known.axes = [...new Set([...known.axes, ...numbers])];
      else crossings.push({ node, axes: numbers });
    });
  });
  return crossings.map(({ node, axes: members }) => ({ node, axes: fromLowest(members, axes, liesAbove) }));
}

/** By direction; then each axis that should lie above a later one is put behind it. */
function fromLowest(
  members: readonly number[],
  axes: readonly Axis[],
  liesAbove: (first: number, second: number) => boolean,
): number[] {
  const waiting = [...members].sort((first, second) => layerOf(axes[first]) - layerOf(axes[second]));
  const ordered: number[] = [];
  while (waiting.length > 0) {
    const lowest = waiting.findIndex((member) => !waiting.some((other) => liesAbove(member, other)));
    append(ordered, waiting.splice(Math.max(lowest, 0), 1));
  }
  return ordered;
}

/** More members than this at one crossing leave no wood to lap. */
export const mostInOneLap = 3;

/** The notches of one axis, measured from its first node. */
export function lapsOf(
  number: number,
  axes: readonly Axis[],
  crossings: readonly Crossing[],
  depth: number,
): NotchRun[] {
  const own = axes[number];
  if (!own) return [];
  return crossings
    .filter(({ axes: members }) => members.includes(number) && members.length <= mostInOneLap)
    .flatMap(({ node, axes: members }) => {
      const layers = members.map((_, layer) => layer);
      return members
        .filter((member) => member !== number)
        .map((member): NotchRun => {
          const other = axes[member] ?? own;
          const angle = (((headingOf(other) - headingOf(own)) % 180) + 180) % 180;
          const cut = lapCut(depth, members.indexOf(number), members.indexOf(member), layers);
          return { first: distance(own.from, node), step: 0, count: 1, width: other.face, angle, ...cut };
        });
    });
}

const headingOf = ({ from, to }: Axis): number => angleOf(subtract(to, from));

/** Direction in [0°, 180°), which orders the members of a lap from low to high. */
function layerOf(axis: Axis | undefined): number {
  if (!axis) return 0;
  const direction = headingOf(axis) % 180;
  return 180 - direction <= directionTolerance ? 0 : direction;
}

/** Strips whose bodies run into one another where no notch is cut, because their crossing lies beyond the end of one. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { joined, measure, words } from '../../../grammar/words.ts';
import { cross, dot, type Point, scale } from '../../geometry/point.ts';
import { centroidOf, clipToHalfPlanes, type HalfPlane, signedArea } from '../../geometry/polygons.ts';
import { areaTolerance, placeDecimals, placeTolerance, rounded } from '../../geometry/tolerance.ts';
import { areParallel, type LineFamily, lineThrough } from '../grid/grid-lines.ts';
import { panelRegion } from '../grid/panel-region.ts';
import type { LaidPanel } from '../laid-panel.ts';
import { type RaisedProblem, raisedAt } from './raised-problem.ts';
import { crossingsBetween, pointOnLine, type StripPart } from '../strips/strip-parts.ts';

/** Wood that two strips share, mm² seen from the front, and its middle. */
interface Collision {
  readonly strips: readonly [StripPart, StripPart];
  readonly area: number;
  readonly at: Point;
}

/** Said once a panel, with the worst place. */
export const collisionProblems = (panels: readonly LaidPanel[]): RaisedProblem[] =>
  panels.flatMap((laid) => {
    const found = collisionsOf(laid);
    const [first] = found;
    if (!first) return [];
    const worst = found.reduce((most, each) => (each.area > most.area ? each : most), first);
    const { panel } = laid;
    const where = panel.edge === 'framed' ? 'in the frame' : 'at the edge';
    const places = found.length === 1 ? 'one place' : `${String(found.length)} places`;
    const directions = joined(
      worst.strips.map(({ lines }) => measure.fineAngle(lines.family.direction)),
      ' and ',
    );
    const advice =
      panel.edge === 'framed'
        ? 'Make the stub shorter, or so long that both pass the crossing, move the grid, or change the size.'
        : 'Give the strips another `tail`.';
    const message = words`Strips run into one another ${where} at ${places}, where their crossing lies beyond an end and no notch is cut: the worst, at ${directions}, share ${measure.area(worst.area)} near ${measure.place(worst.at)}. ${advice}`;
    return raisedAt(panel, [problemAt('stripsCollide', panel.shape.range, message)]);
  });

function collisionsOf(laid: LaidPanel): Collision[] {
  const { families } = panelRegion(laid.panel);
  const strips = stripsOf(laid, families);
  const found = strips.flatMap((strip) =>
    families
      .filter((other) => !areParallel(other, strip.lines))
      .flatMap((other) => crossedBeyondEnds(strip, other))
      .flatMap(({ other, line }) => strips.filter((each) => each.lines === other && each.index === line))
      .flatMap((each) => collisionOf(strip, each) ?? []),
  );
  // a crossing beyond the ends of both is found from either
  return [...new Map(found.map((each) => [placeKey(each.at), each])).values()];
}

const placeKey = ({ x, y }: Point): string =>
  `${String(rounded(x, placeDecimals))} ${String(rounded(y, placeDecimals))}`;

const stripsOf = ({ strips }: LaidPanel, families: readonly LineFamily[]): StripPart[] =>
  strips.flatMap(({ family, length, placements }) =>
    placements.flatMap(({ at }): StripPart[] => {
      const lines = families[family - 1];
      const index = lines ? lineThrough(lines, at) : null;
      if (!lines || index === null) return [];
      const start = dot(lines.along, at);
      return [{ lines, index, start, end: start + length }];
    }),
  );

/** Lines of `other` whose bodies a strip's body still meets, and whose crossing lies beyond one of its ends. */
function crossedBeyondEnds(
  { lines, index, start, end }: StripPart,
  other: LineFamily,
): { readonly other: LineFamily; readonly line: number }[] {
  const sine = Math.abs(cross(lines.along, other.along));
  const reach = (other.face + lines.face) / (2 * sine);
  const beyond = [
    ...crossingsBetween(lines, index, other, start - reach, start),
    ...crossingsBetween(lines, index, other, end, end + reach),
  ];
  return beyond
    .filter(({ position }) => position < start - placeTolerance || position > end + placeTolerance)
    .map(({ line }) => ({ other, line }));
}

function collisionOf(one: StripPart, two: StripPart): Collision | null {
  const shared = clipToHalfPlanes(bodyOf(one), sidesOf(two));
  const area = shared.length < 3 ? 0 : signedArea(shared);
  return area > areaTolerance ? { strips: [one, two], area, at: centroidOf(shared) } : null;
}

function bodyOf({ lines, index, start, end }: StripPart): Point[] {
  const corner = (position: number, side: number): Point => {
    const { x, y } = pointOnLine(lines, index, position);
    return { x: x + side * lines.normal.x, y: y + side * lines.normal.y };
  };
  const half = lines.face / 2;
  return [corner(start, -half), corner(end, -half), corner(end, half), corner(start, half)];
}

function sidesOf(strip: StripPart): HalfPlane[] {
  const { along, normal, face } = strip.lines;
  const middle = dot(normal, pointOnLine(strip.lines, strip.index, 0));
  return [
    { normal, reach: middle + face / 2 },
    { normal: scale(normal, -1), reach: face / 2 - middle },
    { normal: along, reach: strip.end },
    { normal: scale(along, -1), reach: -strip.start },
  ];
}

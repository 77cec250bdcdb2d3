/** The steps that change all that is drawn of an outline so far. */
import { type Measure, type Words, measure, words } from '../../../grammar/words.ts';
import type { GrowStep, OutlineChange } from '../../../grammar/tree/outline-syntax.ts';
import type { Name, PointSyntax } from '../../../grammar/tree/syntax-nodes.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { combinedRings } from '../../geometry/combine-rings.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { grownContours } from '../../geometry/grow-contours.ts';
import { contourArea } from '../../geometry/measure-path.ts';
import { sum } from '../../geometry/numbers.ts';
import type { Contour } from '../../geometry/path.ts';
import { distance, origin, subtract, unit } from '../../geometry/point.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { restoredContours } from '../../geometry/restore-curves.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import {
  about,
  mirroring,
  moving,
  scaling,
  type Transform,
  transformedSegment,
  turning,
} from '../../geometry/transform-path.ts';
import type { DesignContext } from '../design-context.ts';
import type { Outline } from '../design-model.ts';
import { readAngle, readFactor, readLength, readPoint } from '../values/read-values.ts';

/** The outline a name means; null where it is broken or leads back to itself, which is reported. */
export type FindOutline = (name: Name) => Outline | null;

/** What becomes of `contours` (outer ones counter-clockwise, holes clockwise); null where the step is broken or leaves nothing, which is reported. */
export function changed(
  step: OutlineChange,
  contours: readonly Contour[],
  find: FindOutline,
  context: DesignContext,
): Contour[] | null {
  switch (step.kind) {
    case 'grow':
      return grown(step, contours, context);
    case 'plus':
    case 'minus':
    case 'common': {
      const other = find(step.name);
      if (!other) return null;
      const rings = combinedRings(contours.map(flattenContour), other.contours.map(flattenContour), step.kind);
      const left = restoredContours(rings, [...contours, ...other.contours].flat());
      return left.length > 0 ? left : nothingLeft(step, contours, other, context);
    }
    case 'move':
    case 'mirror':
    case 'turn about':
    case 'scale': {
      const transform = transformOf(step, context);
      return transform && contours.map((contour) => contour.map((segment) => transformedSegment(segment, transform)));
    }
  }
}

function transformOf(
  step: Exclude<OutlineChange, { kind: 'grow' | 'plus' | 'minus' | 'common' }>,
  context: DesignContext,
): Transform | null {
  switch (step.kind) {
    case 'move': {
      const by = readPoint(step.by, context);
      return by && moving(by);
    }
    case 'mirror':
      return mirrorOf(step.over, context);
    case 'turn about': {
      const angle = readAngle(step.angle, 'turn', null, context);
      const centre = step.about ? readPoint(step.about, context) : origin;
      return angle === null || !centre ? null : about(centre, turning(angle));
    }
    case 'scale': {
      const factor = readFactor(step.factor, 'scale', context);
      const centre = step.about ? readPoint(step.about, context) : origin;
      return factor === null || !centre ? null : about(centre, scaling(factor, factor));
    }
  }
}

function mirrorOf(line: 'x' | 'y' | readonly [PointSyntax, PointSyntax], context: DesignContext): Transform | null {
  if (line === 'x') return scaling(1, -1);
  if (line === 'y') return scaling(-1, 1);
  const [from, to] = [readPoint(line[0], context), readPoint(line[1], context)];
  if (!from || !to) return null;
  if (distance(from, to) > placeTolerance) return about(from, mirroring(unit(subtract(to, from))));
  const message = 'Both points of the mirror are the same. Give two points that lie apart.';
  context.report(problemAt('repeatedPoint', line[1].range, message));
  return null;
}

function grown(step: GrowStep, contours: readonly Contour[], context: DesignContext): Contour[] | null {
  const by = readLength(step.by, 'distance', 'any', context);
  if (by === null) return null;
  const left = grownContours(contours, by, step.sharp ? 'sharp' : 'round');
  if (left.length > 0) return left;
  const message = words`Nothing is left of the outline, ${sizeOf(contours)}, when its line moves inwards by ${measure.given(-by)}. Give less.`;
  context.report(problemAt('outlineLeavesNothing', step.range, message));
  return null;
}

function nothingLeft(
  step: Extract<OutlineChange, { kind: 'plus' | 'minus' | 'common' }>,
  contours: readonly Contour[],
  other: Outline,
  context: DesignContext,
): null {
  const name = `\`${other.name}\``;
  const [own, its] = [reachOf(contours), reachOf(other.contours)];
  const message =
    step.kind === 'minus'
      ? words`Nothing is left: ${name} (${areaWithin(other.contours)}) covers all of what is drawn (${areaWithin(contours)}). Move one of them.`
      : words`Nothing is common: what is drawn reaches ${own}, and ${name} ${its}. Move one of them.`;
  context.report(problemAt('outlineLeavesNothing', step.range, message));
  return null;
}

const boxOf = (contours: readonly Contour[]) => boundsOf(contours.flatMap(flattenContour));

function sizeOf(contours: readonly Contour[]): Measure {
  const { left, right, bottom, top } = boxOf(contours);
  return measure.size([right - left, top - bottom]);
}

function reachOf(contours: readonly Contour[]): Words {
  const { left, right, bottom, top } = boxOf(contours);
  return words`from ${measure.place({ x: left, y: bottom })} to ${measure.place({ x: right, y: top })}`;
}

export const areaWithin = (contours: readonly Contour[]): Measure => measure.area(sum(contours.map(contourArea)));

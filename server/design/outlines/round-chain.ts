/** The corners of a closed line that are to be rounded, rounded. */
import { type Words, measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { distance } from '../../geometry/point.ts';
import type { Point } from '../../geometry/point.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import type { DesignContext } from '../design-context.ts';
import type { DrawnChain, DrawnSegment } from './drawn-segment.ts';
import { type CornerTrouble, largestFitting, largestRadius, roundedCorner } from './round-corners.ts';

/** The chain with its corners rounded in order; null where one can't be, which is reported. */
export function roundChain(chain: DrawnChain, context: DesignContext): DrawnSegment[] | null {
  const sides: (DrawnSegment | null)[] = [...chain];
  const arcs = new Map<number, DrawnSegment>();
  const troubles: Problem[] = [];
  chain.forEach(({ rounded }, index) => {
    const next = (index + 1) % chain.length;
    const [before, after] = [sides[index], sides[next]];
    if (!rounded || !before || !after) return;
    const corner = roundedCorner(before.segment, after.segment, rounded.radius);
    if (typeof corner === 'string') {
      if (troubles.some(({ range }) => range === rounded.range)) return;
      const most = isAlike(chain)
        ? roundestOfAll(chain)
        : largestFitting(before.segment, after.segment, rounded.radius);
      troubles.push(cannotRound(corner, before.segment.to, rounded, most));
      return;
    }
    sides[index] = { ...before, segment: corner.before };
    sides[next] = { ...after, segment: corner.after };
    arcs.set(index, { segment: corner.arc, range: before.range });
  });
  troubles.forEach(context.report);
  return troubles.length > 0 ? null : sides.flatMap((side, index) => [side, arcs.get(index)]).filter(isDrawn);
}

/** Sides that the arcs have used up are left out. */
const isDrawn = (part: DrawnSegment | null | undefined): part is DrawnSegment =>
  part !== null && part !== undefined && !isIdle(part);

const isIdle = ({ segment: { kind, from, to } }: DrawnSegment): boolean =>
  kind === 'line' && distance(from, to) <= placeTolerance;

/** Whether one phrase rounds every corner. */
const isAlike = ([first, ...others]: DrawnChain): boolean =>
  first?.rounded !== undefined && others.every(({ rounded }) => rounded?.range === first.rounded?.range);

/** The largest radius for all corners alike: each has half of its sides. */
const roundestOfAll = (chain: DrawnChain): number | null =>
  chain.reduce<number | null>((least, before, index) => {
    const after = chain[(index + 1) % chain.length];
    const most = after ? roundestOf(before, after) : null;
    return least === null || most === null ? null : Math.min(least, most / 2);
  }, Infinity);

/** The largest radius for one corner; null where a side is no line. */
const roundestOf = ({ segment: before }: DrawnSegment, { segment: after }: DrawnSegment): number | null =>
  before.kind === 'line' && after.kind === 'line' ? largestRadius(before, after) : null;

function cannotRound(
  trouble: CornerTrouble,
  { x, y }: Point,
  { radius, range }: NonNullable<DrawnSegment['rounded']>,
  most: number | null,
): Problem {
  const at = words`at ${measure.place({ x, y })}`;
  const messages: Readonly<Record<CornerTrouble, Words>> = {
    straight: words`The line goes straight on or back ${at}, so there is no corner to round. Take \`rounded\` out.`,
    tooLarge: words`A radius of ${measure.given(radius)} needs more of the sides than there is ${at}. Give ${most === null ? 'a smaller radius' : words`no more than ${measure.given(Math.floor(100 * most + placeTolerance) / 100)}`}.`,
  };
  return problemAt('cornerCannotBeRounded', range, messages[trouble]);
}

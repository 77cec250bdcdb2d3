/** SVG path data of an outline, drawn; what is wrong with it is said at its very characters. */
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { TextLiteral } from '../../../grammar/tree/syntax-nodes.ts';
import type { PathSegment } from '../../geometry/path.ts';
import { distance } from '../../geometry/point.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import type { DesignContext } from '../design-context.ts';
import { chainOf } from './drawn-segment.ts';
import type { DrawnSegment } from './drawn-segment.ts';
import { readPathData, type Subpath } from './path-data.ts';

/** The closed lines of the data, up to the first error in it; null where there are none, which is reported. */
export function drawPathData(data: TextLiteral, context: DesignContext): DrawnSegment[][] | null {
  const { subpaths, errorAt } = readPathData(data.text);
  if (errorAt !== null) context.report(problemAt('badPathData', wordsAt(data, errorAt), badData(data.text, errorAt)));
  const open = subpaths.find((subpath) => !isClosed(subpath));
  if (errorAt !== null) {
    const closed = subpaths.filter(isClosed);
    return closed.length > 0 ? closed.map((subpath) => chainOf(closedSegments(subpath), data.range)) : null;
  }
  if (open || subpaths.length === 0) {
    const message = open
      ? words`The path ends ${measure.given(distance(open.start, open.end))} from its start. Close it with \`Z\`.`
      : 'The path draws nothing. Add lines or curves that enclose an area.';
    context.report(problemAt('outlineNotClosed', data.range, message));
    return null;
  }
  return subpaths.map((subpath) => chainOf(closedSegments(subpath), data.range));
}

export const isClosed = ({ start, end, closed }: Subpath): boolean => closed || distance(start, end) <= placeTolerance;

/** With the straight line that `Z` draws. */
export function closedSegments({ start, segments }: Subpath): PathSegment[] {
  const end = segments.at(-1)?.to ?? start;
  return start.x === end.x && start.y === end.y ? [...segments] : [...segments, { kind: 'line', from: end, to: start }];
}

function badData(data: string, errorAt: number): string {
  if (data.trim() === '')
    return 'The path is empty. Begin with `M x y` and go on with commands such as L, C, Q, A and Z.';
  if (errorAt === 0)
    return 'This is no SVG path data. Begin with `M x y` and go on with commands such as L, C, Q, A and Z.';
  return errorAt >= data.length
    ? 'The last command of the path lacks numbers. Add them, or take it out; what stands before it is drawn.'
    : 'From here on this is no SVG path data: a number, a flag (0 or 1) or a command such as L, C, Q, A or Z should stand here. What stands before it is drawn.';
}

/** The characters at an offset of the data up to the next space or comma; all of it where it was written with strokes. */
function wordsAt({ text, range }: TextLiteral, errorAt: number): SourceRange {
  const isPlain = range.end - range.start === text.length + 2;
  if (!isPlain || errorAt === 0) return range;
  let start = Math.min(errorAt, text.length);
  while (start > 0 && /[\s,]/.test(text.charAt(start)) && start === Math.min(errorAt, text.length)) start -= 1;
  while (start > 0 && !/[\s,]/.test(text.charAt(start - 1))) start -= 1;
  let end = Math.max(start + 1, errorAt);
  while (end < text.length && !/[\s,]/.test(text.charAt(end))) end += 1;
  const last = Math.min(end, text.length);
  return last > start ? { start: range.start + 1 + start, end: range.start + 1 + last } : range;
}

/** What no stick of its stock can be cut into: said where the stock is declared, before any search. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { measure, words } from '../../../grammar/words.ts';
import { maximum } from '../../geometry/numbers.ts';
import { placeTolerance } from '../../geometry/tolerance.ts';
import { notchingBench } from '../sections/plan-settings.ts';
import { type PricedRequest, stockRequests } from './cut-every-stock.ts';
import { isLonger, longestPiece } from './read-request.ts';
import { type CutDesign, cuttingDemands } from './stock-demands.ts';

/** Strips, pieces and members longer than every stick of theirs. */
export function stickProblems(cut: CutDesign): Problem[] {
  const bench = notchingBench(cut.design.benches);
  const requests = stockRequests(cuttingDemands(cut, bench?.trim ?? 0), bench);
  return requests.flatMap(tooLong);
}

function tooLong({ stock, request }: PricedRequest): Problem[] {
  if (request.sticks.length === 0) return [];
  const holds = longestPiece(request);
  const pieces = request.pieces.filter(({ lengthMm, total }) => total > 0 && isLonger(lengthMm, holds));
  const marks = [...new Set(pieces.map(({ mark }) => mark))];
  if (marks.length === 0) return [];
  const longest = maximum(pieces.map(({ lengthMm }) => lengthMm));
  const beside = 2 * request.endTrimMm + request.breathMm.stick;
  const needed = Math.ceil(longest + beside - placeTolerance);
  const message = words`No stick of ${stock.name} is long enough for ${namedMarks(marks)}, ${upTo(marks)}${measure.given(longest)} long: beside trims and breath the longest holds ${measure.given(holds)}. Add one of at least ${measure.given(needed)} to \`lengths\`.`;
  return [problemAt('sticksTooShort', stock.lengthsRange ?? stock.nameRange, message)];
}

const upTo = (marks: readonly string[]): string => (marks.length > 1 ? 'up to ' : '');

const mostNamed = 4;

function namedMarks(marks: readonly string[]): string {
  const more = marks.length - mostNamed;
  return `${marks.slice(0, mostNamed).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

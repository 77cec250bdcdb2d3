/** `fit 21 x 8 cells in 900 x 380 by pitch`: the grid and shape of a panel that must come out in a size. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { type Words, joined, measure, words } from '../../../grammar/words.ts';
import type { FitShapeSyntax } from '../../../grammar/tree/panel-syntax.ts';
import { fitTolerance } from '../../geometry/tolerance.ts';
import type { DesignContext } from '../design-context.ts';
import type { FitNeighbour, Grid, PanelFit, StripStock } from '../design-model.ts';
import { fitByFrame, fitByPitch, type FitWish, largestFit, leansAside } from './fit-cells.ts';
import { readCount, readLength } from '../values/read-values.ts';

const mostCells = 100_000;
const neighboursNamed = 4;

/** How the cells come out, with a message where that is not both ways; null where they can't. */
export function buildFit(
  syntax: FitShapeSyntax,
  grid: Grid,
  edge: FitWish['edge'],
  frame: StripStock | null,
  context: DesignContext,
): PanelFit | null {
  const across = readCount(syntax.across, 'number of cells across', 1, mostCells, context);
  const up = readCount(syntax.up, 'number of cells up', 1, mostCells, context);
  const width = readLength(syntax.width, 'width', 'positive', context);
  const height = readLength(syntax.height, 'height', 'positive', context);
  if (across === null || up === null || width === null || height === null) return null;
  const report = (name: 'fitLeavesOver' | 'fitTooLarge' | 'outOfRange', message: Words): void =>
    context.report(problemAt(name, syntax.range, message));
  const wish = { across, up, width, height, edge, ...(frame && { frameFace: frame.face }) };
  if (syntax.by === 'frame' && edge === 'sawn') {
    report('outOfRange', 'A sawn panel has no frame to give way. Write `by pitch`, or `edge framed`.');
    return null;
  }
  const fit = syntax.by === 'pitch' ? fitByPitch(grid, wish) : fitByFrame(grid, wish);
  if (!fit) {
    report('outOfRange', leansAside(grid) ? leaning : singleStrips);
    return null;
  }
  const room = fit.members ? Math.min(fit.members.sides, fit.members.rails) : fit.side;
  if (room <= 0) {
    report('fitTooLarge', tooLarge(fit, wish, grid));
    return null;
  }
  if (isUneven(fit)) report('fitLeavesOver', fit.members ? unevenFrame(fit, wish) : leftOver(fit, wish));
  return fit;
}

const singleStrips = 'A fit counts cells between strips in equal steps, and this grid has single strips there.';
const leaning =
  'A fit makes an upright rectangle, and the strips of this grid lean. Turn the grid so that its first direction runs level or two lean alike to either side, or write the lengths and the pitch.';

const isUneven = ({ leftOver: { across, up }, members }: PanelFit): boolean =>
  members ? Math.abs(members.sides - members.rails) > fitTolerance : Math.max(across, up) > fitTolerance;

function leftOver(
  { across, up, sides, side, leftOver: over, neighbours }: PanelFit,
  { width, height }: FitWish,
): Words {
  const [way, rest] = over.across > over.up ? ['across', over.across] : ['up', over.up];
  const found = words`${across} x ${up} cells do not come out in ${measure.given([width, height], ' x ')} both ways: across they take a side of ${measure.given(sides.across)}, up ${measure.given(sides.up)}.`;
  const advice = words`With ${measure.given(side)}, ${measure.given(rest)} are left over ${way}. Give the frame ${measure.given(rest / 2)} more on either side there, or take ${neighbourList(neighbours)}.`;
  return joined([found, advice], ' ');
}

function unevenFrame({ members, neighbours }: PanelFit, { frameFace }: FitWish): Words {
  const { sides, rails } = members ?? { sides: 0, rails: 0 };
  const found = words`The frame comes out ${measure.given(sides)} wide at the sides and ${measure.given(rails)} at top and bottom.`;
  const advice = words`Mill it so, change the outer size, or take other cells with a pitch of their own inside a frame of ${measure.given(frameFace ?? Math.min(sides, rails))}: ${neighbourList(neighbours)}.`;
  return joined([found, advice], ' ');
}

/** By frame the pitch stays, and so fewer cells are what helps; by pitch so many strips leave no room between them. */
function tooLarge({ across, up, side, members, neighbours }: PanelFit, wish: FitWish, grid: Grid): Words {
  const size = measure.given([wish.width, wish.height], ' x ');
  const most = members && largestFit(grid, wish);
  if (!most)
    return words`${across} x ${up} cells do not go into ${size}: nothing is left between the strips. Take fewer cells (${neighbourList(neighbours)}) or more room.`;
  const over = [
    { way: 'across', by: -2 * members.sides },
    { way: 'up', by: -2 * members.rails },
  ].filter(({ by }) => by >= 0);
  const tooLong = joined(
    over.map(({ way, by }) => words`${measure.given(by)} too long ${way}`),
    ' and ',
  );
  const fewer =
    Math.min(most.across, most.up) > 0
      ? words`at most ${Math.min(across, most.across)} x ${Math.min(up, most.up)} cells, a side below ${measure.given(most.side)}`
      : words`a side below ${measure.given(most.side)}`;
  return words`${across} x ${up} cells of ${measure.given(side)} do not go into ${size}: they are ${tooLong}, and a frame needs room besides. Take ${fewer}, or more room.`;
}

/** "20 x 8 (side 45.1 mm across, 47.9 mm up)", the nearest to square first. */
export const neighbourList = (neighbours: readonly FitNeighbour[]): Words =>
  joined(
    neighbours
      .slice(0, neighboursNamed)
      .map(
        ({ across, up, sides }) =>
          words`${across} x ${up} (side ${measure.given(sides.across)} across, ${measure.given(sides.up)} up)`,
      ),
    ', ',
  );

/** Parts of the work that lie in one another, or beside the board they hang on. */
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { Design } from '../../design/design.ts';
import { coarserRing } from '../../geometry/coarser-ring.ts';
import { areaOf, intersectionOf } from '../../geometry/polygons.ts';
import { ringLength } from '../../geometry/measure-path.ts';
import { sum } from '../../geometry/numbers.ts';
import { drawingTolerance } from '../../geometry/tolerance.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { type PlacedPart, placedParts } from '../placed-parts.ts';
import { facingOf } from './facing.ts';
import { partName } from './plan-work.ts';

export function placementProblems({ work }: Pick<Design, 'work'>, panels: readonly LaidPanel[]): Problem[] {
  if (!work) return [];
  const placed = placedParts(work, panels);
  return placed.flatMap((part, index) => [
    ...overlaps(part, placed.slice(0, index)),
    ...besideTheBoard(
      part,
      placed.filter((each) => each.part.kind === 'board'),
    ),
  ]);
}

function overlaps(later: PlacedPart, earlier: readonly PlacedPart[]): Problem[] {
  return earlier.flatMap((other): Problem[] => {
    const facing = other.layer === later.layer ? facingOf(other.rings, later.rings) : null;
    if (!facing || facing.overlap === 0) return [];
    const message = words`\`${partName(later.part)}\` reaches ${measure.given(facing.overlap)} into \`${partName(other.part)}\` about ${measure.place(facing.at)}. Move one of them, or place it \`in front of\` the other.`;
    return [
      problemAt('partsOverlap', later.range, message, [{ range: other.range, message: 'The other stands here.' }]),
    ];
  });
}

/** What stands over by no more than the width of a line round the part is not seen. */
function besideTheBoard({ part, rings, range }: PlacedPart, boards: readonly PlacedPart[]): Problem[] {
  if (part.kind === 'board' || boards.length === 0) return [];
  const own = rings.map(coarserRing);
  const onBoards = areaOf(
    intersectionOf(
      boards.flatMap((board) => board.rings.map(coarserRing)),
      own,
    ),
  );
  const outside = areaOf(own) - onBoards;
  if (outside <= 2 * drawingTolerance * sum(own.map(ringLength))) return [];
  const share = Math.round((100 * outside) / areaOf(own));
  const message = words`\`${partName(part)}\` stands over the edge of its board with ${measure.area(outside)}, ${String(share)} % of its area. Move it, or make the board larger.`;
  return [problemAt('partBesideBoard', range, message)];
}

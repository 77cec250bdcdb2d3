/** An edge taken apart at its corners: each run between two of them is one length of band. Lengths mm, angles degrees. */
import { append } from '../../geometry/numbers.ts';
import { endDirection, startDirection } from '../../geometry/path-parts.ts';
import type { Contour, PathSegment } from '../../geometry/path.ts';
import { turnBetween } from '../../geometry/sharpest-bends.ts';

/** A smooth part of an edge, walked with the work on its left. */
export interface BandRun {
  readonly segments: readonly PathSegment[];
  /** By how much the edge turns at its first and last corner, positive at a corner that stands out; null for a closed run. */
  readonly turns: readonly [start: number, end: number] | null;
  /** Which runs it meets at its start and at its end; itself where it is alone. */
  readonly neighbours: readonly [before: number, after: number];
}

/** An edge that turns less than this at a joint is sanded smooth, and a band bends past it: common practice. */
const cornerTurn = 10;

/** The runs of an outline, contour by contour; numbers of neighbours count through all of them. */
export function bandRuns(contours: readonly Contour[]): BandRun[] {
  const runs: BandRun[] = [];
  for (const contour of contours) append(runs, runsOfContour(contour, runs.length));
  return runs;
}

function runsOfContour(contour: Contour, first: number): BandRun[] {
  const turns = contour.map((segment, index) => turnInto(contour, segment, index));
  const corners = turns.flatMap((turn, index) => (Math.abs(turn) >= cornerTurn ? [index] : []));
  if (corners.length === 0) return [{ segments: contour, turns: null, neighbours: [first, first] }];
  return corners.map((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const count = next > corner ? next - corner : next - corner + contour.length;
    const segments = [...contour, ...contour].slice(corner, corner + count);
    const neighbours = [-1, 1].map((step) => first + ((index + step + corners.length) % corners.length));
    return {
      segments,
      turns: [turns[corner] ?? 0, turns[next] ?? 0],
      neighbours: [neighbours[0] ?? first, neighbours[1] ?? first],
    };
  });
}

/** The turn at the joint before a segment. */
function turnInto(contour: Contour, segment: PathSegment, index: number): number {
  const before = contour[(index + contour.length - 1) % contour.length] ?? segment;
  const [arriving, leaving] = [endDirection(before), startDirection(segment)];
  return arriving && leaving ? turnBetween(arriving, leaving) : 0;
}

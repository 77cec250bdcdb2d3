/** What a panel's frame can't do: members along curves, and edge infill over an empty groove. */
import { type Words, joined, measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { isZeroLength } from '../../geometry/tolerance.ts';
import { distanceToSegment } from '../../geometry/region.ts';
import { groovePieces, isStraightSided } from '../frame-members.ts';
import type { LaidCell, LaidPanel } from '../laid-panel.ts';
import { type RaisedProblem, raisedAt } from './raised-problem.ts';

export const frameProblems = (panels: readonly LaidPanel[]): RaisedProblem[] =>
  panels.flatMap((laid) => raisedAt(laid.panel, [...curvedFrame(laid), ...unborneInfill(laid)]));

function curvedFrame({ panel }: LaidPanel): Problem[] {
  if (!panel.frame || isStraightSided(panel)) return [];
  const message = `The shape of panel ${panel.name} is curved or has holes, and members of a frame are straight. Take the frame out and make it by a template, or give the panel straight sides.`;
  return [problemAt('frameNotStraight', panel.frame.range, message)];
}

const mostSizesNamed = 4;

/** A piece that ends over the groove drops into it; a border strip or fillers give it something to stand on. */
function unborneInfill(laid: LaidPanel): Problem[] {
  const { frame, name } = laid.panel;
  if (frame?.joint !== 'groove' || frame.bearing !== null || !hasEdgeInfill(laid)) return [];
  const [fillers, borders] = [listed(laid, 'fillers'), listed(laid, 'border')];
  const message = words`Infill at the edge of panel ${name} has nothing to bear on over the groove. Add \`border\` to the frame for a strip all round in the groove (${borders}), or \`fillers\` between the strips (${fillers}), each ${measure.given(frame.jointDepth)} wide.`;
  return [problemAt('infillOverGroove', frame.range, message)];
}

function listed(laid: LaidPanel, bearing: 'border' | 'fillers'): Words {
  const pieces = groovePieces(laid, bearing);
  const named = pieces.slice(0, mostSizesNamed).map(({ length, count }) => words`${count} of ${measure.given(length)}`);
  const more = pieces.length - named.length;
  return words`${joined(named, ', ')}${more > 0 ? ` and ${more} more sizes` : ''}`;
}

function hasEdgeInfill(laid: LaidPanel): boolean {
  for (const cell of laid.filledCells()) if (!cell.inside || touchesEdge(cell, laid)) return true;
  return false;
}

const touchesEdge = ({ opening }: LaidCell, { region }: LaidPanel): boolean =>
  region.some((ring) =>
    ring.some((from, index) => {
      const to = ring[(index + 1) % ring.length] ?? from;
      return opening.some((corner) => isZeroLength(distanceToSegment(corner, from, to)));
    }),
  );

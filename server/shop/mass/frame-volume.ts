/** The wood of a frame. Lengths mm, volumes mm³. */
import type { Frame } from '../../design/design-model.ts';
import { sum } from '../../geometry/numbers.ts';
import { frameMembers, groovePieces } from '../../lattice/frame-members.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { latticeDepth } from '../lines/work-depth.ts';

/**
 * One copy, what its joints take away taken off. A member is a trapezoid from its inner to its outer edge: its width times
 * the mean of both. So it is where it is mitred, and where two lapped members share a square corner by halves. A groove
 * runs along the whole inner edge; mortices are the ends of the strips. 0 where the frame has no straight members.
 */
export function frameVolume(laid: LaidPanel, frame: Frame): number {
  const members = frameMembers(laid, frame);
  const depth = latticeDepth(laid.panel.grid);
  const bodies = sum(
    members.map(({ length, inner, width, count }) => (count * width * (length + inner) * frame.stock.depth) / 2),
  );
  const joint =
    frame.joint === 'groove'
      ? sum(members.map(({ inner, count }) => inner * count))
      : sum(laid.strips.map(({ stock, placements }) => 2 * placements.length * stock.face));
  const filling = frame.bearing && frame.joint === 'groove' ? groovePieces(laid, frame.bearing) : [];
  const filled = sum(filling.map(({ length, count }) => length * count));
  return members.length === 0 ? 0 : bodies - (joint - filled) * frame.jointDepth * Math.min(depth, frame.stock.depth);
}

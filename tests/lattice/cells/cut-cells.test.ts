/** What a framed panel's cut cells get: the motif trimmed, a motif of their own, or nothing. */
import { describe, expect, it } from 'vitest';
import type { CutCells } from '../../../server/design/design-model.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import { atCorner, middle, fillOf, gridOf, motifOf, panelOf, pieceFrom, stripStock } from '../../design-builder.ts';

const stock = stripStock('ash', 3);
const star = motifOf('star', 'square', {
  pieces: [1, 2, 3, 4].map((corner) => pieceFrom('arm', atCorner(corner), middle)),
});

/** Two whole openings of 37 between half openings left and right: clear 37 · 2 + 3 · 3 + 2 · 18 wide. */
function halfCellsWith(cutCells: CutCells) {
  const shape = { kind: 'rectangle', width: 2 * 37 + 3 * 3 + 2 * 18, height: 37, range: { start: 0, end: 0 } } as const;
  const panel = panelOf(gridOf('square', 40, stock), shape, {
    edge: 'framed',
    phase: { kind: 'nodeAt', at: { x: 0, y: 20 } },
    fills: [fillOf('square', star, stock)],
    cutCells,
  });
  const laid = layOutPanel(panel).panel;
  const count = (fate: string) =>
    laid?.pieces.filter((group) => group.fate === fate).reduce((sum, group) => sum + group.count, 0);
  return { whole: count('whole'), trimmed: count('trimmed'), cells: laid?.cells[0], pieces: laid?.pieces };
}

describe('cut cells', () => {
  it('trimmed keep what the frame leaves of the whole motif', () => {
    const { whole, trimmed, cells } = halfCellsWith('trim');
    // the frame stands half a millimetre short of the middle: two arms of each half opening lose their tips
    expect([whole, trimmed]).toEqual([2 * 4, 2 * 2]);
    expect(cells).toEqual({ shape: 'square', met: 4, needed: 4 });
  });

  it('with their own motif are filled to their own corners', () => {
    const { whole, trimmed, cells, pieces } = halfCellsWith('own');
    expect([whole, trimmed]).toEqual([2 * 4, 2 * 4]);
    expect(cells?.needed).toBe(4);
    const own = pieces?.find(({ fate }) => fate === 'trimmed');
    // half the diagonal of the half opening, 18 × 37, whose corners and middle the arm joins
    expect(own?.shape.length).toBeCloseTo(Math.hypot(18, 37) / 2, 3);
  });

  it('left open get nothing', () => {
    const { whole, trimmed, cells } = halfCellsWith('open');
    expect([whole, trimmed]).toEqual([2 * 4, 0]);
    expect(cells).toEqual({ shape: 'square', met: 4, needed: 2 });
  });
});

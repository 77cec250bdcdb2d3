/** Pieces folded out of one length. Counts worked out by hand; a hexagon of n cells has 6n² triangles. */
import { describe, expect, test } from 'vitest';
import type { Motif } from '../../../server/design/design-model.ts';
import { layOutPanel } from '../../../server/lattice/lay-out-panel.ts';
import {
  atCorner,
  atMidEdge,
  cellsShape,
  circleContour,
  fillOf,
  gridOf,
  hemp,
  hexagonShape,
  middle,
  motifOf,
  outlineShape,
  panelOf,
  pieceFrom,
  stripStock,
} from '../../design-builder.ts';

const ash = stripStock('ash', 3);
const mesh = gridOf('three_way', 40, ash);
const range = { start: 5, end: 9 };
const hinged = (motif: Motif, first: string, second: string): Motif => ({
  ...motif,
  hinges: [{ roles: [first, second], range }],
});
const arms = hinged(hemp, 'arm', 'arm');

describe('hinges', () => {
  test('one of two arms in each of the 24 triangles of a hexagon of two cells', () => {
    const { panel, problems } = layOutPanel(panelOf(mesh, hexagonShape(2), { fills: [fillOf('triangle', arms, ash)] }));
    expect(problems).toEqual([]);
    // upright triangles and those turned over are counted apart
    expect(panel?.hinges.map(({ roles, count }) => [roles.join(), count])).toEqual(Array(2).fill(['arm,arm', 12]));
    for (const { length } of panel?.hinges[0]?.shapes ?? []) expect(length).toBeCloseTo(40 / Math.sqrt(3) - 3, 9);
  });

  test('pieces of two roles each with the one beside it: four pairs in each square', () => {
    const pieces = [1, 2, 3, 4].flatMap((number) => [
      pieceFrom('spoke', atMidEdge(number), middle),
      pieceFrom('arm', atCorner(number), middle),
    ]);
    const wheel = hinged(motifOf('wheel', 'square', { pieces }), 'spoke', 'arm');
    const squares = gridOf('square', 40, ash);
    const { panel } = layOutPanel(panelOf(squares, cellsShape(3, 2), { fills: [fillOf('square', wheel, ash)] }));
    expect(panel?.hinges.map(({ roles, count }) => [roles.join(), count])).toEqual(Array(4).fill(['arm,spoke', 6]));
  });

  test('a cell that keeps one arm of a pair has it single', () => {
    const { panel } = layOutPanel(
      panelOf(mesh, outlineShape(circleContour(150)), { fills: [fillOf('triangle', arms, ash)] }),
    );
    const made = panel?.pieces.reduce((sum, { count }) => sum + count, 0) ?? 0;
    const pairs = panel?.hinges.reduce((sum, { count }) => sum + count, 0) ?? 0;
    const cells = panel?.cells[0]?.needed ?? 0;
    expect(made).toBe(342); // the check value of the circle of 150 about a node
    expect(pairs).toBeLessThan(cells);
    expect(made - 2 * pairs).toBeGreaterThan(pairs);
  });

  test('pieces that do not meet cannot be one', () => {
    const cross = motifOf('cross', 'square', {
      pieces: [pieceFrom('bar', atMidEdge(1), atMidEdge(3)), pieceFrom('rail', atMidEdge(2), atMidEdge(4))],
    });
    const squares = gridOf('square', 40, ash);
    const fills = [fillOf('square', hinged(cross, 'bar', 'rail'), ash)];
    const { panel, problems } = layOutPanel(panelOf(squares, cellsShape(3, 2), { fills }));
    expect(panel?.hinges).toEqual([]);
    expect(problems.map(({ code, range: at }) => [code, at])).toEqual([['LAP0511', range]]);
  });
});
